package dev.quoin.bench;

/** A program that does nothing but say so. */
final class Bare {
    private Bare() {}

    public static void main(String[] args) {
        System.out.println("nothing");
    }
}
