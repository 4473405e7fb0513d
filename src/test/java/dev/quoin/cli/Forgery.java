package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.UnaryOperator;

/** Changes a file of a run, and its manifest to match, as a fault of the writer would. */
record Forgery(Path run) {
    void change(String file, UnaryOperator<String> change) throws IOException {
        String before = Files.readString(run.resolve(file));
        String after = change.apply(before);
        assertFalse(after.equals(before), "nothing was changed");
        Files.writeString(run.resolve(file), after);
        Path manifest = run.resolve("manifest.csv");
        Files.writeString(manifest, Files.readString(manifest).replace(sha256(before), sha256(after)));
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
