package dev.quoin.job;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What can be set for a job: a long option of the command line, and a key of {@code job.properties}. */
public enum JobKey {
    TEMPLATE("template", Kind.PATH, "FILE", "The SVG drawing that each row is merged into."),
    JIG("jig", Kind.PATH, "FILE", "The jig: an SVG drawing of its pockets, or a CSV of its slots."),
    BACK_TEMPLATE("back-template", Kind.PATH, "FILE", "The SVG drawing for the back of the pieces, if that is marked."),
    FLIP(
            "flip",
            Kind.TEXT,
            "AXIS",
            "The axis about which the whole jig is turned over for the back: y, left to right; x, top to bottom."),
    ROTARY(
            "rotary",
            Kind.TEXT,
            "MM[,MM]",
            "Instead of a jig: one round piece a load, turned about its axis; its diameter, and that at the drawing's "
                    + "upper edge if it tapers."),
    BAND_OVERLAP(
            "band-overlap",
            Kind.TEXT,
            "MM",
            "By how much strips of a round piece overlap where a seam must run through a mark; else 0.1."),
    LENS(
            "lens",
            Kind.TEXT,
            "NAME",
            "The lens, or auto: the smallest field that reaches all slots; if not given, the recipe's."),
    RECIPE("recipe", Kind.TEXT, "NAME", "The recipe: the steps for the material."),
    BLANK("blank", Kind.TEXT, "NAME", "The blank that the items are made from."),
    SHOP("shop", Kind.PATH, "DIR", "Your shop's tables; if not given, invented examples."),
    FONTS("fonts", Kind.PATHS, "DIR", "A folder of TTF and OTF fonts; several with commas between."),
    SYSTEM_FONTS("system-fonts", Kind.FLAG, "", "Use this computer's fonts too."),
    OUT("out", Kind.PATH, "DIR", "The run folder to write; if not given, runs/NAME here."),
    REPLACE("replace", Kind.FLAG, "", "Replace a run that stands there, if no work on it is recorded."),
    SKIP_BAD_ROWS("skip-bad-rows", Kind.FLAG, "", "Leave out rows with errors, prepare the rest, and say so."),
    SPLIT_STEPS("split-steps", Kind.FLAG, "", "Write a plate file for each step."),
    HATCHED("hatched", Kind.FLAG, "", "Write the lines that fill each area, for software that fills none."),
    PLATE_FORMAT(
            "plate-format",
            Kind.LIST,
            "KIND",
            "Write plates as pdf or dxf too, beside the svg; several with commas between."),
    SHEET("sheet", Kind.LIST, "KIND", "Write the run sheet as pdf too, beside the html: html,pdf."),
    PICTURES("pictures", Kind.FLAG, "", "Write a picture of each plate too, as PNG."),
    LOCALE("locale", Kind.TEXT, "TAG", "The language for dates and numbers, such as de-AT; if not given, none."),
    DATE_FORMAT(
            "date-format",
            Kind.TEXT,
            "COLUMN=FORM",
            "How a column's dates are typed, such as Since=d/M/yyyy; several with semicolons between."),
    SERIAL_START("serial-start", Kind.TEXT, "NUMBER", "The serial number of item 1, for ${serial}; else 1."),
    SERIAL_STEP("serial-step", Kind.TEXT, "NUMBER", "From each item's serial number to the next; else 1."),
    SERIAL_WIDTH("serial-width", Kind.TEXT, "DIGITS", "Serial numbers are filled with zeros to so many digits."),
    SERIAL_PREFIX("serial-prefix", Kind.TEXT, "TEXT", "What stands before the digits of serial numbers."),
    SEPARATOR(
            "separator",
            Kind.TEXT,
            "CHAR",
            "What separates the order's cells: , ; or tab; if not given, found by looking."),
    DATE("date", Kind.DATE, "YYYY-MM-DD", "The date to print on the papers; if not given, none."),
    SHOW(
            "show",
            Kind.LIST,
            "COLUMN",
            "The columns that a proof shows beside each piece; if not given, those that are marked on it."),
    QUANTITY_COLUMN("quantity-column", Kind.TEXT, "COLUMN", "How many items a row stands for: empty is 1, 0 is none."),
    RECIPE_COLUMN("recipe-column", Kind.TEXT, "COLUMN", "The recipe of each row; an empty cell means --recipe."),
    TEMPLATE_COLUMN(
            "template-column", Kind.TEXT, "COLUMN", "The template of each row; an empty cell means --template."),
    BACK_TEMPLATE_COLUMN(
            "back-template-column",
            Kind.TEXT,
            "COLUMN",
            "The template for the back of each row's pieces; an empty cell means --back-template."),
    BLANK_COLUMN("blank-column", Kind.TEXT, "COLUMN", "The blank of each row; an empty cell means --blank."),
    JIG_COLUMN("jig-column", Kind.TEXT, "COLUMN", "The jig of each row; an empty cell means --jig."),
    GROUP_BY(
            "group-by",
            Kind.LIST,
            "COLUMN",
            "Items share a plate only if these columns agree; several with commas between."),
    KEEP_TOGETHER(
            "keep-together",
            Kind.TEXT,
            "COLUMN",
            "Items of one value stay on one plate where one plate holds them; then the fewest plates."),
    PACKING_BY(
            "packing-by",
            Kind.TEXT,
            "COLUMN",
            "Add a packing list to the run sheet, by this column; if not given, by that of --keep-together."),
    ORDER_BY("order-by", Kind.LIST, "COLUMN", "Work in the order of these columns' values, then of the rows."),
    FILL(
            "fill",
            Kind.TEXT,
            "ORDER",
            "Fill the slots by rows, columns, serpentine or centre-out; if not given, as the jig lists them (file)."),
    SKIP_SLOTS("skip-slots", Kind.LIST, "SLOT", "Leave these slots empty; several with commas between."),
    FIRST_SLOT("first-slot", Kind.TEXT, "SLOT", "Begin the first plate with this slot; those before it are taken."),
    FILL_SPARES(
            "fill-spares",
            Kind.TEXT,
            "LINE",
            "Fill the last plate of a group with more pieces of this row: its line in the order, or item and a number."),
    FIRST_PIECE(
            "first-piece",
            Kind.FLAG,
            "",
            "Write the first piece after each set-up as a file of its own too, to be looked at before the tray."),
    SPOILAGE(
            "spoilage",
            Kind.TEXT,
            "PERCENT",
            "How many pieces of 100 fail: says how many spare blanks suffice in 95 runs of 100."),
    JIG_CENTRE("jig-centre", Kind.TEXT, "X,Y", "The point of the jig, in mm, that stands at the field's centre."),
    JIG_SHIFT(
            "jig-shift",
            Kind.TEXT,
            "DX,DY,ANGLE",
            "How the jig really lies: mm to the right, mm up, degrees anticlockwise about the field's centre."),
    JIG_STEPS(
            "jig-steps",
            Kind.TEXT,
            "STOPS",
            "To where a jig larger than the field can be shifted, in mm from where it is loaded: x=-60,0,60; y=0,80."),
    DATUM(
            "datum",
            Kind.TEXT,
            "SLOT=X,Y;...",
            "Where the centres of two or more slots were measured in the field, in mm from its centre: "
                    + "finds how the jig lies."),
    THREADS("threads", Kind.TEXT, "NUMBER", "On how many threads to work; if not given, one for each processor.");

    /** What a value is. */
    public enum Kind {
        TEXT,
        LIST,
        PATH,
        PATHS,
        DATE,
        FLAG
    }

    private final String option;
    private final Kind kind;
    private final String label;
    private final String help;

    JobKey(String option, Kind kind, String label, String help) {
        this.option = option;
        this.kind = kind;
        this.label = label;
        this.help = help;
    }

    /** The long option, without dashes. */
    public String option() {
        return option;
    }

    public Kind kind() {
        return kind;
    }

    /** What stands for its value in the help; empty for a flag. */
    public String label() {
        return label;
    }

    /** One sentence for the help. */
    public String help() {
        return help;
    }

    public static Optional<JobKey> named(String option) {
        return Arrays.stream(values()).filter(key -> key.option.equals(option)).findFirst();
    }

    public static List<String> options() {
        return Arrays.stream(values()).map(JobKey::option).toList();
    }
}
