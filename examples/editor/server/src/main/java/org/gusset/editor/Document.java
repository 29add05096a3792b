package org.gusset.editor;

import java.util.List;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.gusset.dsl.Source;

/**
 * An open text as it stands in the editor. Immutable.
 *
 * @param uri what the editor calls it
 * @param source its name, see {@link SourceNames}, and its text
 * @param version the editor's number of this state
 */
record Document(String uri, Source source, int version, Lines lines) {
    static Document of(String uri, String text, int version) {
        return new Document(uri, Source.of(SourceNames.of(uri), text), version, new Lines(text));
    }

    String text() {
        return source.text();
    }

    String name() {
        return source.name();
    }

    /** True if it is the same state of the same text. */
    boolean isSame(Document other) {
        return uri.equals(other.uri) && version == other.version && source.equals(other.source);
    }

    /** The text after some changes, one after the other; each counts from what the one before has left. */
    Document changed(List<TextDocumentContentChangeEvent> changes, int newVersion) {
        String text = text();
        Lines where = lines;
        for (TextDocumentContentChangeEvent change : changes) {
            Range range = change.getRange();
            String put = change.getText() == null ? "" : change.getText();
            if (range == null) {
                text = put;
            } else {
                int one = where.offset(range.getStart());
                int other = where.offset(range.getEnd());
                text = text.substring(0, Math.min(one, other)) + put + text.substring(Math.max(one, other));
            }
            where = new Lines(text);
        }
        return new Document(uri, Source.of(name(), text), newVersion, where);
    }
}
