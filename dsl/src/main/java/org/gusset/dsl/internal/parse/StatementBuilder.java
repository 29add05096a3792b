package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Direction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;
import org.jspecify.annotations.Nullable;

/** Parse trees of statements to syntax trees. */
final class StatementBuilder {
    private final Spans spans;
    private final Faults faults;
    private final ExprBuilder exprs;
    private final Texts texts;
    private final PieceStatements pieces;

    StatementBuilder(Spans spans, Faults faults, ExprBuilder exprs, Texts texts) {
        this.spans = spans;
        this.faults = faults;
        this.exprs = exprs;
        this.texts = texts;
        this.pieces = new PieceStatements(spans, faults, exprs, texts);
    }

    private Span span(ParserRuleContext context) {
        return spans.of(context);
    }

    /**
     * The statement.
     *
     * @param copied whether it stands in a piece that starts from another, to whose allowances it adds
     */
    Statement statement(GussetParser.StatementContext context, boolean copied) {
        exprs.begin();
        if (context.fileStatement() != null) {
            return file(context.fileStatement());
        } else if (context.sharedStatement() != null) {
            return shared(context.sharedStatement());
        }
        GussetParser.PieceStatementContext piece = context.pieceStatement();
        if (piece.say() != null) {
            return new Statement.Say(pieces.words(piece.say().words()), span(piece));
        } else if (piece.drop() != null) {
            String what = piece.drop().DART() != null ? "dart" : "notch";
            return new Statement.Drop(what, exprs.reference(piece.drop().reference()), span(piece));
        } else if (piece.change() != null) {
            return new Statement.Change(changed(piece.change()), span(piece));
        }
        return pieces.form(piece.pieceForm(), copied);
    }

    private Statement changed(GussetParser.ChangeContext change) {
        if (change.pieceForm() != null) {
            return pieces.form(change.pieceForm(), false);
        } else if (change.let() != null) {
            return let(change.let());
        }
        return change.unknown() != null ? unknown(change.unknown()) : solve(change.solve());
    }

    Words words(GussetParser.WordsContext context) {
        return pieces.words(context);
    }

    private Optional<Words> note(GussetParser.@Nullable WordsContext context) {
        return Optional.ofNullable(context).map(pieces::words);
    }

    private Statement.Range range(GussetParser.RangeContext context) {
        return new Statement.Range(exprs.sum(context.sum(0)), exprs.sum(context.sum(1)));
    }

    /** Tells of tails that open with the same word: only one of them can hold. */
    private void onlyOnce(List<? extends ParserRuleContext> tails) {
        Set<String> words = new HashSet<>();
        for (ParserRuleContext tail : tails) {
            String word = tail.getStart().getText();
            // Cloth lies folded or open, so these two exclude one another.
            if (!words.add(word.equals("open") ? "folded" : word)) {
                faults.tell(
                        SyntaxCode.SAID_TWICE,
                        spans.of(tail.getStart()),
                        Hint.of("said.once", "Keep one of the two."),
                        "word",
                        word);
            }
        }
    }

    // ---- any level

    private Statement shared(GussetParser.SharedStatementContext context) {
        if (context.let() != null) {
            return let(context.let());
        } else if (context.check() != null) {
            return new Statement.Check(
                    exprs.value(context.check().value()), note(context.check().words()), span(context));
        }
        return context.unknown() != null ? unknown(context.unknown()) : solve(context.solve());
    }

    private Statement let(GussetParser.LetContext context) {
        return new Statement.Let(exprs.name(context.name()), exprs.expr(context.expr()), span(context));
    }

    private Statement unknown(GussetParser.UnknownContext context) {
        return new Statement.Unknown(exprs.name(context.name()), range(context.range()), span(context));
    }

    private Statement solve(GussetParser.SolveContext context) {
        List<Statement.Equation> equations = context.equation().stream()
                .map(e -> new Statement.Equation(exprs.sum(e.sum(0)), exprs.sum(e.sum(1))))
                .toList();
        return new Statement.Solve(
                context.name().stream().map(exprs::name).toList(),
                equations,
                Optional.ofNullable(context.sum()).map(exprs::sum),
                span(context));
    }

    // ---- file level

    private Statement file(GussetParser.FileStatementContext context) {
        Span span = span(context);
        if (context.draft() != null) {
            Words title = texts.words(List.of(context.draft().STRING().getSymbol()));
            return new Statement.Draft(title, note(context.draft().words()), span);
        } else if (context.measure() != null) {
            return measure(context.measure(), span);
        } else if (context.choose() != null) {
            return choose(context.choose(), span);
        } else if (context.fit() != null) {
            return new Statement.Fit(
                    exprs.name(context.fit().name()),
                    exprs.value(context.fit().value()),
                    Optional.ofNullable(context.fit().range()).map(this::range),
                    note(context.fit().words()),
                    span);
        } else if (context.ruleOfThumb() != null) {
            return rule(context.ruleOfThumb(), span);
        } else if (context.use() != null) {
            return use(context.use(), span);
        } else if (context.cloth() != null) {
            return cloth(context.cloth(), span);
        } else if (context.seam() != null) {
            return seam(context.seam(), span);
        } else if (context.finished() != null) {
            GussetParser.FinishedContext finished = context.finished();
            return new Statement.Finished(
                    exprs.name(finished.name()),
                    exprs.value(finished.value()),
                    exprs.operand(finished.operand()),
                    range(finished.range()),
                    span);
        }
        return opening(context.opening(), span);
    }

    private Statement measure(GussetParser.MeasureContext context, Span span) {
        List<String> also = new ArrayList<>();
        for (GussetParser.OtherNameContext other : context.otherName()) {
            also.add(
                    other.STRING() == null
                            ? other.getText()
                            : texts.words(List.of(other.STRING().getSymbol())).plain());
        }
        onlyOnce(context.measureTail());
        Optional<Statement.Range> range = Optional.empty();
        Optional<Expr> otherwise = Optional.empty();
        for (GussetParser.MeasureTailContext tail : context.measureTail()) {
            if (tail.range() != null) {
                range = Optional.of(range(tail.range()));
            } else {
                otherwise = Optional.of(exprs.value(tail.value()));
            }
        }
        return new Statement.Measure(exprs.name(context.name()), also, range, otherwise, note(context.words()), span);
    }

    private Statement choose(GussetParser.ChooseContext context, Span span) {
        List<Name> names = context.name().stream().map(exprs::name).toList();
        return new Statement.Choose(
                names.get(0),
                exprs.value(context.value()),
                Optional.ofNullable(context.range()).map(this::range),
                names.subList(1, names.size()),
                note(context.words()),
                span);
    }

    private Statement rule(GussetParser.RuleOfThumbContext context, Span span) {
        Statement.RuleKind kind = Statement.RuleKind.VALUE;
        Statement.RuleBody body;
        if (context.LINE() != null) {
            kind = Statement.RuleKind.LINE;
            body = new Statement.LineBody(
                    context.lineBody().shape().stream().map(exprs::shape).toList());
        } else if (context.CURVE() != null) {
            kind = Statement.RuleKind.CURVE;
            body = pieces.curve(context.curveBody());
        } else if (context.ARC() != null) {
            kind = Statement.RuleKind.ARC;
            body = pieces.arc(context.arcBody());
        } else {
            body = new Statement.ValueBody(exprs.expr(context.expr()));
        }
        List<Statement.Parameter> parameters = context.parameters().parameter().stream()
                .map(p -> new Statement.Parameter(
                        exprs.name(p.name()), new Name(p.kind().getText(), span(p.kind()))))
                .toList();
        return new Statement.Rule(kind, exprs.name(context.name()), parameters, body, note(context.words()), span);
    }

    private Statement use(GussetParser.UseContext context, Span span) {
        List<Statement.Setting> settings = context.setting().stream()
                .map(s -> new Statement.Setting(exprs.name(s.name()), exprs.value(s.value())))
                .toList();
        return new Statement.Use(
                texts.words(List.of(context.STRING().getSymbol())), exprs.name(context.name()), settings, span);
    }

    private Statement cloth(GussetParser.ClothContext context, Span span) {
        Optional<Expr> length = Optional.empty();
        Optional<Name> laid = Optional.empty();
        boolean oneWay = false;
        List<Statement.Directed> repeat = List.of();
        List<Statement.Directed> shrinks = List.of();
        List<Statement.Directed> stretch = List.of();
        List<Expr> matching = List.of();
        onlyOnce(context.clothTail());
        for (GussetParser.ClothTailContext tail : context.clothTail()) {
            if (tail.LONG() != null) {
                length = Optional.of(exprs.sum(tail.sum()));
            } else if (tail.FOLDED() != null || tail.OPEN() != null) {
                ParseTree last = tail.getChild(tail.getChildCount() - 1);
                laid = Optional.of(new Name(last.getText(), span(tail)));
            } else if (tail.ONE() != null) {
                oneWay = true;
            } else if (tail.REPEAT() != null) {
                repeat = directed(tail.directed());
            } else if (tail.SHRINKS() != null) {
                shrinks = directed(tail.directed());
            } else if (tail.STRETCH() != null) {
                stretch = directed(tail.directed());
            } else {
                matching = tail.operand().stream().map(exprs::operand).toList();
            }
        }
        return new Statement.Cloth(
                exprs.name(context.name()),
                exprs.sum(context.sum()),
                length,
                laid,
                oneWay,
                repeat,
                shrinks,
                stretch,
                matching,
                note(context.words()),
                span);
    }

    private List<Statement.Directed> directed(List<GussetParser.DirectedContext> contexts) {
        Set<Boolean> ways = new HashSet<>();
        for (GussetParser.DirectedContext one : contexts) {
            if (!ways.add(one.ALONG() != null)) {
                faults.tell(
                        SyntaxCode.SAID_TWICE,
                        spans.of(one.getStop()),
                        Hint.of("said.once", "Keep one of the two."),
                        "word",
                        one.getStop().getText());
            }
        }
        return contexts.stream()
                .map(d -> new Statement.Directed(exprs.sum(d.sum()), d.ALONG() != null))
                .toList();
    }

    private List<Expr> paths(GussetParser.PathSumContext context) {
        return context.path().stream()
                .map(p -> p.partOf() != null ? exprs.shapes().partOf(p.partOf()) : exprs.operand(p.operand()))
                .toList();
    }

    private Statement seam(GussetParser.SeamContext context, Span span) {
        List<Statement.Match> matches = context.match().stream()
                .map(m -> new Statement.Match(
                        exprs.operand(m.operand(0)),
                        exprs.operand(m.operand(1)),
                        Optional.ofNullable(m.range()).map(this::range),
                        m.NOTCHED() == null ? 0 : PieceStatements.strokes(m.strokes()),
                        span(m)))
                .toList();
        List<Statement.Meeting> meetings = new ArrayList<>();
        Optional<Expr> within = Optional.empty();
        Optional<Statement.Pressed> pressed = Optional.empty();
        onlyOnce(context.seamTail().stream().filter(t -> t.MEETING() == null).toList());
        for (GussetParser.SeamTailContext tail : context.seamTail()) {
            if (tail.MEETING() != null) {
                meetings.add(new Statement.Meeting(tail.SMOOTH() != null, exprs.operand(tail.operand()), span(tail)));
            } else if (tail.WITHIN() != null) {
                within = Optional.of(exprs.sum(tail.sum()));
            } else {
                pressed = Optional.of(new Statement.Pressed(
                        Optional.ofNullable(tail.operand()).map(exprs::operand), span(tail)));
            }
        }
        return new Statement.Seam(
                exprs.name(context.name()),
                paths(context.pathSum(0)),
                paths(context.pathSum(1)),
                Optional.ofNullable(context.range()).map(this::range),
                matches,
                meetings,
                within,
                pressed,
                span);
    }

    private Statement opening(GussetParser.OpeningContext context, Span span) {
        boolean fastening = context.FASTENING() != null;
        boolean stretch = context.STRETCH() != null;
        return new Statement.Opening(
                exprs.name(context.name()),
                paths(context.pathSum()),
                exprs.sum(context.sum(0)),
                fastening ? Optional.of(exprs.sum(context.sum(1))) : Optional.empty(),
                stretch ? Optional.of(exprs.sum(context.sum(fastening ? 2 : 1))) : Optional.empty(),
                span);
    }

    // ---- heads of blocks

    /** The origin of a piece: what it is traced or taken from. */
    Optional<Statement.Origin> origin(GussetParser.PieceHeadContext head) {
        if (head.traced() != null) {
            return Optional.of(new Statement.Traced(
                    exprs.reference(head.traced().reference()),
                    Optional.ofNullable(head.traced().operand()).map(exprs::operand)));
        } else if (head.taken() == null) {
            return Optional.empty();
        }
        GussetParser.TakenContext taken = head.taken();
        Expr.Reference other = exprs.reference(taken.reference());
        Expr path = exprs.operand(taken.operand());
        if (taken.WITHIN() != null) {
            return Optional.of(new Statement.TakenWithin(other, exprs.sum(taken.sum()), path));
        }
        Direction side = taken.ABOVE() != null
                ? Direction.UP
                : taken.BELOW() != null ? Direction.DOWN : taken.LEFT() != null ? Direction.LEFT : Direction.RIGHT;
        return Optional.of(new Statement.TakenBeside(other, side, path));
    }

    Name name(GussetParser.NameContext context) {
        return exprs.name(context);
    }

    Statement.Piece piece(GussetParser.PieceHeadContext head, List<Statement> body, Span whole) {
        exprs.begin();
        return new Statement.Piece(
                exprs.name(head.name()),
                origin(head),
                Optional.ofNullable(head.value()).map(exprs::value),
                body,
                span(head),
                whole);
    }

    Statement.Strip strip(GussetParser.StripHeadContext head, List<Statement> body, Span whole) {
        exprs.begin();
        return new Statement.Strip(
                exprs.name(head.name()),
                exprs.sum(head.sum(0)),
                exprs.sum(head.sum(1)),
                head.FOLDED() != null,
                head.BIAS() != null,
                Optional.ofNullable(head.value()).map(exprs::value),
                body,
                span(head),
                whole);
    }

    Statement.Step step(GussetParser.StepHeadContext head, List<Statement> body, Span whole) {
        return new Statement.Step(words(head.words()), body, span(head), whole);
    }
}
