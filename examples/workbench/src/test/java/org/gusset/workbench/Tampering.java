package org.gusset.workbench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Ways to spoil a document: one for each field of each kind of object, told by the names that lead to it. */
final class Tampering {
    /** One way, which can be taken back. */
    record Change(String what, Runnable make, Runnable undo) {}

    private final Set<String> seen = new HashSet<>();
    private final List<Change> changes = new ArrayList<>();

    List<Change> changes() {
        return changes;
    }

    @SuppressWarnings("unchecked")
    void of(@Nullable Object part, String at) {
        if (part instanceof List<?> list) {
            list.forEach(one -> of(one, at + "[]"));
        } else if (part instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> object = (Map<String, @Nullable Object>) map;
            boolean named = at.endsWith(".facts");
            String kind = at + "(" + object.getOrDefault("kind", "") + ")";
            if (!named && seen.add(kind)) {
                changes.add(new Change(
                        "strange field in " + kind, () -> object.put("strange", 1), () -> object.remove("strange")));
                List.copyOf(object.keySet()).forEach(field -> fields(object, field, kind + "." + field));
            }
            object.forEach((key, value) -> of(value, at + "." + (named ? "*" : key)));
        }
    }

    private void fields(Map<String, @Nullable Object> object, String field, String what) {
        Object value = object.get(field);
        changes.add(new Change(what + " missing", () -> object.remove(field), () -> object.put(field, value)));
        Object other = value instanceof Boolean ? "seven" : Boolean.TRUE;
        changes.add(
                new Change(what + " of another kind", () -> object.put(field, other), () -> object.put(field, value)));
    }
}
