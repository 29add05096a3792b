package org.gusset.dsl.format;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;
import org.gusset.dsl.syntax.Words;

/** What the layout must know of the tree, by offsets in the text. Sets are only asked, never walked. */
final class Structure {
    private final Set<Integer> statements = new HashSet<>();
    private final Set<Integer> signs = new HashSet<>();
    private final Set<Integer> called = new HashSet<>();
    private final Set<Integer> notes = new HashSet<>();
    private final Set<Integer> names = new HashSet<>();
    private final Set<Integer> upperEnds = new HashSet<>();
    private final Set<Integer> rules = new HashSet<>();

    Structure(DraftTree tree) {
        TreeWalk.every(tree, this::read);
        TreeWalk.all(tree, Statement.Change.class)
                .forEach(c -> statements.remove(c.statement().span().start()));
    }

    private void read(Object node) {
        if (node instanceof Statement statement) {
            statements.add(statement.span().start());
            note(statement).ifPresent(w -> notes.add(w.span().start()));
            if (!(statement instanceof Statement.Solve)
                    && TreeWalk.parts(node).stream().findFirst().orElse(node) instanceof Name name) {
                names.add(name.span().start());
            }
            if (statement instanceof Statement.Rule rule) {
                Span name = rule.name().span();
                called.add(name.end());
                rules.add(name.start());
            }
        } else if (node instanceof Statement.Range range) {
            upperEnds.add(range.high().span().start());
        } else if (node instanceof Expr.Minus minus) {
            signs.add(minus.span().start());
        } else if (node instanceof Expr.Call call) {
            called.add(call.function().span().end());
        }
    }

    /** The text at the end of a statement that explains it. */
    private static Optional<Words> note(Statement statement) {
        if (statement instanceof Statement.Draft draft) {
            return draft.note();
        } else if (statement instanceof Statement.Measure measure) {
            return measure.howTo();
        } else if (statement instanceof Statement.Choose choose) {
            return choose.note();
        } else if (statement instanceof Statement.Fit fit) {
            return fit.note();
        } else if (statement instanceof Statement.Rule rule) {
            return rule.note();
        } else if (statement instanceof Statement.Cloth cloth) {
            return cloth.note();
        }
        return statement instanceof Statement.Check check ? check.telling() : Optional.empty();
    }

    /** True where a statement begins. */
    boolean isStatement(int start) {
        return statements.contains(start);
    }

    /** True where a minus stands that has no left side. */
    boolean isSign(int start) {
        return signs.contains(start);
    }

    /** True where the name of a function or rule ends, so that its bracket follows without a blank. */
    boolean isCalled(int end) {
        return called.contains(end);
    }

    /** True where the text begins that explains a statement. */
    boolean isNote(int start) {
        return notes.contains(start);
    }

    /** True where the name begins that a statement defines. */
    boolean isName(int start) {
        return names.contains(start);
    }

    /** True where the upper end of a range begins. */
    boolean isUpperEnd(int start) {
        return upperEnds.contains(start);
    }

    /** True where the name of a rule begins; its parameters follow. */
    boolean isRule(int start) {
        return rules.contains(start);
    }
}
