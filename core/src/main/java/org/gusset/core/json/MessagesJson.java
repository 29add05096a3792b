package org.gusset.core.json;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Wording;

/**
 * Diagnostics as JSON for programs: an array with one object for each, in their order.
 *
 * <pre>
 * {"code": "NAM001", "severity": "error", "message": "...",
 *  "place": {"kind": "span", "source": "smock.gusset", "start": 210, "end": 217,
 *            "line": 12, "column": 15, "endLine": 12, "endColumn": 22},
 *  "related": [{"message": "...", "place": {...}}],
 *  "hints": [{"message": "...", "edit": {"at": {...}, "text": "shoulder"}}],
 *  "facts": {"name": {"kind": "words", "text": "sholder"}}}
 * </pre>
 *
 * <p>{@code start} and {@code end} count UTF-16 units from 0; lines and columns count from 1, columns in code points. Other places
 * are {@code {"kind": "cell", "table", "row", "column", "text"}}, {@code {"kind": "named", "name"}} and {@code {"kind": "nowhere"}}.
 * A hint that is no exact edit has {@code "edit": null}. Facts are {@code words} with {@code text}, {@code length} with {@code mm},
 * {@code area} with {@code squareMm}, {@code angle} with {@code degrees}, {@code number} with {@code value}; what is no number is
 * {@code null}. A fact that is a sentence itself is a {@code phrase} with its {@code key}, its {@code english} and its own
 * {@code facts}.
 */
public final class MessagesJson {
    private MessagesJson() {}

    /** All messages, in English with lengths in centimetres. */
    public static String of(List<Diagnostic> diagnostics) {
        return of(diagnostics, Wording.english());
    }

    /** All messages in other words. */
    public static String of(List<Diagnostic> diagnostics, Wording wording) {
        JsonText json = new JsonText();
        new Messages(json, wording).all(diagnostics);
        return json.toString();
    }
}
