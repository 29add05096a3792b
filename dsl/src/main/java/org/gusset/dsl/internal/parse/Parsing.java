package org.gusset.dsl.internal.parse;

import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;

/** Text to syntax tree. */
public final class Parsing {
    private Parsing() {}

    /** The tree of a text, with as many statements as could be read, and a message for every line that could not. */
    public static Outcome<DraftTree> parse(Source source) {
        return parse(source, Budget.defaults());
    }

    /** The same within another budget. */
    public static Outcome<DraftTree> parse(Source source, Budget budget) {
        Faults faults = new Faults(budget.messages());
        String text = source.text();
        if (text.length() > budget.characters()) {
            Spans start = new Spans(source.name(), "");
            faults.tell(
                    SyntaxCode.TOO_LONG,
                    start.of(0, 0),
                    Hint.of("length.split", "Split the draft into several files."),
                    "length",
                    Fact.number(text.length()),
                    "most",
                    Fact.number(budget.characters()));
            return Outcome.none(faults.told());
        }
        DraftTree tree = new Reader(source, budget, faults).read();
        return Outcome.of(tree, faults.told());
    }
}
