package dev.quoin.job;

import dev.quoin.art.Columns;
import dev.quoin.art.TemplateCompiler;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.order.ExtraPieces;
import dev.quoin.order.Items;
import dev.quoin.order.Order;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the files of a job: the order, the shop's tables, the fonts. */
final class JobLoader {
    private final JobSettings settings;
    private final Problems problems;
    private InputFiles files = new InputFiles(KeptFiles.NONE);
    private Section section = Section.FIRST;
    private List<ExtraPieces> extras = List.of();
    private Optional<Table> arranged = Optional.empty();

    JobLoader(JobSettings settings, Problems problems) {
        this.settings = settings;
        this.problems = problems;
    }

    /**
     * Makes it read what a run is extended by.
     *
     * @param rows of the order, those of earlier sections first
     * @param kept the files of the run
     * @param more pieces that its plates were filled with
     */
    JobLoader extending(Section newSection, Table rows, KeptFiles kept, List<ExtraPieces> more) {
        extras = more;
        section = newSection;
        arranged = Optional.of(rows);
        files = new InputFiles(kept);
        return this;
    }

    /**
     * Reads them.
     *
     * @return nothing if there is no telling the rows of the order, or the shop, apart
     * @throws IOException if one that the job names is missing or cannot be read
     */
    Optional<LoadedJob> load() throws IOException {
        Threads.check(settings, problems);
        Optional<Shop> shop = shop();
        Optional<Order> order = order();
        FontLibrary fonts =
                FontLibrary.open(settings.paths(JobKey.FONTS), settings.flag(JobKey.SYSTEM_FONTS), problems);
        if (order.isEmpty() || shop.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt quantity = Role.column(order.get(), settings, JobKey.QUANTITY_COLUMN, problems);
        Items items = Items.of(order.get(), quantity, problems).with(extras);
        Locale locale = locale();
        Columns columns = new ColumnsReader(settings, order.get(), problems).read(items, locale);
        TemplateCompiler compiler = new TemplateCompiler(shop.get().processes(), fonts, columns, locale);
        Chooser chooser = new Chooser(
                settings,
                order.get(),
                shop.get(),
                new TemplateShelf(files, settings.folder(), compiler),
                new JigShelf(files, JigStand.of(settings, shop.get().machine(), problems)),
                problems);
        return Optional.of(new LoadedJob(
                settings,
                order.get(),
                items,
                shop.get(),
                chooser,
                files,
                section,
                fonts,
                new StandsReader(settings, problems).read()));
    }

    private Optional<Order> order() throws IOException {
        Path file = settings.order();
        byte[] bytes = files.readItself(file, "order");
        return TableReader.read(file.getFileName().toString(), bytes, separator(settings, problems), problems)
                .flatMap(table -> Order.of(arranged.orElse(table), problems));
    }

    private Optional<Shop> shop() throws IOException {
        Optional<Path> folder = settings.path(JobKey.SHOP);
        ShopFiles shop = folder.isPresent() ? ShopFiles.of(folder.get()) : ShopFiles.builtIn();
        for (Map.Entry<String, byte[]> file : shop.files().entrySet()) {
            files.keep("shop/" + file.getKey(), file.getValue());
        }
        return ShopReader.read(shop, problems);
    }

    /** What separates the order's cells, if the settings say it. */
    static Optional<Character> separator(JobSettings settings, Problems problems) {
        Optional<String> text = settings.text(JobKey.SEPARATOR);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String value = text.get().equals("tab") || text.get().equals("\\t") ? "\t" : text.get();
        if (value.length() == 1 && ",;\t|".contains(value)) {
            return Optional.of(value.charAt(0));
        }
        problems.error(
                settings.place(JobKey.SEPARATOR),
                "separator: '" + value + "' does not separate cells",
                "give , or ; or tab or |");
        return Optional.empty();
    }

    private Locale locale() {
        Optional<String> tag = settings.text(JobKey.LOCALE);
        if (tag.isEmpty()) {
            return Locale.ROOT;
        }
        Optional<Locale> locale = locale(tag.get()).filter(known -> isKnown(known.getLanguage()));
        if (locale.isEmpty()) {
            problems.error(
                    settings.place(JobKey.LOCALE),
                    "locale: '" + tag.get() + "' is no language tag",
                    "write one such as en-GB, de or cs-CZ");
        }
        return locale.orElse(Locale.ROOT);
    }

    private static Optional<Locale> locale(String tag) {
        try {
            return Optional.of(new Locale.Builder().setLanguageTag(tag).build());
        } catch (IllformedLocaleException e) {
            return Optional.empty();
        }
    }

    /** Whether a language has a code of two letters (ISO 639-1), or Java knows names of months in it. */
    private static boolean isKnown(String language) {
        return Arrays.asList(Locale.getISOLanguages()).contains(language)
                || Arrays.stream(Locale.getAvailableLocales())
                        .anyMatch(known -> known.getLanguage().equals(language));
    }
}
