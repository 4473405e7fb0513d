package dev.quoin.drawing;

import dev.quoin.geometry.Box;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The drawings that a drawing shows, each read once while it is remembered: orders repeat them. */
final class Pictures {
    private static final int MOST_REMEMBERED = 200;

    private final ArtFolder folder;
    private final Map<String, Picture> remembered = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Picture> eldest) {
            return size() > MOST_REMEMBERED;
        }
    };

    Pictures(ArtFolder folder) {
        this.folder = folder;
    }

    ArtFile find(String reference) {
        return folder.find(reference);
    }

    Picture picture(FoundArt art) {
        return remembered.computeIfAbsent(art.name(), name -> read(art));
    }

    private static Picture read(FoundArt art) {
        Problems problems = new Problems();
        Optional<SvgElement> root = SvgReader.read(art.name(), art.content(), problems);
        Optional<Frame> frame = root.flatMap(svg -> FrameReader.readUnits(svg, problems));
        List<DrawnShape> shapes = new ArrayList<>();
        if (frame.isPresent()) {
            SvgDrawing.of(root.get(), frame.get(), ArtFolder.NONE, problems)
                    .ifPresent(drawing -> shapes.addAll(shapes(drawing, problems)));
        }
        Box box = frame.map(Frame::viewBox)
                .map(view -> Box.centred(view.width(), view.height()))
                .orElse(Box.EMPTY);
        return new Picture(List.copyOf(shapes), box, problems.sorted());
    }

    private static List<DrawnShape> shapes(SvgDrawing drawing, Problems problems) {
        for (VariableAttribute attribute : drawing.variableAttributes()) {
            Element element = attribute.element();
            problems.error(
                    element.place(),
                    element.describe() + " has a placeholder, and art that a template shows is the same for all rows",
                    "write its value, or move the element into the template");
        }
        List<DrawnShape> shapes = new ArrayList<>();
        for (Drawn drawn : drawing.draw(problems)) {
            if (drawn instanceof DrawnShape shape) {
                shapes.add(shape);
            } else if (drawn instanceof DrawnText text) {
                problems.error(
                        text.element().place(),
                        text.element().describe() + " is text, and art that a template shows has shapes only",
                        "turn it into paths, or move it into the template");
            }
        }
        return shapes;
    }
}
