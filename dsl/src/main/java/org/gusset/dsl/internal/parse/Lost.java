package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.gusset.dsl.syntax.Name;

/** What statements that cannot be read were to define, so that nothing is said to be missing for want of them. */
final class Lost {
    private final Spans spans;

    Lost(Spans spans) {
        this.spans = spans;
    }

    /**
     * The names that some tokens may have been meant to define: every one that stands there, reserved words too where a definition has
     * its name, and one without letters for a definition that has lost its name.
     */
    List<Name> names(List<CommonToken> tokens) {
        List<Name> names = new ArrayList<>();
        // A definition that breaks off within its first words has lost its name, or the end of it.
        boolean nameless = tokens.size() < 3 && Words.defines(tokens.get(0).getType());
        for (int i = 0; i < tokens.size(); i++) {
            CommonToken token = tokens.get(i);
            boolean equals = i + 1 < tokens.size() && tokens.get(i + 1).getType() == GussetLexer.EQUALS;
            boolean word = Words.isStatement(token.getType());
            if (Words.isName(token.getType())
                    || (i > 0 && equals && Words.isReserved(token.getType()) && !word)
                    || (i > 0 && word && Words.isStatement(tokens.get(i - 1).getType()))) {
                names.add(new Name(token.getText(), spans.of(token)));
            }
            nameless |= equals && word;
        }
        if (nameless) {
            names.add(new Name("", spans.of(tokens.get(0))));
        }
        return names;
    }

    /** The name without letters if the head of a block has lost its name. */
    Optional<Name> nameOfHead(List<CommonToken> head) {
        boolean named = head.size() > 1
                && (Words.isName(head.get(1).getType())
                        || Words.isReserved(head.get(1).getType()))
                && head.get(1).getType() != GussetLexer.TRACED
                && head.get(1).getType() != GussetLexer.TAKEN;
        return named || head.get(0).getType() == GussetLexer.STEP
                ? Optional.empty()
                : Optional.of(new Name("", spans.of(head.get(0))));
    }

    /** The statement word that a line without one seems to have lost, judged by what comes second. */
    Optional<String> word(List<CommonToken> tokens) {
        int first = tokens.get(0).getType();
        int next = tokens.size() > 1 ? tokens.get(1).getType() : Token.EOF;
        if (first == GussetLexer.NUMBER) {
            return Optional.of(Words.isUnit(next) ? "allow" : "cut");
        } else if (first == GussetLexer.ALONG || first == GussetLexer.BIAS) {
            return Optional.of("grain");
        } else if (next == GussetLexer.AT || next == GussetLexer.NEAREST || next == GussetLexer.HALFWAY) {
            return Optional.of("notch");
        }
        if (Words.isStatement(next)) {
            return Optional.of(tokens.get(1).getText());
        }
        return next == GussetLexer.COMMA ? Optional.of("outline") : Optional.empty();
    }
}
