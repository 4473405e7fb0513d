package dev.quoin.paper;

import dev.quoin.optics.Exposure;
import dev.quoin.shop.Step;

/** What a step does to the surface through the lens of its group. */
public record ExposureView(Step step, Exposure exposure) {}
