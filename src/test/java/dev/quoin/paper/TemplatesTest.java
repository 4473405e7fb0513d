package dev.quoin.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The templates that are read ahead are those that a paper is made of, no more and no fewer. */
class TemplatesTest {
    private static final Pattern OTHER = Pattern.compile("<#(?:include|import) \"([^\"]+\\.ftlh)\"");

    @Test
    void thoseOfARunSheet() throws IOException {
        assertReadAhead(RunSheetWriter.TEMPLATES, "run-sheet-head.ftlh", "plate.ftlh", "run-sheet-foot.ftlh");
    }

    @Test
    void thoseOfAReprintsSheet() throws IOException {
        assertReadAhead(ReprintSheet.TEMPLATES, "reprint-sheet.ftlh");
    }

    private static void assertReadAhead(List<String> ahead, String... written) throws IOException {
        Set<String> all = new HashSet<>();
        for (String template : written) {
            gather(template, all);
        }
        assertEquals(all, new HashSet<>(ahead));
        assertEquals(all.size(), ahead.size());
        for (String template : ahead) {
            Templates.read(template);
        }
    }

    private static void gather(String template, Set<String> all) throws IOException {
        if (all.add(template)) {
            try (InputStream file = Templates.class.getResourceAsStream(template)) {
                Matcher other = OTHER.matcher(new String(file.readAllBytes(), StandardCharsets.UTF_8));
                while (other.find()) {
                    gather(other.group(1), all);
                }
            }
        }
    }
}
