package dev.quoin.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table of a run, read by a library that is not the program's own reader. */
record CsvText(List<Map<String, String>> rows) {
    static CsvText read(Path file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().get();
        try (Reader text = Files.newBufferedReader(file);
                CSVParser parser = CSVParser.parse(text, format)) {
            return new CsvText(
                    parser.getRecords().stream().map(CSVRecord::toMap).toList());
        }
    }

    List<String> column(String name) {
        return rows.stream().map(row -> row.get(name)).toList();
    }

    double sum(String name) {
        return column(name).stream().mapToDouble(Double::parseDouble).sum();
    }
}
