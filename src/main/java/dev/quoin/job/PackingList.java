package dev.quoin.job;

import dev.quoin.order.Item;
import dev.quoin.paper.PlateView;
import dev.quoin.paper.SheetFoot;
import dev.quoin.paper.SlotView;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Sorts a run's pieces by whom they are for: by the column of {@code --packing-by}, else by that of {@code
 * --keep-together}, else not at all. Parcels come in the order in which the file first names them, pieces by number.
 */
final class PackingList {
    private final LoadedJob job;
    private final OptionalInt column;
    private final List<Optional<SheetFoot.Piece>> pieces = new ArrayList<>();

    PackingList(LoadedJob job, Problems problems) {
        this.job = job;
        JobKey key = job.settings().text(JobKey.PACKING_BY).isPresent() ? JobKey.PACKING_BY : JobKey.KEEP_TOGETHER;
        this.column = Role.column(job.order(), job.settings(), key, problems);
        if (column.isPresent()) {
            job.items().forEach(item -> pieces.add(Optional.empty()));
        }
    }

    /** Takes the pieces of a plate, as its block on the run sheet shows them. */
    void take(PlateView plate) {
        if (column.isEmpty()) {
            return;
        }
        for (SlotView slot : plate.slots()) {
            if (slot.filled()) {
                var piece = new SheetFoot.Piece(slot.item(), slot.text(), plate.number(), slot.id());
                pieces.set(slot.item() - 1, Optional.of(piece));
            }
        }
    }

    List<SheetFoot.Parcel> parcels() {
        Map<String, List<SheetFoot.Piece>> parcels = new LinkedHashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            Optional<SheetFoot.Piece> piece = pieces.get(i);
            if (piece.isPresent()) {
                parcels.computeIfAbsent(name(job.items().get(i)), name -> new ArrayList<>())
                        .add(piece.get());
            }
        }
        return parcels.entrySet().stream()
                .map(parcel -> new SheetFoot.Parcel(parcel.getKey(), parcel.getValue()))
                .toList();
    }

    private String name(Item item) {
        String value = item.row().cells().get(column.getAsInt()).strip();
        return value.isEmpty() ? job.order().headers().get(column.getAsInt()).strip() + ": none given" : value;
    }
}
