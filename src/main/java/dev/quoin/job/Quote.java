package dev.quoin.job;

import dev.quoin.plate.LensChoice;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Shop;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works out what a job would come to through each lens of the shop and on each of some jigs, and writes nothing. */
public final class Quote {
    private final JobSettings settings;
    private final List<String> otherJigs;
    private final Progress progress;

    /**
     * A quote for a job.
     *
     * @param otherJigs files of jigs to compare with its own, on which all rows would be worked
     */
    public Quote(JobSettings settings, List<String> otherJigs, Progress progress) {
        this.settings = settings;
        this.otherJigs = List.copyOf(otherJigs);
        this.progress = progress;
    }

    /**
     * Works it out; {@code problems} may hold what was found in the job's settings.
     *
     * @return nothing where there are errors
     * @throws IOException if a file that the job names is missing or cannot be read
     */
    public Outcome<Quotation> run(Problems problems) throws IOException {
        JobSettings own = throughAnyLens();
        Optional<LensQuotes> quotes = open(own, problems);
        if (quotes.isEmpty()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        List<QuoteLine> lines = new ArrayList<>(lines(quotes.get()));
        Map<String, String> unfit = new LinkedHashMap<>();
        for (String jig : otherJigs) {
            Problems ofJig = new Problems();
            Optional<LensQuotes> other = open(on(jig, own), ofJig);
            if (other.isPresent()) {
                lines.addAll(lines(other.get()));
            } else {
                unfit.put(jig, firstError(ofJig));
            }
        }
        Quotation quotation = new Quotation(
                settings.name(), quotes.get().items(), quotes.get().blanks(), lines, unfit);
        return new Outcome<>(Optional.of(quotation), problems.sorted());
    }

    private static String firstError(Problems problems) {
        return problems.sorted().stream()
                .filter(Problem::isError)
                .findFirst()
                .map(problem -> problem.place() + ": " + problem.message())
                .orElse("");
    }

    /** The job as it could be worked; nothing where errors stand in the way. */
    private Optional<LensQuotes> open(JobSettings chosen, Problems problems) throws IOException {
        Optional<LoadedJob> job = new JobLoader(chosen, problems).load();
        if (job.isEmpty()) {
            return Optional.empty();
        }
        checkLens(job.get().shop(), problems);
        boolean skipBadRows = chosen.flag(JobKey.SKIP_BAD_ROWS);
        // Made for what it finds wrong in the settings; each lens has one of its own.
        Layout layout = new Layout(job.get(), problems);
        Survey survey = new Surveyor(job.get(), problems, progress).survey();
        layout.checkSlots(survey);
        return new RowErrors(job.get(), problems).stopTheJob(skipBadRows)
                ? Optional.empty()
                : Optional.of(new LensQuotes(job.get(), survey, progress));
    }

    /** All lenses are compared, whichever the job names; one that there is not is a slip all the same. */
    private void checkLens(Shop shop, Problems problems) {
        settings.text(JobKey.LENS)
                .filter(name -> !name.equals(Chooser.AUTO))
                .ifPresent(name -> Chooser.known("lens", name, shop.lenses(), settings.place(JobKey.LENS), problems));
    }

    private static List<QuoteLine> lines(LensQuotes quotes) throws IOException {
        List<QuoteLine> lines = new ArrayList<>();
        for (Lens lens : LensChoice.finestFirst(quotes.lenses())) {
            lines.add(quotes.line(lens));
        }
        return lines;
    }

    private JobSettings on(String jig, JobSettings own) {
        Map<JobKey, Setting> given = new HashMap<>(own.given());
        given.remove(JobKey.JIG_COLUMN);
        given.put(JobKey.JIG, new Setting(jig, Place.of("--other-jig"), settings.workingFolder()));
        return with(given);
    }

    private JobSettings throughAnyLens() {
        Map<JobKey, Setting> given = new HashMap<>(settings.given());
        given.put(JobKey.LENS, new Setting(Chooser.AUTO, settings.place(JobKey.LENS), settings.workingFolder()));
        return with(given);
    }

    private JobSettings with(Map<JobKey, Setting> given) {
        return new JobSettings(settings.name(), settings.order(), settings.folder(), settings.workingFolder(), given);
    }
}
