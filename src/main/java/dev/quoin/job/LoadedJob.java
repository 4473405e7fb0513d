package dev.quoin.job;

import dev.quoin.lettering.FontLibrary;
import dev.quoin.order.Items;
import dev.quoin.order.Order;
import dev.quoin.plate.Stands;
import dev.quoin.shop.Shop;

/**
 * A job with all its files read; templates and jigs are read when a row chooses them.
 *
 * @param section which part of a run is prepared from it
 * @param stands in which ways its jigs can stand
 * @param fonts that its templates may name
 */
record LoadedJob(
        JobSettings settings,
        Order order,
        Items items,
        Shop shop,
        Chooser chooser,
        InputFiles files,
        Section section,
        FontLibrary fonts,
        Stands stands) {
    /** The same job with more pieces. */
    LoadedJob making(Items more) {
        return new LoadedJob(settings, order, more, shop, chooser, files, section, fonts, stands);
    }
}
