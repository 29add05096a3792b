package org.gusset.dsl.internal.parse;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;

/** Bounds the length of names, since they are compared with one another and go into every output. */
final class NameLengths {
    private final int most;
    private final Spans spans;
    private final Faults faults;

    NameLengths(int most, Spans spans, Faults faults) {
        this.most = most;
        this.spans = spans;
        this.faults = faults;
    }

    /** The tokens, with names that are too long told and cut off. */
    List<CommonToken> bounded(List<CommonToken> tokens) {
        for (CommonToken token : tokens) {
            String text = token.getText();
            if (text.length() > most && Words.isName(token.getType())) {
                faults.tell(
                        SyntaxCode.NAME_TOO_LONG,
                        spans.of(token),
                        Hint.of("name.shorter", "Give it a shorter name."),
                        "length",
                        Fact.number(text.length()),
                        "most",
                        most);
                token.setText(text.substring(
                        0, text.offsetByCodePoints(0, Math.min(most, text.codePointCount(0, text.length())))));
            }
        }
        return tokens;
    }
}
