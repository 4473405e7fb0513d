package dev.quoin.paper;

/**
 * How many of a blank to lay out.
 *
 * @param blank its name
 * @param material its material; may be empty
 * @param count one for each item
 * @param spares advised on top of that; 0 where nothing is advised
 */
public record BlankCount(String blank, String material, int count, int spares) {}
