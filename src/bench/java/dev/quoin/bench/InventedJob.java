package dev.quoin.bench;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * An invented order of so many items, the same for the same number: tags of 50 x 25 mm with two texts fitted to their boxes,
 * a logo, a border and a Data Matrix, in a tray of 20 pockets.
 */
record InventedJob(Path folder) {
    static final String TEMPLATE_FILE = "tag.svg";

    private static final List<String> NAMES = List.of(
            "Maren", "Tobias", "Aoife", "Karel", "Ilse", "Jan", "Petra", "Lena", "Mikkel", "Freya", "Bram", "Tove",
            "Nils", "Sanna", "Pavel", "Ingrid", "Hedda", "Ewan", "Zuzana", "Björn", "Élodie", "Renée");
    private static final List<String> FAMILIES = List.of(
            "Oksavik", "Fennimore", "Dvořák", "Lindqvist", "Haraldsen", "Brouwer", "Novotný", "Keating", "Saarinen",
            "Vermeulen", "Ostrander", "Thistle", "Marchetti", "Kowalczyk", "Albrecht", "Quennell", "Söderberg");
    private static final List<String> ROLES = List.of(
            "Harbour master", "Deputy harbour master", "Pilot", "Crane driver", "Stores", "Line handler", "Bosun");

    private static final String TEMPLATE = """
            <svg xmlns="http://www.w3.org/2000/svg" width="50mm" height="25mm" viewBox="0 0 50 25">
              <rect id="name-box" class="guide" x="14" y="3" width="24" height="7" fill="none" stroke="#000"/>
              <rect id="role-box" class="guide" x="14" y="13" width="24" height="4" fill="none" stroke="#000"/>
              <g class="engrave">
                <path fill-rule="evenodd" d="M7 4C10 4 12 6 12 9 12 12 10 14 7 14 4 14 2 12 2 9 2 6 4 4 7 4ZM7 6C5 6 4 7 4 9 4 11
                  5 12 7 12 9 12 10 11 10 9 10 7 9 6 7 6Z"/>
                <path d="M2 17 12 17 11 21 3 21Z"/>
              </g>
              <text class="engrave" data-fit="name-box" x="26" y="8" text-anchor="middle" font-size="5"
                    font-family="DejaVu Sans">${name}</text>
              <text class="engrave" data-fit="role-box" x="26" y="16" text-anchor="middle" font-size="3"
                    font-family="Barlow">${role}</text>
              <rect class="engrave" data-code="datamatrix" data-content="${number}" x="39.5" y="8" width="9" height="9"/>
              <rect class="outline" x="1" y="1" width="48" height="23" rx="%s" fill="none" stroke="#000"/>
            </svg>
            """;

    private static final String SETTINGS = """
            template=tag.svg
            jig=tray.csv
            lens=long-200
            recipe=aluminium-tag
            blank=aluminium-50x25
            """;

    /** Writes the files of the job. */
    static InventedJob of(int items, Path folder) throws IOException {
        Files.createDirectories(folder);
        InventedJob job = new InventedJob(folder);
        Files.write(job.template(), template(2));
        Files.writeString(folder.resolve("tray.csv"), tray());
        Files.writeString(folder.resolve("job.properties"), SETTINGS);
        SplittableRandom random = new SplittableRandom(items);
        try (Writer order = Files.newBufferedWriter(folder.resolve("order.csv"))) {
            order.write("Name,Role,Number\n");
            for (int i = 1; i <= items; i++) {
                order.write(one(NAMES, random) + " " + one(FAMILIES, random) + "," + one(ROLES, random) + ",QN-"
                        + (10_000_000 + i) + "\n");
            }
        }
        return job;
    }

    /** The template's file. */
    Path template() {
        return folder.resolve(TEMPLATE_FILE);
    }

    /** A template whose border has corners of this radius, in mm. */
    static byte[] template(double corners) {
        return String.format(Locale.ROOT, TEMPLATE, corners).getBytes(StandardCharsets.UTF_8);
    }

    private static String one(List<String> words, SplittableRandom random) {
        return words.get(random.nextInt(words.size()));
    }

    private static String tray() {
        StringBuilder tray = new StringBuilder("slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\n");
        for (int i = 0; i < 20; i++) {
            tray.append(i + 1).append(',').append(i % 3 * 52).append(',').append(-26.5 * (i / 3)).append(",0,50,25,yes\n");
        }
        return tray.toString();
    }
}
