package org.gusset.dsl.internal.parse;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Consumer;

/** Walks over trees of records. */
final class Trees {
    private Trees() {}

    /** Every record below a node, the node included, from the top down. */
    static void walk(Object node, Consumer<Record> visit) {
        if (node instanceof Record record) {
            visit.accept(record);
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                walk(part(record, component), visit);
            }
        } else if (node instanceof Collection<?> list) {
            list.forEach(part -> walk(part, visit));
        } else if (node instanceof Optional<?> optional) {
            optional.ifPresent(part -> walk(part, visit));
        }
    }

    private static Object part(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
