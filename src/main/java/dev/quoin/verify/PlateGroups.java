package dev.quoin.verify;

import dev.quoin.geometry.Path;

/** Is told what a plate file holds, in the file's order. */
interface PlateGroups {
    /** The page, mm. */
    void page(double width, double height);

    /** A group of an item's marks in a step begins. */
    void item(int step, int item);

    /** A path of the group that began last; coordinates of the page, mm (y down). */
    void path(Path path);
}
