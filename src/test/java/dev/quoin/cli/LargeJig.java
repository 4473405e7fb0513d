package dev.quoin.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Twelve tags on a jig of six columns by two rows, 60 mm apart, under a lens that reaches 92 mm: two columns at a time, so
 * three stations.
 */
record LargeJig(Path folder) {
    static final String STEPS = "x=-120:120:5";

    static LargeJig in(Path parent, int items) throws IOException {
        Path folder = Files.createDirectory(parent.resolve("long"));
        StringBuilder order = new StringBuilder("Name\n");
        for (int item = 1; item <= items; item++) {
            order.append("Tag ").append(item).append('\n');
        }
        Files.writeString(folder.resolve("order.csv"), order);
        StringBuilder jig = new StringBuilder("slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\n");
        for (int column = 0; column < 6; column++) {
            jig.append(String.format("A%d,%d,40,0,24,14,yes%n", column + 1, 60 * column));
            jig.append(String.format("B%d,%d,0,180,24,14,yes%n", column + 1, 60 * column));
        }
        Files.writeString(folder.resolve("long-tray.csv"), jig);
        Files.writeString(folder.resolve("tag.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 20 10">
                <text class="engrave" x="2" y="6" font-size="3" font-family="sans-serif">${name}</text>
                <rect class="outline" x="1" y="1" width="18" height="8" fill="none" stroke="#000"/>
                </svg>
                """);
        Files.writeString(folder.resolve("job.properties"), """
                template=tag.svg
                jig=long-tray.csv
                lens=short-100
                recipe=steel-tag
                blank=steel-40x24
                jig-steps=x=-120:120:5
                """);
        return new LargeJig(folder);
    }

    Program quoin() {
        return new Program(folder);
    }

    Path run() {
        return folder.resolve("run");
    }

    CsvText table(String name) throws IOException {
        return quoin().table(name);
    }
}
