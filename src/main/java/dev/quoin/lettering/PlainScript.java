package dev.quoin.lettering;

/** What a plain text is taken for: rules of a font may differ between Latin text and text without a letter. */
enum PlainScript {
    LATIN('n'),
    COMMON('0');

    private final char lead;

    PlainScript(char lead) {
        this.lead = lead;
    }

    /** A character that settles the script of what stands behind it. */
    char lead() {
        return lead;
    }
}
