package dev.quoin.art;

import dev.quoin.order.Item;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import java.util.Optional;

/** What templates may ask about the item itself. A column of the same name comes first. */
enum ItemValues {
    ITEM_NUMBER,
    COPY_NUMBER,
    SERIAL;

    /** Its variable's name. */
    static Optional<ItemValues> named(String name) {
        return switch (name) {
            case "item_number" -> Optional.of(ITEM_NUMBER);
            case "copy_number" -> Optional.of(COPY_NUMBER);
            case "serial" -> Optional.of(SERIAL);
            default -> Optional.empty();
        };
    }

    /** Whether there is one: serial numbers must have been set up. */
    boolean exists(Columns columns) {
        return this != SERIAL || columns.serial().isPresent();
    }

    Optional<TemplateModel> of(Item item, Columns columns) {
        return switch (this) {
            case ITEM_NUMBER -> Optional.of(new SimpleNumber(item.number()));
            case COPY_NUMBER -> Optional.of(new SimpleNumber(item.copy()));
            case SERIAL -> columns.serial().map(serial -> new SimpleScalar(serial.of(item.number())));
        };
    }
}
