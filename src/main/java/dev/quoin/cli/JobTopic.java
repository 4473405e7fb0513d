package dev.quoin.cli;

import dev.quoin.job.JobKey;
import java.util.Arrays;
import java.util.Set;

/** What an option of a job is about: the help lists the options of a topic together. */
enum JobTopic {
    MARKED(
            "What is marked",
            JobKey.TEMPLATE,
            JobKey.BACK_TEMPLATE,
            JobKey.TEMPLATE_COLUMN,
            JobKey.BACK_TEMPLATE_COLUMN,
            JobKey.FONTS,
            JobKey.SYSTEM_FONTS,
            JobKey.LOCALE,
            JobKey.DATE_FORMAT,
            JobKey.SERIAL_START,
            JobKey.SERIAL_STEP,
            JobKey.SERIAL_WIDTH,
            JobKey.SERIAL_PREFIX),
    ORDER("The order", JobKey.SEPARATOR, JobKey.QUANTITY_COLUMN, JobKey.SKIP_BAD_ROWS),
    SHOP(
            "Machine and material",
            JobKey.RECIPE,
            JobKey.RECIPE_COLUMN,
            JobKey.LENS,
            JobKey.BLANK,
            JobKey.BLANK_COLUMN,
            JobKey.SHOP),
    JIG(
            "The jig, and how it lies",
            JobKey.JIG,
            JobKey.JIG_COLUMN,
            JobKey.FLIP,
            JobKey.JIG_CENTRE,
            JobKey.JIG_SHIFT,
            JobKey.JIG_STEPS,
            JobKey.DATUM,
            JobKey.ROTARY,
            JobKey.BAND_OVERLAP),
    PLATES(
            "Which pieces share a plate, and in which slots",
            JobKey.GROUP_BY,
            JobKey.KEEP_TOGETHER,
            JobKey.ORDER_BY,
            JobKey.FILL,
            JobKey.FIRST_SLOT,
            JobKey.SKIP_SLOTS,
            JobKey.FILL_SPARES,
            JobKey.SPOILAGE),
    /** Also of all options that no other topic has. */
    FILES("What is written, and where");

    private final String title;
    private final Set<JobKey> keys;

    JobTopic(String title, JobKey... keys) {
        this.title = title;
        this.keys = Set.of(keys);
    }

    static JobTopic of(JobKey key) {
        return Arrays.stream(values())
                .filter(topic -> topic.keys.contains(key))
                .findFirst()
                .orElse(FILES);
    }

    /** The heading of its options. */
    String title() {
        return title;
    }
}
