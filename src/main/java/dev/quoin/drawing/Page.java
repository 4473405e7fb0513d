package dev.quoin.drawing;

/** The page of a drawing: its real size, mm. */
public record Page(double width, double height) {
    public Page {
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("page of " + width + " x " + height + " mm");
        }
    }
}
