import dev.quoin.lettering.PlainTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes the tables of the bundled fonts into a folder, each under its name on the class path. */
final class WritePlainTables {
    private WritePlainTables() {}

    public static void main(String[] args) throws IOException {
        for (Map.Entry<String, byte[]> table : PlainTables.ofBundledFonts().entrySet()) {
            Path file = Path.of(args[0] + table.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, table.getValue());
        }
    }
}
