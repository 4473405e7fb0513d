package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;
import java.util.List;

/** An area to be covered, its curves flattened. Open chains count as closed. */
record Cover(List<Polyline> outline, FillRule rule) {}
