package dev.quoin.art;

import java.util.function.Supplier;

/** A value made when it is first asked for. Safe for use by several threads. */
final class Lazy<T> {
    private final Supplier<T> maker;
    private T made;

    Lazy(Supplier<T> maker) {
        this.maker = maker;
    }

    synchronized T get() {
        if (made == null) {
            made = maker.get();
        }
        return made;
    }
}
