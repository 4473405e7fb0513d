package dev.quoin.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The same run several times, the quickest first. */
record Runs(List<Child> byTime) {
    /** Runs something once. */
    interface Once {
        Child run() throws IOException;
    }

    static Runs of(int times, Once once) throws IOException {
        List<Child> runs = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            runs.add(once.run());
        }
        runs.sort(Comparator.comparingDouble(Child::seconds));
        return new Runs(runs);
    }

    Child least() {
        return byTime.get(0);
    }

    Child median() {
        return byTime.get(byTime.size() / 2);
    }
}
