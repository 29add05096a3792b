package org.gusset.dsl.lint;

import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/** Names: whether they are used, and with what letter they begin. */
final class Naming {
    private final Drafted drafted;
    private final Advice advice;

    Naming(Drafted drafted, Advice advice) {
        this.drafted = drafted;
        this.advice = advice;
    }

    void look() {
        boolean library = drafted.parts().isEmpty();
        for (References.Definition definition : new References(drafted).unused()) {
            if (isForUse(definition.statement()) && !library && !forOthers(definition.statement())) {
                unused(definition);
            }
        }
        drafted.file().forEach(this::letter);
        for (Drafted.Part part : drafted.parts()) {
            part.body().stream().filter(s -> !part.changed().contains(s)).forEach(this::letter);
        }
    }

    /** True for what a draft that this one uses may ask for by name. */
    private boolean forOthers(Statement statement) {
        boolean byName = statement instanceof Statement.Measure
                || statement instanceof Statement.Fit
                || statement instanceof Statement.Cloth;
        return byName && drafted.file().stream().anyMatch(s -> s instanceof Statement.Use);
    }

    /** False for what does its work by being there. */
    private static boolean isForUse(Statement statement) {
        return !(statement instanceof Statement.Seam
                || statement instanceof Statement.Finished
                || statement instanceof Statement.Opening
                || statement instanceof Statement.Unknown
                || statement instanceof Statement.EdgeDart
                || statement instanceof Statement.InnerDart);
    }

    private void unused(References.Definition definition) {
        Name name = definition.name();
        if (definition.statement() instanceof Statement.Guide) {
            advice.tell(
                    LintCode.GUIDE_UNUSED,
                    name.span(),
                    Hint.of(
                            "guide.teaches",
                            "Leave it if it is to be seen on the paper, as a balance line of a toile is; else take it out."),
                    "name",
                    name.text());
            return;
        }
        advice.tell(
                LintCode.UNUSED,
                name.span(),
                Hint.of("unused.drop", "Take it out, or use it where another name or a figure stands in its place."),
                "kind",
                Drafted.kind(definition.statement()),
                "name",
                name.text());
    }

    private void letter(Statement statement) {
        boolean piece = statement instanceof Statement.Piece || statement instanceof Statement.Strip;
        Drafted.defined(statement).ifPresent(name -> {
            int first = name.text().codePointAt(0);
            if (piece ? Character.isLowerCase(first) : Character.isUpperCase(first)) {
                int other = piece ? Character.toTitleCase(first) : Character.toLowerCase(first);
                String better = Character.toString(other) + name.text().substring(Character.charCount(first));
                advice.tell(
                        piece ? LintCode.PIECE_SMALL : LintCode.NAME_CAPITAL,
                        name.span(),
                        Hint.of("name.letter", "Call it `{name}`, here and wherever it is used.", "name", better),
                        "kind",
                        Drafted.kind(statement),
                        "name",
                        name.text());
            }
        });
    }
}
