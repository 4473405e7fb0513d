package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a name in a stranger's order may reach. */
class OwnFolderTest {
    @TempDir
    private Path root;

    private Path own;

    @BeforeEach
    void aFolderWithANeighbour() throws IOException {
        own = Files.createDirectories(root.resolve("job"));
        Files.createDirectories(own.resolve("art"));
        Files.writeString(own.resolve("art/crest.svg"), "mine");
        Files.writeString(root.resolve("secret.svg"), "not mine");
    }

    @ParameterizedTest
    @ValueSource(strings = {"art/crest.svg", "./art/crest.svg", "art/../art/crest.svg"})
    void aFileInsideIsFound(String name) throws IOException {
        assertEquals(Optional.of(own.resolve("art/crest.svg")), OwnFolder.file(own, name));
    }

    @Test
    void aFileThatIsNotThereIsInsideAllTheSame() throws IOException {
        assertEquals(Optional.of(own.resolve("none.svg")), OwnFolder.file(own, "none.svg"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.svg", "art/../../secret.svg", "/etc/hostname", "nul\0name"})
    void whatLeadsOutIsNot(String name) throws IOException {
        assertEquals(Optional.empty(), OwnFolder.file(own, name));
    }

    @Test
    void aLinkThatLeadsOutIsNot() throws IOException {
        Files.createSymbolicLink(own.resolve("link.svg"), root.resolve("secret.svg"));
        assertEquals(Optional.empty(), OwnFolder.file(own, "link.svg"));
    }
}
