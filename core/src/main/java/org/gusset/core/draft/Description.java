package org.gusset.core.draft;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.gusset.core.graph.Handle;
import org.gusset.core.pattern.TakenUp;

/**
 * A draft in words of its own, a line for each thing that it has and each node of its graph: what the fingerprint of a draft stands
 * for that has no text. Two drafts have the same description if they are put together of the same things in the same order.
 */
final class Description {
    private Description() {}

    static String of(Draft draft) {
        StringBuilder text = new StringBuilder();
        line(text, "title", draft.title());
        line(text, "note", draft.note());
        draft.measures().forEach(m -> line(text, "measure", m));
        draft.options().forEach(o -> line(text, "option", o));
        draft.values().forEach(v -> line(text, "value", v));
        draft.cloths().forEach(c -> line(text, "cloth", c));
        for (Draft.PieceNodes piece : draft.pieces()) {
            line(text, "piece", piece.name() + " " + piece.made() + " " + piece.outline());
            piece.named().forEach(n -> line(text, "named", n));
            piece.steps().forEach(s -> line(text, "step", s));
            Map<String, List<Handle<? extends TakenUp>>> inOrder = new TreeMap<>(piece.takenUp());
            line(text, "taken up", inOrder + (piece.strip() ? " strip" : "") + (piece.facing() ? " facing" : ""));
        }
        draft.checks().forEach(c -> line(text, "check", c));
        return text.append(draft.graph()).toString();
    }

    private static void line(StringBuilder text, String what, Object value) {
        text.append(what).append(' ').append(value).append('\n');
    }
}
