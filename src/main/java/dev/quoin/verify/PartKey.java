package dev.quoin.verify;

/** A part of a plate of a run, by their numbers. */
record PartKey(int plate, int part) implements Comparable<PartKey> {
    @Override
    public int compareTo(PartKey other) {
        return plate == other.plate ? Integer.compare(part, other.part) : Integer.compare(plate, other.plate);
    }

    @Override
    public String toString() {
        return "plate " + plate + ", part " + part;
    }
}
