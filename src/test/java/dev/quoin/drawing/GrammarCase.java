package dev.quoin.drawing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A string of SVG's grammars and its meaning. Source: github linebender/svgtypes, commit fa62387a, extracted from its
 * tests (Apache-2.0 OR MIT).
 */
record GrammarCase(String kind, String name, String input, JsonNode expected) {
    private static final Pattern SEGMENT = Pattern.compile("(\\w+) \\{([^}]*)}|ClosePath");
    private static final Pattern FIELD = Pattern.compile("(\\w+): ([-\\w.]+)");

    /** A command of path data with its fields; true and false are 1 and 0. */
    record Segment(String command, Map<String, Double> fields) {
        double get(String field) {
            return fields.getOrDefault(field, 0.0);
        }

        boolean isRelative() {
            return fields.getOrDefault("abs", 1.0) == 0;
        }
    }

    static Stream<GrammarCase> all(String kind) throws IOException {
        String cases = System.getProperty("quoin.cases", "");
        Path file = Path.of(cases, "svg-grammar", "cases.json");
        assumeTrue(!cases.isEmpty() && Files.exists(file), "skipped: no svg-grammar under the property quoin.cases");
        List<GrammarCase> found = new ArrayList<>();
        for (JsonNode node : new ObjectMapper().readTree(file.toFile())) {
            if (node.get("kind").asText().equals(kind)) {
                found.add(new GrammarCase(
                        kind, node.get("name").asText(), node.get("input").asText(), node.get("expected")));
            }
        }
        return found.stream();
    }

    /** The numbers of the expected value, as they stand in its text. */
    double[] numbers() {
        return Pattern.compile("-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?")
                .matcher(expected.asText())
                .results()
                .mapToDouble(number -> Double.parseDouble(number.group()))
                .toArray();
    }

    List<Segment> segments() {
        List<Segment> segments = new ArrayList<>();
        for (JsonNode node : expected) {
            Matcher segment = SEGMENT.matcher(node.asText());
            if (!segment.find()) {
                throw new IllegalArgumentException(node.asText());
            }
            Map<String, Double> fields = new TreeMap<>();
            FIELD.matcher(segment.group())
                    .results()
                    .forEach(field -> fields.put(field.group(1), value(field.group(2))));
            segments.add(new Segment(segment.group().split(" ")[0], fields));
        }
        return segments;
    }

    @Override
    public String toString() {
        return kind + " " + name + ": " + input;
    }

    private static double value(String text) {
        return switch (text) {
            case "true" -> 1;
            case "false" -> 0;
            default -> Double.parseDouble(text);
        };
    }
}
