package dev.quoin.paper;

import dev.quoin.geometry.Decimals;

/** How papers write figures; the same on every locale. */
final class Figures {
    private static final int MINUTE = 60;
    private static final int HOUR = 3600;

    /** A length in mm, an angle, a percentage: at most three decimals, no unit. */
    String plain(double value) {
        return Decimals.text(value, Decimals.COORDINATE);
    }

    /** A figure of optics: three significant digits. */
    String three(double value) {
        return Decimals.significant(value, 3);
    }

    /** A thousandth of a unit as the whole: J as mJ. */
    String milli(double value) {
        return three(value * 1e3);
    }

    /** A thousand of a unit as one: W as kW. */
    String kilo(double value) {
        return three(value / 1e3);
    }

    /** A share as whole percent. */
    String percent(double share) {
        return Decimals.text(100 * share, 0);
    }

    /** A time with every digit that the plan has, s, for machines to read. */
    String seconds(double seconds) {
        return Decimals.seconds(seconds);
    }

    /** A time for people: {@code 8.4 s}, {@code 12 min 30 s}, {@code 3 h 05 min}, rounded to what it shows. */
    String time(double seconds) {
        if (seconds < MINUTE - 0.05) {
            return Decimals.text(seconds, 1) + " s";
        }
        long whole = Math.round(seconds);
        if (whole < HOUR) {
            return whole / MINUTE + " min " + twoDigits(whole % MINUTE) + " s";
        }
        long minutes = Math.round(seconds / MINUTE);
        return minutes / MINUTE + " h " + twoDigits(minutes % MINUTE) + " min";
    }

    private static String twoDigits(long number) {
        return number < 10 ? "0" + number : Long.toString(number);
    }
}
