package dev.quoin.shop;

/** A hole for a pin in the plate of a jig: its centre, from the jig's centre, and its diameter, mm. */
public record Pin(double x, double y, double diameter) {}
