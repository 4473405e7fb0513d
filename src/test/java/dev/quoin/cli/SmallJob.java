package dev.quoin.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Eight tags, in groups by Colour: five red, three blue. The jig has four slots, one of them not usable, so that the red
 * fill two plates (items 1 2 4, then 5 8) and the blue one (3 6 7).
 */
record SmallJob(Path folder) {
    static final String HEADER = "Name,Colour,Pieces\n";
    static final String ROWS = "Ada,red,2\nBea,blue,1\nCy,red,2\nDot,blue,2\nEve,red,1\n";

    static SmallJob in(Path parent) throws IOException {
        Path folder = Files.createDirectory(parent.resolve("tags"));
        Files.writeString(folder.resolve("order.csv"), HEADER + ROWS);
        Files.writeString(folder.resolve("job.properties"), """
                template=tag.svg
                jig=tray.csv
                lens=short-100
                recipe=steel-tag
                blank=steel-40x24
                quantity-column=Pieces
                group-by=Colour
                """);
        Files.writeString(folder.resolve("tray.csv"), """
                slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable
                A,20,20,0,24,14,yes
                B,60,20,90,24,14,yes
                C,20,60,0,24,14,no
                D,60,60,180,24,14,yes
                """);
        Files.writeString(folder.resolve("tag.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 20 10">
                <text class="engrave" x="2" y="6" font-size="3" font-family="sans-serif">${name}</text>
                <rect class="outline" x="1" y="1" width="18" height="8" fill="none" stroke="#000"/>
                </svg>
                """);
        return new SmallJob(folder);
    }

    /** The run folder, prepared. */
    Path prepared() {
        Program.Ended ended = new Program(folder).run("prepare", folder.toString(), "--out", "run");
        if (ended.status() != 0) {
            throw new IllegalStateException(ended.err());
        }
        return folder.resolve("run");
    }
}
