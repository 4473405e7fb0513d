package dev.quoin.job;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.Point;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Machine;
import dev.quoin.shop.RecipeRows;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.Slot;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A trial as the files of a job: an order with a row for each label and each swatch, a template that draws either, a jig
 * whose slots are the cells of a grid laid over one slot of the user's jig, and the user's shop with a recipe for the trial.
 *
 * @param side of a swatch, mm
 */
record GridFiles(Swatches swatches, double side, Jig jig, Slot slot, Point jigCentre, String lens) {
    static final String TEMPLATE = "swatch.svg";
    static final String JIG = "swatches.csv";
    /** The folder of the shop, which problems name: the user has no such tables, and is not to look for them in his own. */
    static final String SHOP = "trial shop";

    static final List<String> ORDER = List.of("swatch", "label", "process", "tried_recipe", "tried_step");
    /** The free strip between two swatches, as a share of a swatch. */
    private static final double GAP = 0.25;

    /** The distance from one swatch to the next, mm. */
    double pitch() {
        return side * (1 + GAP);
    }

    double width() {
        return (swatches.columns() + 1) * pitch();
    }

    double height() {
        return (swatches.rows() + 1) * pitch();
    }

    /** The files by their names in the job's folder. */
    Map<String, byte[]> all(ShopFiles shop, Machine machine) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(JobSettingsReader.ORDER, bytes(order()));
        files.put(TEMPLATE, bytes(template()));
        files.put(JIG, bytes(cells()));
        for (Map.Entry<String, byte[]> file : shop.files().entrySet()) {
            files.put(SHOP + "/" + file.getKey(), file.getValue());
        }
        files.put(SHOP + "/" + ShopFiles.RECIPES, bytes(recipes()));
        byte[] table = shop.files().get(ShopFiles.MACHINE);
        files.put(SHOP + "/" + ShopFiles.MACHINE, bytes(MachineCsv.loadingOnce(table, machine)));
        return files;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** The labels of the columns, of the rows, then the swatches, in the order of the slots. */
    private String order() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int column = 0; column < swatches.columns(); column++) {
            rows.add(label(Swatches.letter(column), swatches.across().text(column)));
        }
        for (int row = 0; row < swatches.rows(); row++) {
            int at = row;
            rows.add(label(
                    Integer.toString(row + 1),
                    swatches.down().map(vary -> vary.text(at)).orElse("")));
        }
        for (Swatches.Swatch swatch : swatches.all()) {
            rows.add(List.of(
                    swatch.name(),
                    "",
                    Swatches.process(swatch.name()),
                    swatches.recipe().name(),
                    Integer.toString(swatches.tried().number())));
        }
        return table(ORDER, rows);
    }

    private List<String> label(String name, String value) {
        return List.of(
                "",
                (name + " " + value).strip(),
                Swatches.LABEL,
                swatches.recipe().name(),
                Integer.toString(swatches.tried().number()));
    }

    private String cells() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int column = 0; column < swatches.columns(); column++) {
            rows.add(cell("column-" + Swatches.letter(column), column + 1, 0));
        }
        for (int row = 0; row < swatches.rows(); row++) {
            rows.add(cell("row-" + (row + 1), 0, row + 1));
        }
        for (Swatches.Swatch swatch : swatches.all()) {
            rows.add(cell(swatch.name(), swatch.column() + 1, swatch.row() + 1));
        }
        return table(List.of("slot", "x_mm", "y_mm", "rotation_deg", "width_mm", "height_mm", "usable"), rows);
    }

    private List<String> cell(String id, int column, int row) {
        double x = (column + 0.5) * pitch() - width() / 2;
        double y = height() / 2 - (row + 0.5) * pitch();
        Affine pose = slot.pose();
        String size = Decimals.mm(pitch());
        return List.of(
                id,
                Decimals.text(pose.x(x, y), 6),
                Decimals.text(pose.y(x, y), 6),
                Decimals.text(slot.rotation(), 6),
                size,
                size,
                "true");
    }

    private String template() {
        String cell = Decimals.mm(pitch());
        String square = Decimals.mm(side);
        String from = Decimals.mm((pitch() - side) / 2);
        String middle = Decimals.mm(pitch() / 2);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + cell + "mm\" height=\"" + cell
                + "mm\" viewBox=\"0 0 "
                + cell + " " + cell + "\">\n"
                + "  <rect id=\"square\" class=\"${process}\" data-when=\"${swatch!}\" x=\"" + from + "\" y=\"" + from
                + "\" width=\"" + square + "\" height=\"" + square + "\"/>\n"
                + "  <rect id=\"room\" class=\"guide\" x=\"" + from + "\" y=\"" + from + "\" width=\"" + square
                + "\" height=\"" + square + "\" fill=\"none\"/>\n"
                + "  <text class=\"" + Swatches.LABEL + "\" data-when=\"${label!}\" data-fit=\"room\" data-lines=\"2\""
                + " data-min-height=\"0.5\" data-max-height=\"" + Decimals.mm(side / 4)
                + "\" text-anchor=\"middle\" x=\""
                + middle + "\" y=\"" + middle + "\" font-family=\"Stroke Sans\" font-size=\"2\">${label!}</text>\n"
                + "</svg>\n";
    }

    private String recipes() throws IOException {
        List<List<String>> rows = Stream.of(swatches.trial(lens), swatches.recipe())
                .flatMap(recipe -> RecipeRows.of(recipe).stream())
                .map(row -> RecipeRows.COLUMNS.stream().map(row::get).toList())
                .toList();
        return table(RecipeRows.COLUMNS, rows);
    }

    /** A table to fill in: what each swatch was marked with, and room for what became of it. */
    String results() throws IOException {
        List<String> header = new ArrayList<>(List.of("swatch"));
        header.add(swatches.across().parameter().column());
        swatches.down().ifPresent(vary -> header.add(vary.parameter().column()));
        header.addAll(List.of("colour", "depth_mm", "edge", "verdict"));
        List<List<String>> rows = new ArrayList<>();
        for (Swatches.Swatch swatch : swatches.all()) {
            List<String> row =
                    new ArrayList<>(List.of(swatch.name(), swatches.across().text(swatch.column())));
            swatches.down().ifPresent(vary -> row.add(vary.text(swatch.row())));
            row.addAll(List.of("", "", "", ""));
            rows.add(row);
        }
        return table(header, rows);
    }

    private static String table(List<String> header, List<List<String>> rows) throws IOException {
        StringBuilder text = new StringBuilder();
        TableWriter table = new TableWriter(text);
        table.row(header);
        for (List<String> row : rows) {
            table.row(row);
        }
        return text.toString();
    }
}
