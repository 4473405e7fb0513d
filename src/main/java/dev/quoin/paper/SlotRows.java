package dev.quoin.paper;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.TemplateModelException;

/**
 * What sheets say of each slot, as HTML. A large run has more of it than of all else together, and a template takes some
 * ten times as long.
 */
final class SlotRows {
    private final Figures figures = new Figures();

    /** The slots of a jig's picture. */
    TemplateHTMLOutputModel picture(JigPicture picture) throws TemplateModelException {
        StringBuilder html = new StringBuilder(400 * picture.slots().size());
        for (JigPicture.Drawn drawn : picture.slots()) {
            draw(drawn, picture.unit(), html);
        }
        return HTMLOutputFormat.INSTANCE.fromMarkup(html.toString());
    }

    /** The rows of the table of loading: of each slot that is filled. */
    TemplateHTMLOutputModel loading(PlateView plate) throws TemplateModelException {
        StringBuilder html = new StringBuilder(400 * plate.slots().size());
        for (SlotView slot : plate.slots()) {
            if (slot.filled()) {
                load(slot, html);
            }
        }
        return HTMLOutputFormat.INSTANCE.fromMarkup(html.toString());
    }

    private void draw(JigPicture.Drawn drawn, double unit, StringBuilder html) {
        SlotView slot = drawn.slot();
        html.append("<g class=\"slot\" data-slot=\"").append(escaped(slot.id())).append('"');
        if (slot.filled()) {
            html.append(" data-picture-item=\"").append(slot.item()).append('"');
        }
        html.append("><path class=\"pocket ").append(drawn.state());
        html.append("\" transform=\"").append(drawn.transform());
        html.append("\" d=\"").append(drawn.path());
        html.append("\" fill=\"").append(slot.filled() ? "#fff" : "url(#hatch-" + drawn.state() + ")");
        html.append("\" stroke=\"#000\" stroke-width=\"").append(figures.plain(0.35 * unit));
        html.append("\"/><g transform=\"").append(drawn.labelTransform()).append("\" text-anchor=\"middle\">");
        String halo = slot.filled() ? "" : " stroke=\"#fff\" stroke-width=\"" + figures.plain(1.4 * unit) + "\"";
        drawn.lines().forEach(line -> write(line, halo, html));
        html.append("</g></g>\n");
    }

    private void write(JigPicture.Text line, String halo, StringBuilder html) {
        html.append("<text class=\"").append(line.kind()).append('"');
        html.append(line.kind().equals("text") ? "" : " font-weight=\"bold\"").append(halo);
        html.append(" x=\"").append(figures.plain(line.x()));
        html.append("\" y=\"").append(figures.plain(line.y()));
        html.append("\" font-size=\"").append(figures.plain(line.size()));
        html.append("\">").append(escaped(line.text())).append("</text>");
    }

    private static void load(SlotView slot, StringBuilder html) {
        html.append("<tr data-item=\"").append(slot.item()).append("\">");
        tick("done", slot.item(), html);
        html.append("<td class=\"slot-id\" dir=\"auto\">").append(escaped(slot.id()));
        html.append("</td><th scope=\"row\" class=\"number item-no\">").append(slot.item());
        html.append("</th><td>");
        String between = "";
        for (String line : slot.text()) {
            html.append(between)
                    .append("<span dir=\"auto\">")
                    .append(escaped(line))
                    .append("</span>");
            between = " <span class=\"small\" aria-hidden=\"true\">/</span> ";
        }
        html.append("</td><td class=\"number\">").append(slot.line()).append("</td>");
        tick("failed", slot.item(), html);
        html.append("</tr>\n");
    }

    private static void tick(String mark, int item, StringBuilder html) {
        html.append("<td class=\"tick\"><input type=\"checkbox\" data-mark=\"").append(mark);
        html.append("\" aria-label=\"Item ")
                .append(item)
                .append(' ')
                .append(mark)
                .append("\"/></td>");
    }

    private static String escaped(String text) {
        return HTMLOutputFormat.INSTANCE.escapePlainText(text);
    }
}
