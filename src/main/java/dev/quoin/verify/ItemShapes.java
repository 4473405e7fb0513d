package dev.quoin.verify;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.plate.Placement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Each item's marks, and their boxes, around the item's own centre, by group: alike wherever the item lies. */
final class ItemShapes implements PlateGroups {
    private final Map<Integer, Placement> placements;
    private final Map<String, List<Box>> boxes = new HashMap<>();
    private final Map<Integer, List<Path>> paths = new HashMap<>();
    private final Map<String, List<Path>> pathsOfGroup = new HashMap<>();
    private Affine toField = Affine.IDENTITY;
    private Affine toItem = Affine.IDENTITY;
    private List<Box> current = new ArrayList<>();
    private List<Path> currentPaths = new ArrayList<>();
    private List<Path> currentGroup = new ArrayList<>();

    /** Items without a placement are passed over. */
    ItemShapes(Map<Integer, Placement> placements) {
        this.placements = placements;
    }

    /** The marks of an item in a step; none if it has none. */
    List<Box> boxes(int step, int item) {
        return boxes.getOrDefault(InkCheck.group(step, item), List.of());
    }

    /** The marks of an item in a step; none if it has none. */
    List<Path> paths(int step, int item) {
        return pathsOfGroup.getOrDefault(InkCheck.group(step, item), List.of());
    }

    /** The marks of an item in all its steps. */
    List<Path> paths(int item) {
        return paths.getOrDefault(item, List.of());
    }

    @Override
    public void page(double width, double height) {
        toField = new Affine(1, 0, 0, -1, -width / 2, height / 2);
    }

    @Override
    public void item(int step, int item) {
        current = new ArrayList<>();
        currentPaths = new ArrayList<>();
        currentGroup = new ArrayList<>();
        Placement placement = placements.get(item);
        if (placement != null) {
            toItem = toField.then(placement.pose().inverse());
            currentPaths = paths.computeIfAbsent(item, made -> new ArrayList<>());
            boxes.put(InkCheck.group(step, item), current);
            pathsOfGroup.put(InkCheck.group(step, item), currentGroup);
        }
    }

    @Override
    public void path(Path path) {
        Path inItem = path.transform(toItem);
        current.add(inItem.bounds());
        currentPaths.add(inItem);
        currentGroup.add(inItem);
    }
}
