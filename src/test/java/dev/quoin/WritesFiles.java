package dev.quoin;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import java.nio.file.Files;
import java.util.Set;

/** Calls of {@link Files} that change the disk. */
final class WritesFiles {
    private static final Set<String> NAMES = Set.of(
            "write",
            "writeString",
            "newOutputStream",
            "newBufferedWriter",
            "newByteChannel",
            "createFile",
            "createDirectory",
            "createDirectories",
            "createTempFile",
            "createTempDirectory",
            "copy",
            "move",
            "delete",
            "deleteIfExists");

    static final DescribedPredicate<JavaMethodCall> CALL = DescribedPredicate.describe(
            "changes the disk",
            call -> call.getTargetOwner().isEquivalentTo(Files.class) && NAMES.contains(call.getName()));

    private WritesFiles() {}
}
