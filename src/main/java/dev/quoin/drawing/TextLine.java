package dev.quoin.drawing;

import java.util.List;

/** One line of text: runs set one after the other, anchored at x, y (user units, y down, on the baseline). */
public record TextLine(double x, double y, TextAnchor anchor, List<TextRun> runs) {}
