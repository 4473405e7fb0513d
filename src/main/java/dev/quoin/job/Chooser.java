package dev.quoin.job;

import dev.quoin.drawing.Page;
import dev.quoin.geometry.Decimals;
import dev.quoin.order.Order;
import dev.quoin.order.Row;
import dev.quoin.plate.Group;
import dev.quoin.plate.LensChoice;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Shop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds what is chosen for each row: its template, recipe, blank, jig and lens. Files are read and compiled once. Safe
 * for use by several threads.
 */
final class Chooser {
    /** The lens is chosen when all rows are known; until then the finest stands for it. */
    static final String AUTO = "auto";

    /** How far a page may be wider than the way around by the rounding of numbers, mm. */
    private static final double WIDTH_TOLERANCE = 0.01;
    /** The difference of the diameters for each mm of height: that of a cup whose wall leans by 30 degrees. */
    private static final double MOST_TAPER = 1;

    private final JobSettings settings;
    private final Order order;
    private final Shop shop;
    private final TemplateShelf templates;
    private final JigShelf jigs;
    private final Role templateRole;
    private final Optional<Role> backRole;
    private final Optional<Rotary> rotary;
    private final Role jigRole;
    private final Role recipeRole;
    private final Role blankRole;
    private final List<Integer> groupColumns = new ArrayList<>();
    private final List<Integer> deciding = new ArrayList<>();
    private final Map<Group, Group> groups = new HashMap<>();
    private final Map<List<String>, Choice> chosen = new HashMap<>();

    Chooser(JobSettings settings, Order order, Shop shop, TemplateShelf templates, JigShelf jigs, Problems problems) {
        this.settings = settings;
        this.order = order;
        this.shop = shop;
        this.templates = templates;
        this.jigs = jigs;
        templateRole = new Role(order, settings, JobKey.TEMPLATE, JobKey.TEMPLATE_COLUMN, problems);
        rotary = Rotary.read(settings, problems);
        backRole = StandsReader.isTwoSided(settings)
                ? Optional.of(new Role(order, settings, JobKey.BACK_TEMPLATE, JobKey.BACK_TEMPLATE_COLUMN, problems))
                : Optional.empty();
        jigRole = new Role(order, settings, JobKey.JIG, JobKey.JIG_COLUMN, problems);
        recipeRole = new Role(order, settings, JobKey.RECIPE, JobKey.RECIPE_COLUMN, problems);
        blankRole = new Role(order, settings, JobKey.BLANK, JobKey.BLANK_COLUMN, problems);
        for (String name : settings.list(JobKey.GROUP_BY)) {
            OptionalInt column = Role.column(order, name, settings.place(JobKey.GROUP_BY), JobKey.GROUP_BY, problems);
            column.ifPresent(groupColumns::add);
        }
        deciding.addAll(groupColumns);
        for (Role role : List.of(templateRole, jigRole, recipeRole, blankRole)) {
            role.column().ifPresent(deciding::add);
        }
        backRole.ifPresent(role -> role.column().ifPresent(deciding::add));
    }

    /** What is chosen for a row; what is missing or unknown is a problem, and then there is no choice. */
    synchronized Optional<Choice> choose(Row row, Problems problems) throws IOException {
        List<String> key =
                deciding.stream().map(column -> row.cells().get(column).strip()).toList();
        Choice known = chosen.get(key);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Choice> made = make(row, problems);
        made.ifPresent(choice -> chosen.put(key, choice));
        return made;
    }

    private Optional<Choice> make(Row row, Problems problems) throws IOException {
        Optional<Recipe> recipe = required(recipeRole.of(row), recipeRole, row, problems)
                .flatMap(name -> known("recipe", name, shop.recipes(), recipeRole.place(row), problems));
        Optional<String> blankName = blankRole.of(row);
        Optional<Blank> blank =
                blankName.flatMap(name -> known("blank", name, shop.blanks(), blankRole.place(row), problems));
        Optional<List<ChosenTemplate>> sides = sides(row, problems);
        Optional<Jig> jig = settings.text(JobKey.ROTARY).isPresent()
                ? sides.flatMap(all -> turned(all.get(0), row, problems))
                : jig(row, problems);
        Optional<Lens> lens = lens(recipe, problems);
        if (recipe.isEmpty() || blankName.isPresent() && blank.isEmpty()) {
            return Optional.empty();
        }
        if (sides.isEmpty()) {
            return Optional.empty();
        }
        boolean suited = true;
        for (ChosenTemplate side : sides.get()) {
            suited &= side.template().suits(recipe.get(), problems);
        }
        if (jig.isEmpty() || lens.isEmpty() || !suited) {
            return Optional.empty();
        }
        List<String> values = groupColumns.stream()
                .map(column -> row.cells().get(column).strip())
                .toList();
        Group group =
                groups.computeIfAbsent(new Group(recipe.get(), blank, jig.get(), lens.get(), values), made -> made);
        return Optional.of(new Choice(sides.get(), group));
    }

    private Optional<Jig> jig(Row row, Problems problems) throws IOException {
        Optional<Path> file = required(jigRole.pathOf(row, problems), jigRole, row, problems);
        return file.isEmpty() ? Optional.empty() : jigs.take(file.get(), source(jigRole, row), problems);
    }

    /** What turns a round piece with this drawing on it. */
    private Optional<Jig> turned(ChosenTemplate side, Row row, Problems problems) {
        Page page = side.template().page();
        Optional<Cylinder> piece = rotary.map(one -> one.piece(page.height()));
        if (piece.isPresent() && page.width() > piece.get().circumference() + WIDTH_TOLERANCE) {
            problems.error(
                    Place.of(side.name()),
                    "its page is " + Decimals.mm(page.width()) + " mm wide, and the way around the piece is "
                            + Decimals.mm(piece.get().circumference()) + " mm",
                    "make the page narrower, or correct --rotary");
            return Optional.empty();
        }
        if (piece.isPresent() && !(Math.abs(piece.get().bottom() - piece.get().top()) < MOST_TAPER * page.height())) {
            problems.error(
                    settings.place(JobKey.ROTARY),
                    "rotary: over the " + Decimals.mm(page.height()) + " mm of " + side.name()
                            + " no cup tapers so much",
                    "give the diameters at the drawing's lower and upper edge");
            return Optional.empty();
        }
        return piece.map(Jig::turning).flatMap(jig -> jigs.stand(jig, problems));
    }

    /** The template of each side that is marked; nothing if one is missing. */
    private Optional<List<ChosenTemplate>> sides(Row row, Problems problems) throws IOException {
        List<ChosenTemplate> sides = new ArrayList<>();
        List<Role> roles = new ArrayList<>(List.of(templateRole));
        backRole.ifPresent(roles::add);
        for (Role role : roles) {
            Optional<Path> file = required(role.pathOf(row, problems), role, row, problems);
            if (file.isPresent()) {
                templates
                        .take(file.get(), source(role, row), problems)
                        .ifPresent(one -> sides.add(new ChosenTemplate(one, templates.nameOf(file.get()))));
            }
        }
        return sides.size() == roles.size() ? Optional.of(sides) : Optional.empty();
    }

    /** A file that a row names may be missing for this row alone; one that the job names is missing for all. */
    private Optional<Place> source(Role role, Row row) {
        return role.isChosenBy(row) ? Optional.of(role.place(row)) : Optional.empty();
    }

    private <T> Optional<T> required(Optional<T> value, Role role, Row row, Problems problems) {
        if (value.isEmpty() && !role.isChosenBy(row)) {
            String option = role.key().option();
            problems.error(
                    settings.given().isEmpty() ? Place.of(order.file()) : role.place(row),
                    "no " + option + " is chosen",
                    "give --" + option + ", or set it in " + JobSettingsReader.PROPERTIES);
        }
        return value;
    }

    private Optional<Lens> lens(Optional<Recipe> forRecipe, Problems problems) {
        Optional<String> asked = settings.text(JobKey.LENS);
        if (asked.filter(AUTO::equals).isPresent()) {
            return LensChoice.finestFirst(shop.lenses().values()).stream().findFirst();
        }
        if (asked.isPresent()) {
            return known("lens", asked.get(), shop.lenses(), settings.place(JobKey.LENS), problems);
        }
        if (forRecipe.isEmpty()) {
            return Optional.empty();
        }
        Recipe recipe = forRecipe.get();
        if (recipe.lens().isEmpty()) {
            problems.error(
                    recipe.place(),
                    "no lens is chosen, and the recipe " + recipe.name() + " names none",
                    "give --lens; " + Suggestion.remedy("", shop.lenses().keySet()));
            return Optional.empty();
        }
        return known("lens", recipe.lens(), shop.lenses(), recipe.place(), problems);
    }

    /** What a name stands for; one that is not known is an error at its place. */
    static <T> Optional<T> known(String what, String name, Map<String, T> all, Place place, Problems problems) {
        Optional<T> found = Optional.ofNullable(all.get(name));
        if (found.isEmpty()) {
            problems.error(place, "unknown " + what + " '" + name + "'", Suggestion.remedy(name, all.keySet()));
        }
        return found;
    }
}
