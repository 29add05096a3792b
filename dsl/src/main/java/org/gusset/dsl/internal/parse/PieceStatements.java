package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;
import org.jspecify.annotations.Nullable;

/** Parse trees of the statements of pieces to syntax trees. */
final class PieceStatements {
    private final Spans spans;
    private final Faults faults;
    private final ExprBuilder exprs;
    private final Texts texts;

    PieceStatements(Spans spans, Faults faults, ExprBuilder exprs, Texts texts) {
        this.spans = spans;
        this.faults = faults;
        this.exprs = exprs;
        this.texts = texts;
    }

    private Span span(ParserRuleContext context) {
        return spans.of(context);
    }

    Words words(GussetParser.WordsContext context) {
        return texts.words(
                context.STRING().stream().map(TerminalNode::getSymbol).toList());
    }

    private List<Expr> shapes(List<GussetParser.ShapeContext> shapes) {
        return shapes.stream().map(exprs::shape).toList();
    }

    /**
     * A statement of a piece.
     *
     * @param adds whether an {@code allow} adds to allowances that are there already
     */
    Statement form(GussetParser.PieceFormContext context, boolean adds) {
        Span span = span(context);
        if (context.point() != null) {
            return new Statement.Point(
                    exprs.name(context.point().name()),
                    exprs.expr(context.point().expr()),
                    span);
        } else if (context.points() != null) {
            return points(context.points(), span);
        } else if (context.line() != null) {
            return new Statement.Line(
                    exprs.name(context.line().name()),
                    shapes(context.line().lineBody().shape()),
                    span);
        } else if (context.guide() != null) {
            return guide(context.guide(), span);
        } else if (context.curve() != null) {
            return new Statement.Curve(
                    exprs.name(context.curve().name()), curve(context.curve().curveBody()), span);
        } else if (context.arc() != null) {
            return new Statement.Arc(
                    exprs.name(context.arc().name()), arc(context.arc().arcBody()), span);
        } else if (context.join() != null) {
            return new Statement.Join(
                    exprs.name(context.join().name()), shapes(context.join().shape()), span);
        } else if (context.outline() != null) {
            return new Statement.Outline(
                    context.outline().reference().stream().map(exprs::reference).toList(), span);
        } else if (context.allow() != null) {
            return allow(context.allow(), adds, span);
        } else if (context.corner() != null) {
            return corner(context.corner(), span);
        } else if (context.cut() != null) {
            return cut(context.cut(), span);
        } else if (context.grain() != null) {
            return grain(context.grain(), span);
        } else if (context.notch() != null) {
            return new Statement.Notch(
                    exprs.reference(context.notch().reference()),
                    exprs.shapes().place(context.notch().place()),
                    strokes(context.notch().strokes()),
                    span);
        } else if (context.mark() != null) {
            return mark(context.mark(), span);
        } else if (context.label() != null) {
            return new Statement.Label(words(context.label().words()), span);
        } else if (context.dart() != null) {
            return dart(context.dart(), span);
        } else if (context.nest() != null) {
            return new Statement.Nest(exprs.shape(context.nest().shape()), span);
        }
        return alteration(context, span);
    }

    private Statement alteration(GussetParser.PieceFormContext context, Span span) {
        if (context.slash() != null) {
            List<Expr> shapes = shapes(context.slash().shape());
            return new Statement.Slash(
                    shapes.get(0),
                    shapes.subList(1, shapes.size()),
                    exprs.sum(context.slash().sum()),
                    span);
        } else if (context.pivot() != null) {
            return pivot(context.pivot(), span);
        } else if (context.lengthen() != null) {
            return new Statement.Lengthen(
                    exprs.shape(context.lengthen().shape()),
                    exprs.sum(context.lengthen().sum()),
                    span);
        } else if (context.gather() != null) {
            GussetParser.GatherContext gather = context.gather();
            return new Statement.Gather(
                    exprs.reference(gather.reference()),
                    operand(gather.operand(), 0),
                    operand(gather.operand(), 1),
                    exprs.sum(gather.sum()),
                    span);
        }
        return pleat(context.pleat(), span);
    }

    private Optional<Expr> operand(List<GussetParser.OperandContext> operands, int index) {
        return index < operands.size() ? Optional.of(exprs.operand(operands.get(index))) : Optional.empty();
    }

    static int strokes(GussetParser.@Nullable StrokesContext context) {
        if (context == null) {
            return 1;
        }
        return context.DOUBLE() != null ? 2 : 3;
    }

    private Statement points(GussetParser.PointsContext context, Span span) {
        return new Statement.Points(
                exprs.name(context.name()),
                exprs.sum(context.sum()),
                exprs.operand(context.operand(0)),
                operand(context.operand(), 1),
                operand(context.operand(), 2),
                span);
    }

    private Statement guide(GussetParser.GuideContext context, Span span) {
        Name name = exprs.name(context.name());
        Expr from = exprs.shape(context.shape(0));
        if (context.ACROSS() != null) {
            return new Statement.Guide(name, Statement.GuideKind.ACROSS, from, Optional.empty(), span);
        } else if (context.DOWN() != null) {
            return new Statement.Guide(name, Statement.GuideKind.DOWN, from, Optional.empty(), span);
        } else if (context.UP() != null) {
            return new Statement.Guide(name, Statement.GuideKind.UP, from, Optional.empty(), span);
        } else if (context.shape().size() == 2) {
            return new Statement.Guide(
                    name, Statement.GuideKind.BETWEEN, from, Optional.of(exprs.shape(context.shape(1))), span);
        }
        return new Statement.Guide(name, Statement.GuideKind.PATH, from, Optional.empty(), span);
    }

    Statement.CurveBody curve(GussetParser.CurveBodyContext context) {
        if (context.expr() != null) {
            return new Statement.PathBody(exprs.expr(context.expr()));
        }
        List<Statement.Knot> knots = context.knot().stream()
                .map(k -> new Statement.Knot(
                        exprs.shape(k.shape()), Optional.ofNullable(k.way()).map(exprs.shapes()::way)))
                .toList();
        if (context.hollow() != null) {
            GussetParser.HollowContext hollow = context.hollow();
            if (context.THROUGH() != null
                    || knots.stream().anyMatch(k -> k.heading().isPresent())) {
                faults.tell(
                        SyntaxCode.HOLLOW_WITH_WAYS,
                        span(context),
                        Hint.of("hollow.plain", "Leave them out, or leave out `hollowed` and what follows."));
            }
            Optional<PlaceOn> place = hollow.AT() == null
                    ? Optional.empty()
                    : Optional.of(new PlaceOn.At(
                            exprs.sum(hollow.sum(1)),
                            Optional.empty(),
                            spans.of(hollow.AT().getSymbol(), hollow.getStop())));
            return new Statement.Hollowed(
                    knots.get(0).point(),
                    knots.get(knots.size() - 1).point(),
                    exprs.shapes().side(hollow.side()),
                    exprs.sum(hollow.sum(0)),
                    place);
        }
        return new Statement.Spline(knots, Optional.ofNullable(context.sum()).map(exprs::sum));
    }

    Statement.ArcBody arc(GussetParser.ArcBodyContext context) {
        if (context.SWUNG() != null) {
            return new Statement.ArcSwung(
                    exprs.shape(context.shape(0)), exprs.shape(context.shape(1)), exprs.sum(context.sum()));
        }
        return new Statement.ArcBetween(
                exprs.shape(context.shape(0)), exprs.shape(context.shape(1)), exprs.shape(context.shape(2)));
    }

    private Statement allow(GussetParser.AllowContext context, boolean adds, Span span) {
        List<Statement.EdgeAllowance> edges = new ArrayList<>();
        Optional<Expr> general = Optional.of(exprs.sum(context.sum()));
        if (context.leadingAmount() != null || context.TURNED_UP() != null) {
            if (context.leadingAmount() != null && general.get() instanceof Expr.Reference edge) {
                edges.add(new Statement.EdgeAllowance(
                        edge,
                        exprs.leading(context.leadingAmount()),
                        context.TURNED_UP() != null,
                        edge.span().to(span(context.leadingAmount()))));
                general = Optional.empty();
                if (!adds) {
                    faults.tell(
                            SyntaxCode.FIRST_AMOUNT,
                            span,
                            Hint.of("allow.first", "Write the amount for all edges first: `allow 1.5 cm, hem 4 cm`."));
                    general = Optional.of(new Expr.Broken(edge.span()));
                }
            } else {
                edgeMissing(context);
            }
        }
        for (GussetParser.EdgeAllowanceContext edge : context.edgeAllowance()) {
            edges.add(new Statement.EdgeAllowance(
                    exprs.reference(edge.reference()),
                    Optional.ofNullable(edge.sum()).map(exprs::sum),
                    edge.TURNED_UP() != null,
                    span(edge)));
        }
        return new Statement.Allow(general, edges, span);
    }

    private void edgeMissing(GussetParser.AllowContext context) {
        boolean amount = context.leadingAmount() != null;
        Span place = amount
                ? span(context.leadingAmount())
                : spans.of(context.TURNED_UP().getSymbol());
        faults.tell(
                SyntaxCode.UNEXPECTED,
                place,
                Hint.of("allow.edge", "Name the edge behind a comma: `allow 1.5 cm, hem 4 cm turned up`."),
                "found",
                spans.text(place),
                "expected",
                "`,` or the next statement");
    }

    private Statement corner(GussetParser.CornerContext context, Span span) {
        Statement.CornerForm form = Statement.CornerForm.BLUNT;
        if (context.MITRED() != null) {
            form = Statement.CornerForm.MITRED;
        } else if (context.SQUARED() != null) {
            form = Statement.CornerForm.SQUARED;
        } else if (context.MIRRORED() != null) {
            form = Statement.CornerForm.MIRRORED;
        } else if (context.POINTED() != null) {
            form = Statement.CornerForm.POINTED;
        }
        Optional<Expr.Reference> to =
                context.reference().size() > 2 ? Optional.of(exprs.reference(context.reference(2))) : Optional.empty();
        return new Statement.Corner(
                exprs.reference(context.reference(0)), exprs.reference(context.reference(1)), form, to, span);
    }

    private Statement cut(GussetParser.CutContext context, Span span) {
        Statement.CutForm form = Statement.CutForm.SINGLE;
        if (context.PAIR() != null || context.PAIRS() != null) {
            form = Statement.CutForm.PAIRS;
        } else if (context.LEFT() != null) {
            form = Statement.CutForm.LEFT;
        } else if (context.RIGHT() != null) {
            form = Statement.CutForm.RIGHT;
        } else if (context.LAYERS() != null) {
            form = Statement.CutForm.LAYERS;
        } else if (context.FOLD() != null) {
            form = Statement.CutForm.ON_FOLD;
        }
        return new Statement.Cut(
                exprs.sum(context.sum(0)),
                form,
                Optional.ofNullable(context.reference()).map(exprs::reference),
                Optional.ofNullable(context.name()).map(exprs::name),
                context.WITHOUT() != null,
                context.sum().size() > 1 ? Optional.of(exprs.sum(context.sum(1))) : Optional.empty(),
                span);
    }

    private Statement grain(GussetParser.GrainContext context, Span span) {
        if (context.ALONG() != null) {
            return new Statement.Grain(
                    Optional.of(exprs.shape(context.shape(0))), Optional.empty(), Optional.empty(), false, span);
        } else if (context.FROM() != null) {
            return new Statement.Grain(
                    Optional.empty(),
                    Optional.of(exprs.shape(context.shape(0))),
                    Optional.of(exprs.shape(context.shape(1))),
                    false,
                    span);
        }
        return new Statement.Grain(Optional.empty(), Optional.empty(), Optional.empty(), true, span);
    }

    private Statement mark(GussetParser.MarkContext context, Span span) {
        Optional<Expr> first = Optional.of(exprs.shape(context.shape(0)));
        if (context.DRILL() != null) {
            return mark(Statement.MarkKind.DRILL, first, Optional.empty(), Optional.empty(), span);
        } else if (context.BUTTON() != null) {
            return mark(Statement.MarkKind.BUTTON, first, Optional.empty(), Optional.empty(), span);
        } else if (context.BUTTONHOLE() != null) {
            return mark(
                    Statement.MarkKind.BUTTONHOLE,
                    first,
                    Optional.of(exprs.shape(context.shape(1))),
                    Optional.of(exprs.sum(context.sum())),
                    span);
        } else if (context.PLACED() != null) {
            return new Statement.Mark(
                    Statement.MarkKind.PLACED,
                    first,
                    Optional.empty(),
                    Optional.ofNullable(context.sum()).map(exprs::sum),
                    Optional.of(exprs.name(context.name())),
                    span);
        }
        return mark(Statement.MarkKind.LINE, Optional.empty(), first, Optional.empty(), span);
    }

    private static Statement mark(
            Statement.MarkKind kind, Optional<Expr> at, Optional<Expr> along, Optional<Expr> amount, Span span) {
        return new Statement.Mark(kind, at, along, amount, Optional.empty(), span);
    }

    private Statement dart(GussetParser.DartContext context, Span span) {
        Name name = exprs.name(context.name());
        Expr intake = exprs.sum(context.sum(0));
        Expr tip = exprs.shape(context.shape());
        if (context.BETWEEN() != null) {
            return new Statement.InnerDart(
                    name, exprs.operand(context.operand(0)), exprs.operand(context.operand(1)), intake, tip, span);
        }
        Optional<Move.Side> side = Optional.ofNullable(context.side()).map(exprs.shapes()::side);
        return new Statement.EdgeDart(
                name,
                exprs.operand(context.operand(0)),
                exprs.shapes().place(context.place()),
                intake,
                tip,
                side,
                context.sum().size() > 1 ? Optional.of(exprs.sum(context.sum(1))) : Optional.empty(),
                operand(context.operand(), 1),
                span);
    }

    private Statement pivot(GussetParser.PivotContext context, Span span) {
        Optional<Expr> share = Optional.ofNullable(context.share()).map(this::share);
        return new Statement.Pivot(
                exprs.shape(context.shape()),
                share,
                exprs.reference(context.reference()),
                Optional.ofNullable(context.name()).map(exprs::name),
                exprs.operand(context.operand()),
                exprs.shapes().place(context.place()),
                span);
    }

    private Expr share(GussetParser.ShareContext context) {
        Span span = span(context);
        if (context.bracketed() != null) {
            return exprs.bracketed(context.bracketed());
        }
        double value = number(context.NUMBER(0).getText(), span);
        if (context.PERCENT() != null) {
            value /= 100;
        }
        if (context.NUMBER().size() > 1) {
            value /= number(context.NUMBER(1).getText(), span);
        }
        if (!Double.isFinite(value)) {
            return new Expr.Broken(span);
        }
        return new Expr.Amount(Quantity.number(value), context.PERCENT() != null, span);
    }

    /** A written number, fractions too; what cannot be read is told and no number. */
    private double number(String text, Span span) {
        // A fraction is read in front of a unit only; hundred percent are one.
        Outcome<Quantity> read = QuantityText.parse(text.indexOf('/') < 0 ? text : text + "%", span);
        read.diagnostics().forEach(faults::tell);
        double value = read.value().map(Quantity::value).orElse(Double.NaN);
        return text.indexOf('/') < 0 ? value : value * 100;
    }

    private Statement pleat(GussetParser.PleatContext context, Span span) {
        boolean between = context.BETWEEN() != null;
        return new Statement.Pleat(
                exprs.reference(context.reference()),
                between ? operand(context.operand(), 0) : Optional.empty(),
                between ? operand(context.operand(), 1) : Optional.empty(),
                exprs.sum(context.sum(0)),
                exprs.sum(context.sum(1)),
                context.BOX() != null,
                operand(context.operand(), between ? 2 : 0),
                span);
    }
}
