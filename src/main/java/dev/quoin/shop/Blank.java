package dev.quoin.shop;

/** The unmarked piece; sizes in mm, 0 where the shop does not say. The colour is CSS's, or empty. */
public record Blank(
        String name, String material, double width, double height, double thickness, String colour, String note) {}
