package org.gusset.fuzz;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.DraftTree;
import org.jspecify.annotations.Nullable;

/** A syntax tree as text, without its places. */
final class Meaning {
    private Meaning() {}

    static String of(DraftTree tree) {
        StringBuilder out = new StringBuilder();
        shape(tree, out);
        return out.toString();
    }

    private static void shape(@Nullable Object value, StringBuilder out) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresentOrElse(v -> shape(v, out), () -> out.append('-'));
        } else if (value instanceof Collection<?> several) {
            out.append('[');
            several.forEach(v -> shape(v, out));
            out.append(']');
        } else if (value instanceof Record node) {
            out.append(node.getClass().getSimpleName()).append('(');
            for (RecordComponent component : node.getClass().getRecordComponents()) {
                if (component.getType() != Span.class) {
                    shape(part(component, node), out);
                    out.append(' ');
                }
            }
            out.append(")\n");
        } else {
            out.append(value);
        }
    }

    private static @Nullable Object part(RecordComponent component, Record node) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(node);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
