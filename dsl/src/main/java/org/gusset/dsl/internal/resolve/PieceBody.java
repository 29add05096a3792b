package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;

/** The statements of a piece after tracing: those of the other piece with the changes put in, then its own. */
final class PieceBody {
    /**
     * A statement, the step it stands in (-1 for none) and whether it comes unchanged from the traced piece.
     *
     * @param home the file in which it is written
     * @param changed true if it stands in place of one that was traced
     */
    record Entry(Statement statement, int step, boolean inherited, Home home, boolean changed) {
        /** The step that draws its name, for telling what is used too early: a changed one may rest on later steps. */
        int drawn() {
            return changed ? -1 : step;
        }
    }

    /** The name of the edge of a part that is taken within a distance of an edge. */
    private static final String INNER_EDGE = "inner_edge";

    /** A step's title. */
    record StepTitle(Words title, Span span) {}

    private final Statement.Piece piece;
    private final Home home;
    private final Messages messages;
    private final Predicate<String> told;
    private final List<Entry> entries = new ArrayList<>();
    private final List<StepTitle> steps = new ArrayList<>();
    private Optional<Expr> mirror = Optional.empty();
    private int takenAt = -1;

    /**
     * @param home the file in which the piece is written
     * @param told whether a name belongs to a definition that cannot be read, which was told
     */
    PieceBody(Statement.Piece piece, Home home, Messages messages, Predicate<String> told) {
        this.piece = piece;
        this.home = home;
        this.messages = messages;
        this.told = told;
    }

    Statement.Piece piece() {
        return piece;
    }

    String name() {
        return piece.name().text();
    }

    Home home() {
        return home;
    }

    List<Entry> entries() {
        return entries;
    }

    List<StepTitle> steps() {
        return steps;
    }

    /** True if a statement of this kind could not be read, so that its want is told already. */
    boolean lacks(String word) {
        return entries.stream()
                .anyMatch(e -> e.statement() instanceof Statement.Broken broken
                        && broken.word().equals(word));
    }

    /** The line over which the piece is the mirror image of what its statements draw. */
    Optional<Expr> mirror() {
        return mirror;
    }

    /**
     * The number of the statement before which the piece is cut out of the one from which it is taken; -1 if it is not a part of
     * another.
     */
    int takenAt() {
        return takenAt;
    }

    /** The name of the edge at which the piece is cut out of another. */
    Optional<String> newEdge() {
        if (piece.origin().orElse(null) instanceof Statement.TakenBeside beside) {
            return ownName(beside.path()) instanceof Expr.Reference line
                    ? Optional.of(line.parts().get(line.parts().size() - 1).text())
                    : Optional.empty();
        }
        return takenAt < 0 ? Optional.empty() : Optional.of(INNER_EDGE);
    }

    /** Starts with all of another piece, of which then a part is taken. */
    void take(PieceBody other) {
        trace(other, Optional.empty());
        takenAt = entries.size();
    }

    void trace(PieceBody other, Optional<Expr> over) {
        for (Entry entry : other.entries) {
            entries.add(new Entry(entry.statement(), entry.step(), true, entry.home(), entry.changed()));
        }
        steps.addAll(other.steps);
        mirror = over.map(this::ownName);
    }

    /** Inside a piece traced from another, the other's names are its own. */
    Expr ownName(Expr expr) {
        Optional<String> from = piece.origin().map(o -> reference(o).text());
        if (from.isPresent()
                && expr instanceof Expr.Reference reference
                && reference.parts().size() > 1) {
            Name last = reference.parts().get(reference.parts().size() - 1);
            boolean others = reference.text().equals(from.get() + "." + last.text());
            return others ? new Expr.Reference(List.of(last), false, reference.span()) : expr;
        }
        return expr;
    }

    /** The piece from which one comes. */
    static Expr.Reference reference(Statement.Origin origin) {
        if (origin instanceof Statement.TakenBeside beside) {
            return beside.other();
        } else if (origin instanceof Statement.TakenWithin within) {
            return within.other();
        }
        return ((Statement.Traced) origin).other();
    }

    /** Puts the piece's own statements in. */
    void add(List<Statement> statements) {
        add(statements, -1);
    }

    private void add(List<Statement> statements, int step) {
        for (Statement statement : statements) {
            if (statement instanceof Statement.Step inner) {
                steps.add(new StepTitle(inner.title(), inner.span()));
                add(inner.body(), steps.size() - 1);
            } else if (statement instanceof Statement.Change change) {
                change(change, step);
            } else if (statement instanceof Statement.Drop drop) {
                drop(drop);
            } else {
                addNew(statement, step);
            }
        }
    }

    private void addNew(Statement statement, int step) {
        Optional<Name> name = Definitions.name(statement);
        if (takenAt >= 0 && replacedInPart(statement)) {
            remove(e -> e.inherited() && e.statement().getClass().equals(statement.getClass()));
        }
        if (name.isPresent()) {
            int known = find(name.get().text());
            if (known >= 0 && !(statement instanceof Statement.Pivot)) {
                Entry first = entries.get(known);
                Diagnostic twice = Diagnostic.of(
                        ResolveCode.DEFINED_TWICE,
                        name.get().span(),
                        "name",
                        name.get().text());
                twice = twice.with(new Related(
                        Phrase.of("name.first", "It is defined here."),
                        Definitions.name(first.statement()).orElseThrow().span()));
                twice = twice.with(
                        first.inherited()
                                ? Hint.of("name.change", "Write `change` before it to replace the one that was traced.")
                                        .replacing(start(statement.span()), "change ")
                                : Hint.of("name.other", "Give one of the two another name."));
                messages.tell(twice);
                return;
            }
        } else if (statement instanceof Statement.Outline
                || statement instanceof Statement.Grain
                || statement instanceof Statement.Nest) {
            String what = statement instanceof Statement.Outline
                    ? "its outline"
                    : statement instanceof Statement.Grain ? "its grain" : "its nesting point";
            for (Entry entry : entries) {
                if (entry.statement().getClass().equals(statement.getClass())) {
                    messages.tell(Diagnostic.of(ResolveCode.SAID_TWICE, statement.span(), "piece", name(), "what", what)
                            .with(new Related(
                                    Phrase.of("said.first", "It is said here."),
                                    entry.statement().span()))
                            .with(Hint.of("said.change", "Write `change` before it to replace the first.")
                                    .replacing(start(statement.span()), "change ")));
                    return;
                }
            }
        }
        entries.add(new Entry(statement, step, false, home, false));
    }

    /** What a part says of itself without `change` in place of what the whole piece said. */
    private static boolean replacedInPart(Statement statement) {
        return statement instanceof Statement.Cut
                || statement instanceof Statement.Allow
                || statement instanceof Statement.Grain
                || statement instanceof Statement.Nest;
    }

    /** Takes entries away; true if there were any. */
    private boolean remove(Predicate<Entry> which) {
        boolean any = false;
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (which.test(entries.get(i))) {
                entries.remove(i);
                any = true;
                if (i < takenAt) {
                    takenAt--;
                }
            }
        }
        return any;
    }

    private static Span start(Span span) {
        return new Span(
                span.source(), span.start(), span.start(), span.line(), span.column(), span.line(), span.column());
    }

    private int find(String name) {
        for (int i = 0; i < entries.size(); i++) {
            if (Definitions.name(entries.get(i).statement())
                    .filter(n -> n.text().equals(name))
                    .isPresent()) {
                return i;
            }
        }
        return -1;
    }

    private void change(Statement.Change change, int step) {
        Statement to = change.statement();
        Optional<Name> name = to instanceof Statement.Pivot ? Optional.empty() : Definitions.name(to);
        if (name.isPresent()) {
            int known = find(name.get().text());
            if (known < 0) {
                List<String> names = entries.stream()
                        .flatMap(e -> Definitions.name(e.statement()).stream())
                        .map(Name::text)
                        .toList();
                Diagnostic nothing = Diagnostic.of(
                        ResolveCode.NOTHING_TO_CHANGE,
                        name.get().span(),
                        "piece",
                        name(),
                        "what",
                        "`" + name.get().text() + "`");
                if (!told.test(name.get().text())) {
                    messages.tell(Names.suggesting(
                            nothing, name.get().text(), names, name.get().span()));
                }
                // It is taken in all the same, so that its uses stay quiet.
                entries.add(new Entry(to, step, false, home, true));
                return;
            }
            Entry old = entries.get(known);
            int place = old.step() >= 0 || step < 0 ? old.step() : step;
            entries.set(known, new Entry(to, place, false, home, true));
            return;
        }
        boolean any = remove(e -> replaces(to, e.statement()));
        if (!any && !lacks(Definitions.form(to))) {
            messages.tell(
                    ResolveCode.NOTHING_TO_CHANGE,
                    change.span(),
                    Hint.of("change.leave", "Leave `change` out to add it.")
                            .replacing(word(change.span(), to.span()), ""),
                    "piece",
                    name(),
                    "what",
                    Definitions.words(to));
        }
        entries.add(new Entry(to, step, false, home, true));
    }

    private static boolean replaces(Statement to, Statement old) {
        if (!old.getClass().equals(to.getClass())) {
            return false;
        }
        if (to instanceof Statement.Notch notch) {
            return ((Statement.Notch) old).edge().text().equals(notch.edge().text());
        } else if (to instanceof Statement.Mark mark) {
            return ((Statement.Mark) old).kind() == mark.kind();
        } else if (to instanceof Statement.Solve solve) {
            return names(solve).equals(names((Statement.Solve) old));
        } else if (to instanceof Statement.Corner corner) {
            Statement.Corner other = (Statement.Corner) old;
            List<String> edges = List.of(corner.first().text(), corner.second().text());
            return edges.contains(other.first().text())
                    && edges.contains(other.second().text());
        }
        return true;
    }

    private static java.util.Set<String> names(Statement.Solve solve) {
        return solve.unknowns().stream().map(Name::text).collect(java.util.stream.Collectors.toSet());
    }

    private void drop(Statement.Drop drop) {
        String name = drop.name().text();
        boolean any = remove(e -> drop.what().equals("notch")
                ? e.statement() instanceof Statement.Notch notch
                        && notch.edge().text().equals(name)
                : Definitions.name(e.statement())
                        .filter(n -> n.text().equals(name))
                        .isPresent());
        if (!any) {
            messages.tell(
                    ResolveCode.NOTHING_TO_CHANGE,
                    drop.span(),
                    "piece",
                    name(),
                    "what",
                    drop.what() + " `" + name + "`");
        }
    }

    /** What stands before the second of two stretches that end together. */
    private static Span word(Span whole, Span rest) {
        return new Span(
                whole.source(), whole.start(), rest.start(), whole.line(), whole.column(), rest.line(), rest.column());
    }
}
