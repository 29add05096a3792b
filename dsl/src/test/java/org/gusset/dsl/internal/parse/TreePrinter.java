package org.gusset.dsl.internal.parse;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/**
 * Any tree of records as indented text: a node a line with its place, plain values beside it, nodes below it under the name of their
 * component. What is empty or false is left out.
 */
final class TreePrinter {
    private final StringBuilder out = new StringBuilder();

    private TreePrinter() {}

    static String print(Record tree) {
        TreePrinter printer = new TreePrinter();
        printer.node("", "", tree);
        return printer.out.toString();
    }

    /** What a node is called: statements and expressions by their own name, others with their family's before it. */
    static String name(Class<?> type) {
        Class<?> family = type.getEnclosingClass();
        boolean plain = family == null || family == Statement.class || family == Expr.class;
        return (plain ? "" : family.getSimpleName() + ".") + type.getSimpleName();
    }

    private void node(String indent, String label, Record node) {
        out.append(indent).append(label).append(name(node.getClass()));
        for (RecordComponent component : node.getClass().getRecordComponents()) {
            Object value = valueOf(component, node);
            if (value instanceof Span span) {
                out.append(' ').append(place(span));
            } else if (isPlain(value)) {
                out.append(' ').append(component.getName()).append('=').append(plain(value));
            }
        }
        out.append('\n');
        for (RecordComponent component : node.getClass().getRecordComponents()) {
            Object value = valueOf(component, node);
            if (!(value instanceof Span) && !isPlain(value)) {
                below(indent + "  ", component.getName() + " ", value);
            }
        }
    }

    private void below(String indent, String label, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(v -> below(indent, label, v));
        } else if (value instanceof Collection<?> several) {
            several.forEach(v -> below(indent, label, v));
        } else if (value instanceof Record node) {
            node(indent, label, node);
        } else if (!Boolean.FALSE.equals(value)) {
            throw new IllegalArgumentException("no way to print " + value);
        }
    }

    private static Object valueOf(RecordComponent component, Record node) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(node);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean isPlain(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() && isPlain(optional.get());
        } else if (value instanceof Collection<?> several) {
            return !several.isEmpty() && several.stream().allMatch(TreePrinter::isPlain);
        }
        return value instanceof String
                || value instanceof Number
                || Boolean.TRUE.equals(value)
                || value instanceof Enum<?>
                || value instanceof Name
                || value instanceof Quantity;
    }

    private static String plain(Object value) {
        if (value instanceof Optional<?> optional) {
            return plain(optional.orElseThrow());
        } else if (value instanceof Collection<?> several) {
            return String.join(",", several.stream().map(TreePrinter::plain).toList());
        } else if (value instanceof Name name) {
            return name.text() + place(name.span());
        } else if (value instanceof Quantity quantity) {
            return quantity(quantity);
        }
        return value instanceof String text ? '"' + text + '"' : value.toString();
    }

    private static String quantity(Quantity quantity) {
        String number = String.format(Locale.ROOT, "%.6f", quantity.value()).replaceAll("\\.?0+$", "");
        if (quantity.dimension().equals(Dimension.LENGTH)) {
            return number + "mm";
        }
        return quantity.dimension().equals(Dimension.ANGLE) ? number + "deg" : number;
    }

    private static String place(Span span) {
        String to = span.endLine() == span.line() ? "" : span.endLine() + ":";
        return "[" + span.line() + ":" + span.column() + "-" + to + span.endColumn() + "]";
    }
}
