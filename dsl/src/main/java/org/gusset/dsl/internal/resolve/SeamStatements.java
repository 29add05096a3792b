package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Quantity;
import org.gusset.core.seam.Walking;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** Checks seams: which edges they join, which points come together, and what is asked of them. */
final class SeamStatements {
    private final Expressions expressions;
    private final Resolver resolver;
    private final Messages messages;
    private final Context at;

    /** @param at where the seams stand */
    SeamStatements(Expressions expressions, Resolver resolver, Messages messages, Context at) {
        this.expressions = expressions;
        this.resolver = resolver;
        this.messages = messages;
        this.at = at;
    }

    CheckedDraft.Check seam(Statement.Seam seam) {
        Inputs in = new Inputs();
        Span span = seam.span();
        List<Walking.RunInput> first = runs(seam.first(), in);
        List<Walking.RunInput> second = runs(seam.second(), in);
        Optional<Walking.EaseInput> ease = seam.ease().map(r -> ease(r, in));
        Term within = seam.within()
                .map(w -> expressions.length(w, at, "A tolerance"))
                .orElse(new Term.Constant(Quantity.length(Walking.TOLERANCE), span));
        List<Walking.MatchInput> matches = new ArrayList<>();
        for (Statement.Match match : seam.matching()) {
            Walking.SpotInput one = spot(match.first(), SeamSide.of(seam.first()), in);
            Walking.SpotInput other = spot(match.second(), SeamSide.of(seam.second()), in);
            matches.add(new Walking.MatchInput(one, other, match.ease().map(r -> ease(r, in)), match.span()));
        }
        List<Walking.MeetingInput> meetings = new ArrayList<>();
        for (Statement.Meeting meeting : seam.meeting()) {
            Walking.SpotInput spot = spot(meeting.point(), SeamSide.either(seam.first(), seam.second()), in);
            meetings.add(new Walking.MeetingInput(meeting.smooth(), spot, meeting.span()));
        }
        Walking walking = new Walking(
                seam.name().text(),
                first,
                second,
                ease,
                in.formula(within),
                matches,
                meetings,
                seam.pressed().map(this::pressed).orElse(""),
                span);
        return check(seam.name().text(), walking, in, span);
    }

    /** The seam of two edges by their names, which the draft does not state. */
    CheckedDraft.Check plain(String name, Expr.Reference first, Expr.Reference second, Span span) {
        Inputs in = new Inputs();
        List<Walking.RunInput> one = runs(List.of(first), in);
        List<Walking.RunInput> other = runs(List.of(second), in);
        Term within = new Term.Constant(Quantity.length(Walking.TOLERANCE), span);
        Walking walking =
                new Walking(name, one, other, Optional.empty(), in.formula(within), List.of(), List.of(), "", span);
        return check(name, walking, in, span);
    }

    private static CheckedDraft.Check check(String name, Walking walking, Inputs in, Span span) {
        // A seam joins shapes of several pieces, so it has no frame of its own.
        Term term = in.broken() ? new Term.Broken(span) : new Term.Made(walking, in.terms(), Type.SEAM, "", span);
        return new CheckedDraft.Check(name, term, span);
    }

    private String pressed(Statement.Pressed pressed) {
        return pressed.toward()
                .map(toward -> "toward " + messages.text(toward.span()))
                .orElse("open");
    }

    private Walking.EaseInput ease(Statement.Range range, Inputs in) {
        Term low = lengthOrShare(range.low(), "The least ease");
        Term high = lengthOrShare(range.high(), "The most ease");
        return new Walking.EaseInput(
                in.formula(low),
                in.formula(high),
                low.type().equals(Type.NUMBER),
                high.type().equals(Type.NUMBER));
    }

    private Term lengthOrShare(Expr expr, String what) {
        Term term = expressions.amount(expr, at, what);
        // A share has its sign of percent; a bare number is a length whose unit was forgotten.
        boolean share =
                term.type().equals(Type.NUMBER) && messages.text(expr.span()).endsWith("%");
        return share || term.broken() || term.type().equals(Type.LENGTH) ? term : expressions.length(expr, at, what);
    }

    // ---- edges

    private List<Walking.RunInput> runs(List<Expr> paths, Inputs in) {
        List<Walking.RunInput> runs = new ArrayList<>();
        for (Expr path : paths) {
            run(path, in).ifPresent(runs::add);
        }
        return runs;
    }

    private static Expr inner(Expr expr) {
        Expr inner = expr;
        while (inner instanceof Expr.Group group) {
            inner = group.inner();
        }
        return inner;
    }

    private Optional<Walking.RunInput> run(Expr expr, Inputs in) {
        Expr path = inner(expr);
        if (path instanceof Expr.Call call && call.function().text().equals("cut_edge")) {
            messages.tell(
                    ResolveCode.SEWN_AT_THE_CUT,
                    path.span(),
                    Hint.of("seam.stitching", "Name the edge itself: it is sewn on its stitching line."));
            in.spoil();
            return Optional.empty();
        }
        // Tells all that is wrong with it as something that has a length.
        if (expressions.functions().length(expr, true, at).broken()) {
            in.spoil();
            return Optional.empty();
        }
        Optional<Symbol> symbol = Optional.empty();
        Optional<Integer> all = Optional.empty();
        Optional<Integer> whole = Optional.empty();
        Term sewn;
        if (path instanceof Expr.Reference reference && reference.all()) {
            symbol = expressions.functions().edge(reference, at);
            Optional<Symbol> piece = symbol.flatMap(resolver.names()::pieceOf);
            if (symbol.isEmpty() || piece.isEmpty()) {
                in.spoil();
                return Optional.empty();
            }
            sewn = expressions.use(symbol.get(), reference.span(), at);
            all = Optional.of(in.add(expressions.use(piece.get(), reference.span(), at)));
        } else {
            sewn = expressions.path(expr, at, "What is sewn");
            Term edge = path instanceof Expr.PartOf part
                    ? expressions.path(part.path(), at, "What stands after `part of`")
                    : sewn;
            if (edge instanceof Term.Ref ref) {
                symbol = Optional.of(ref.symbol());
            }
            if (path instanceof Expr.PartOf) {
                whole = Optional.of(in.add(edge));
            }
        }
        String name = symbol.filter(s -> !(path instanceof Expr.PartOf))
                .filter(resolver.names()::isEdge)
                .map(Symbol::name)
                .orElse("");
        List<Integer> taken = new ArrayList<>();
        for (Symbol one : symbol.map(s -> expressions.functions().taken(s, at)).orElse(List.of())) {
            taken.add(in.add(expressions.use(one, expr.span(), at)));
        }
        String piece = symbol.map(s -> s.scope().piece()).orElse(sewn.frame());
        Optional<Integer> mirror = mirror(piece, in);
        return Optional.of(new Walking.RunInput(
                messages.text(expr.span()), piece, name, in.add(sewn), whole, taken, all, mirror, expr.span()));
    }

    /** The line over which a finished piece is the mirror image of what its statements draw. */
    private Optional<Integer> mirror(String piece, Inputs in) {
        PieceBody body = at.home().bodies().get(piece);
        Scope scope = at.home().pieceScopes().get(piece);
        return body == null || scope == null
                ? Optional.empty()
                : body.mirror().map(m -> in.add(expressions.path(m, new Context(scope, at.uses(), -1), "A mirror")));
    }

    // ---- points

    /** The pieces among which a bare name is looked for: those of one side, or of the first side that has it. */
    private record SeamSide(List<List<String>> pieces) {
        static SeamSide of(List<Expr> side) {
            return new SeamSide(List.of(List.copyOf(SeamNotches.pieces(side))));
        }

        static SeamSide either(List<Expr> first, List<Expr> second) {
            return new SeamSide(
                    List.of(List.copyOf(SeamNotches.pieces(first)), List.copyOf(SeamNotches.pieces(second))));
        }
    }

    private Walking.SpotInput spot(Expr expr, SeamSide side, Inputs in) {
        String words = messages.text(expr.span());
        Optional<String> named = SeamNotches.piece(expr);
        String piece = named.isPresent() ? named.get() : owner(expr, side, in);
        Scope scope = named.isEmpty() ? at.home().pieceScopes().get(piece) : null;
        Context seen = scope == null ? at : new Context(scope, at.uses(), -1);
        if (in.broken()) {
            return new Walking.SpotInput(words, piece, 0, Optional.empty());
        }
        int point = in.add(expressions.point(expr, seen, "What is matched"));
        return new Walking.SpotInput(words, piece, point, mirror(piece, in));
    }

    /** The piece to which a bare name belongs; says so if there are several. */
    private String owner(Expr expr, SeamSide side, Inputs in) {
        List<Expr.Reference> references = TreeWalk.all(expr, Expr.Reference.class);
        for (List<String> pieces : side.pieces()) {
            List<String> owners = new ArrayList<>();
            for (String piece : pieces) {
                Scope scope = at.home().pieceScopes().get(piece);
                boolean has = scope != null
                        && !references.isEmpty()
                        && references.stream()
                                .allMatch(r -> scope.own(r.parts().get(0).text()) != null);
                if (has) {
                    owners.add(piece);
                }
            }
            if (owners.size() > 1) {
                String name = messages.text(expr.span());
                messages.tell(Diagnostic.of(
                                ResolveCode.WHOSE_POINT,
                                expr.span(),
                                "name",
                                name,
                                "pieces",
                                String.join(" and ", owners))
                        .with(Hint.of("match.piece", "Say which: `{named}`.", "named", owners.get(0) + "." + name)
                                .replacing(expr.span(), owners.get(0) + "." + name)));
                in.spoil();
                return owners.get(0);
            } else if (owners.size() == 1) {
                return owners.get(0);
            }
        }
        List<String> first = side.pieces().get(0);
        return first.size() == 1 ? first.get(0) : "";
    }

    /** An edge by the name of its piece and its own. */
    static Expr.Reference edge(String piece, String edge, Span span) {
        return new Expr.Reference(List.of(new Name(piece, span), new Name(edge, span)), false, span);
    }
}
