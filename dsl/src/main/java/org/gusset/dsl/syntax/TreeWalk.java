package org.gusset.dsl.syntax;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Everything below a node of the syntax tree, whatever the form of the node. The parts are read off the records themselves, so that
 * a form that is added to the language cannot be forgotten here. Nodes are the records of this package, places excepted.
 */
public final class TreeWalk {
    private static final String SYNTAX = TreeWalk.class.getPackageName();

    /** What a record is made of, which its class alone tells; asking it for every node takes longer than all else. */
    private static final ClassValue<List<Method>> ACCESSORS = new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            if (components == null) {
                throw new IllegalArgumentException(type + " is no node of a syntax tree");
            }
            return Stream.of(components).map(RecordComponent::getAccessor).toList();
        }
    };

    private TreeWalk() {}

    /** Shows a node and all nodes below it, each before its parts, in the order in which their parts are declared. */
    public static void every(Object node, Consumer<Object> visit) {
        visit.accept(node);
        for (Object part : parts(node)) {
            every(part, visit);
        }
    }

    /** All nodes of one kind at or below a node. */
    public static <T> List<T> all(Object node, Class<T> kind) {
        List<T> found = new ArrayList<>();
        every(node, r -> {
            if (kind.isInstance(r)) {
                found.add(kind.cast(r));
            }
        });
        return found;
    }

    /** The nodes that a node is directly made of. */
    public static List<Object> parts(Object node) {
        List<Object> parts = new ArrayList<>();
        for (Method accessor : ACCESSORS.get(node.getClass())) {
            add(value(accessor, node), parts);
        }
        return parts;
    }

    private static void add(Object value, List<Object> parts) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(v -> add(v, parts));
        } else if (value instanceof Collection<?> several) {
            several.forEach(v -> add(v, parts));
        } else if (value instanceof Record && value.getClass().getPackageName().equals(SYNTAX)) {
            parts.add(value);
        }
    }

    private static Object value(Method accessor, Object node) {
        try {
            return accessor.invoke(node);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a part of a syntax node cannot be read", e);
        }
    }
}
