package org.gusset.dsl.lint;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.dsl.Source;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.syntax.DraftTree;

/**
 * Looks for what is no error and yet may not be meant: names that nothing uses, edges that no seam uses, checks that cannot fail, and
 * the like. It reads the text alone and draws nothing; whether the draft is sound, compiling tells.
 */
public final class Linter {
    private Linter() {}

    /**
     * Advice about a draft, in the order of its text, with codes of {@link LintCode}.
     *
     * @return the messages of reading alone if the text has errors of syntax, since what is missing would be taken for unused
     */
    public static List<Diagnostic> lint(Source source) {
        Outcome<DraftTree> tree = Parsing.parse(source);
        if (tree.value().isEmpty() || tree.hasErrors()) {
            return tree.diagnostics();
        }
        Advice advice = new Advice();
        Drafted drafted = new Drafted(tree.value().get());
        new Naming(drafted, advice).look();
        new Sewing(drafted, advice).look();
        new Cutting(drafted, source, advice).look();
        new Ranges(drafted, advice).look();
        new Mistaking(drafted, advice).look();
        new Blanks(source, advice).look();
        return advice.told();
    }
}
