package dev.quoin.art;

import freemarker.template.TemplateDateModel;
import java.time.LocalDate;
import java.util.Date;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;

/** A date of a row: FreeMarker's date formats print it, and without one it is printed as it was typed. */
record TypedDate(LocalDate date, String typed) implements TemplateDateModel {
    /** Dates have no time of day, so that any zone does, as long as reading and printing take the same. */
    static final TimeZone ZONE = TimeZone.getTimeZone("UTC");

    /** By the calendar that FreeMarker prints with, so that old dates keep their day too. */
    @Override
    public Date getAsDate() {
        GregorianCalendar calendar = new GregorianCalendar(ZONE, Locale.ROOT);
        calendar.clear();
        calendar.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
        return calendar.getTime();
    }

    @Override
    public int getDateType() {
        return DATE;
    }
}
