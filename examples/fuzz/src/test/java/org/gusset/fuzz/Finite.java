package org.gusset.fuzz;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.JoinPlan;
import org.jspecify.annotations.Nullable;

/** Looks through records for numbers that are none. */
final class Finite {
    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            RecordComponent[] all = type.getRecordComponents();
            Arrays.stream(all).forEach(c -> c.getAccessor().setAccessible(true));
            return all;
        }
    };

    private Finite() {}

    /** Fails where a number of {@code value}, or of anything that it holds, is infinite or not a number. */
    static void all(@Nullable Object value, String where) {
        if (value instanceof Double number) {
            Must.hold(Double.isFinite(number), () -> number + " in " + where);
        } else if (value instanceof Phrase) {
            // A sentence may say that there is no value.
            return;
        } else if (value instanceof Path path) {
            all(path.segments(), where);
            all(path.length(), where + ".length");
        } else if (value instanceof List<?> list) {
            list.forEach(one -> all(one, where));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, one) -> all(one, where + "." + key));
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(one -> all(one, where));
        } else if (value instanceof Record record) {
            for (RecordComponent component : COMPONENTS.get(record.getClass())) {
                if (record instanceof JoinPlan && component.getName().equals("longest")) {
                    // Infinite where the cloth allows any length.
                    continue;
                }
                all(
                        part(component, record),
                        where + "/" + record.getClass().getSimpleName() + "." + component.getName());
            }
        }
    }

    private static @Nullable Object part(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (InvocationTargetException | IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }
}
