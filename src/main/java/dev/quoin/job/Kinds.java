package dev.quoin.job;

import dev.quoin.format.PlateKind;
import dev.quoin.paper.PaperKind;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The kinds of file that are asked for.
 *
 * @param plates SVG always among them
 * @param papers HTML always among them
 */
record Kinds(Set<PlateKind> plates, Set<PaperKind> papers) {
    /** Those that a job asks for; one that there is not is a problem. */
    static Kinds of(JobSettings settings, Problems problems) {
        return new Kinds(
                plates(settings.list(JobKey.PLATE_FORMAT), settings.place(JobKey.PLATE_FORMAT), problems),
                papers(settings.list(JobKey.SHEET), settings.place(JobKey.SHEET), problems));
    }

    static Set<PlateKind> plates(List<String> words, Place place, Problems problems) {
        Set<PlateKind> kinds = EnumSet.of(PlateKind.SVG);
        for (String word : words) {
            String trouble = "plates cannot be written as '" + word + "'";
            known(word, PlateKind::named, PlateKind.words(), place, trouble, problems)
                    .ifPresent(kinds::add);
        }
        return kinds;
    }

    static Set<PaperKind> papers(List<String> words, Place place, Problems problems) {
        Set<PaperKind> kinds = EnumSet.of(PaperKind.HTML);
        for (String word : words) {
            String trouble = "a sheet cannot be written as '" + word + "'";
            known(word, PaperKind::named, PaperKind.words(), place, trouble, problems)
                    .ifPresent(kinds::add);
        }
        return kinds;
    }

    boolean pdfPaper() {
        return papers.contains(PaperKind.PDF);
    }

    private static <T> Optional<T> known(
            String word,
            Function<String, Optional<T>> named,
            List<String> words,
            Place place,
            String trouble,
            Problems problems) {
        Optional<T> kind = named.apply(word);
        if (kind.isEmpty()) {
            problems.error(place, trouble, Suggestion.remedy(word, words));
        }
        return kind;
    }
}
