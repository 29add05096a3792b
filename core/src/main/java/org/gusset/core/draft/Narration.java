package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.CurveConstruction;
import org.gusset.core.construct.Measuring;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.evaluate.SolveOne;
import org.gusset.core.evaluate.SolveSeveral;
import org.gusset.core.geometry.Path;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Quantity;

/** Says in words how nodes came about. */
final class Narration {
    private final Evaluation evaluation;
    private final LengthStyle style;

    Narration(Evaluation evaluation, LengthStyle style) {
        this.evaluation = evaluation;
        this.style = style;
    }

    String sentence(Handle<?> node) {
        return sentence(node, dimension(evaluation.graph().definition(node)));
    }

    /** How a node came about; {@code dimension} is that of an amount. */
    String sentence(Handle<?> node, Dimension dimension) {
        Definition<?> definition = evaluation.graph().definition(node);
        Object value = value(node);
        if (value instanceof Double number) {
            return sum(definition, style.show(new Quantity(number, dimension)));
        }
        if (definition.operation() instanceof Given.Choice<?>) {
            boolean given = evaluation.inputsOf(node).given() != null;
            String word = value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
            return word + (given ? ", chosen" : ", the draft's choice");
        }
        Optional<String> pattern = new PatternWords(this, evaluation, style).words(definition);
        if (pattern.isPresent()) {
            return pattern.get();
        }
        String words = shape(definition);
        return value instanceof Path path && !path.endless() ? words + ", " + length(path.length()) + " long" : words;
    }

    private Object value(Handle<?> node) {
        return evaluation.value(node).orElseThrow(Fault::told);
    }

    // ---- numbers, words and truths

    private String sum(Definition<?> definition, String value) {
        Operation<?> operation = definition.operation();
        if (operation instanceof Given.Measure) {
            if (evaluation.inputsOf(definition.handle()).given() != null) {
                return value + ", measured";
            }
            return value + ", estimated: " + formula(definition.inputs().get(0));
        } else if (operation instanceof Given.Choice<?>) {
            boolean given = evaluation.inputsOf(definition.handle()).given() != null;
            return value + (given ? ", chosen" : ", the draft's choice");
        } else if (operation instanceof SolveOne solve) {
            return value + ", found so that " + solve.left() + " comes out";
        } else if (operation instanceof SolveSeveral.Picked) {
            return value + ", found together with its fellows";
        }
        String formula = formula(definition.handle());
        return formula.equals(value) ? value : formula + " = " + value;
    }

    private String show(Definition<?> definition) {
        double value = (Double) value(definition.handle());
        return style.show(new Quantity(value, dimension(definition)));
    }

    private static Dimension dimension(Definition<?> definition) {
        Operation<?> operation = definition.operation();
        if (operation instanceof Compute.Number number) {
            return number.dimension();
        } else if (operation instanceof SolveOne solve) {
            return solve.dimension();
        } else if (operation instanceof Measuring.AngleAt) {
            return Dimension.ANGLE;
        }
        return Dimension.LENGTH;
    }

    /** A number's formula with values, or what it is taken off. */
    private String formula(Handle<?> node) {
        Definition<?> definition = evaluation.graph().definition(node);
        Operation<?> operation = definition.operation();
        if (operation instanceof Compute.Number number) {
            return number.formula().words(evaluation.inputsOf(node), style::show);
        } else if (operation instanceof Measuring.LengthOf) {
            return "the length of " + names(definition);
        } else if (operation instanceof Measuring.Distance) {
            return "the distance of " + names(definition);
        } else if (operation instanceof Measuring.Height) {
            return "the height between " + names(definition);
        } else if (operation instanceof Measuring.Width) {
            return "the width between " + names(definition);
        } else if (operation instanceof Measuring.AngleAt) {
            return "the angle at " + name(definition.inputs().get(1));
        }
        return show(definition);
    }

    private String names(Definition<?> definition) {
        return definition.inputs().stream().map(this::name).collect(Collectors.joining(" and "));
    }

    /** An amount with its sum in brackets: {@code 24.5 cm (chest 112 cm / 8 + 10.5 cm)}. */
    private String amount(Handle<?> node) {
        Definition<?> definition = evaluation.graph().definition(node);
        String value = show(definition);
        if (node.named()) {
            return value + " (" + shortName(node) + ")";
        }
        String formula = formula(node);
        return formula.equals(value) ? value : value + " (" + formula + ")";
    }

    private String length(double mm) {
        return style.show(mm);
    }

    // ---- shapes

    /** A name, or for what has none how it came about, in brackets. */
    String name(Handle<?> node) {
        return node.named() ? shortName(node) : "(" + shape(evaluation.graph().definition(node)) + ")";
    }

    private static String shortName(Handle<?> node) {
        return node.name().substring(node.name().lastIndexOf('.') + 1);
    }

    /** The shape that a move starts from: moves in a row are told in a row. */
    private String base(Handle<?> node) {
        return node.named()
                ? "from " + shortName(node)
                : shape(evaluation.graph().definition(node));
    }

    private String shape(Definition<?> definition) {
        Operation<?> operation = definition.operation();
        List<Handle<?>> in = definition.inputs();
        if (operation instanceof PointConstruction point) {
            return point(point, in, definition);
        } else if (operation instanceof PathConstruction path) {
            return path(path, in);
        } else if (operation instanceof CurveConstruction curve) {
            return curve(curve, in);
        } else if (operation instanceof RowConstruction.Even) {
            return amountOfRow(definition) + " points evenly on " + name(in.get(1));
        } else if (operation instanceof RowConstruction.Pick pick) {
            return "number " + pick.number() + " of " + name(in.get(0));
        } else if (operation instanceof Compute.OneOf one) {
            boolean first = one.condition().holds(evaluation.inputsOf(definition.handle()));
            return base(in.get(first ? one.then() : one.otherwise()));
        } else if (in.size() == 1) {
            return "the same as " + name(in.get(0));
        }
        Object value = value(definition.handle());
        return value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
    }

    private String amountOfRow(Definition<?> definition) {
        return evaluation
                .value(definition.handle())
                .map(v -> Integer.toString(((RowConstruction.Row) v).points().size()))
                .orElse("");
    }

    private String point(PointConstruction point, List<Handle<?>> in, Definition<?> definition) {
        if (point instanceof PointConstruction.Origin) {
            return "the corner from which all is squared";
        } else if (point instanceof PointConstruction.At) {
            return amount(in.get(0)) + " to the right, " + amount(in.get(1)) + " down";
        } else if (point instanceof PointConstruction.Squared squared) {
            return base(in.get(0)) + ", square " + squared.compass().word() + " " + amount(in.get(1));
        } else if (point instanceof PointConstruction.SquaredToPoint squared) {
            return base(in.get(0)) + ", square " + squared.compass().word() + " level with " + name(in.get(1));
        } else if (point instanceof PointConstruction.SquaredToPath squared) {
            return base(in.get(0)) + ", square " + squared.compass().word() + " to " + name(in.get(1));
        } else if (point instanceof PointConstruction.Toward) {
            return base(in.get(0)) + ", " + amount(in.get(2)) + " toward " + name(in.get(1));
        } else if (point instanceof PointConstruction.TowardPath) {
            return base(in.get(0)) + ", toward " + name(in.get(1)) + " to " + name(in.get(2));
        } else if (point instanceof PointConstruction.Past) {
            return base(in.get(0)) + ", " + amount(in.get(2)) + " past " + name(in.get(1));
        } else if (point instanceof PointConstruction.Angled) {
            return base(in.get(0)) + ", " + amount(in.get(2)) + " at " + angle(in.get(1));
        } else if (point instanceof PointConstruction.AngledToPath) {
            return base(in.get(0)) + ", at " + angle(in.get(1)) + " to " + name(in.get(2));
        } else if (point instanceof PointConstruction.SquareTo) {
            return base(in.get(0)) + ", " + amount(in.get(2)) + " square to " + name(in.get(1));
        } else if (point instanceof PointConstruction.Swept) {
            return base(in.get(0)) + ", sweep " + amount(in.get(1)) + " to " + name(in.get(2));
        } else if (point instanceof PointConstruction.TwoSweeps) {
            return "where a sweep of " + amount(in.get(0)) + " from " + name(in.get(1)) + " meets one of "
                    + amount(in.get(2)) + " from " + name(in.get(3));
        } else if (point instanceof PointConstruction.Between) {
            return share(in.get(2)) + " of the way from " + name(in.get(0)) + " to " + name(in.get(1));
        } else if (point instanceof PointConstruction.On on) {
            return on(on, in, definition);
        } else if (point instanceof PointConstruction.Meets) {
            return "where " + name(in.get(0)) + " meets " + name(in.get(1));
        } else if (point instanceof PointConstruction.Mirrored) {
            return name(in.get(0)) + " mirrored over " + name(in.get(1));
        } else if (point instanceof PointConstruction.Turned) {
            return name(in.get(0)) + " turned " + angle(in.get(1)) + " about " + name(in.get(2));
        }
        return "the " + (((PointConstruction.EndOf) point).start() ? "start" : "end") + " of " + name(in.get(0));
    }

    private String on(PointConstruction.On on, List<Handle<?>> in, Definition<?> definition) {
        Path path = (Path) evaluation.value(in.get(0)).orElseThrow();
        double s = on.place().along(evaluation.inputsOf(definition.handle()), path);
        String along = "on " + name(in.get(0)) + ", ";
        if (on.place() instanceof PlaceOnPath.Nearest nearest) {
            return along + "nearest to " + name(in.get(nearest.point()));
        } else if (on.place() instanceof PlaceOnPath.FromEnd end && !end.fromStart()) {
            return along + length(path.length() - s) + " from its end";
        } else if (on.place() instanceof PlaceOnPath.FromPoint from) {
            return along + length(from.amount().number(evaluation.inputsOf(definition.handle()))) + " from "
                    + name(in.get(from.point()));
        }
        return along + length(s) + " from its start";
    }

    private String share(Handle<?> node) {
        return share((Double) value(node));
    }

    /** A share in words: half, 1/3, 37.5 %. */
    static String share(double share) {
        if (share == 0.5) {
            return "half";
        }
        for (int parts = 3; parts <= 8; parts++) {
            double count = share * parts;
            if (Math.abs(count - Math.rint(count)) < 1e-9) {
                return (int) Math.rint(count) + "/" + parts;
            }
        }
        return String.format(Locale.ROOT, "%.1f %%", share * 100);
    }

    private String angle(Handle<?> node) {
        double degrees = (Double) value(node);
        return style.show(Quantity.angle(degrees));
    }

    private String path(PathConstruction path, List<Handle<?>> in) {
        if (path instanceof PathConstruction.Line line) {
            return "straight from "
                    + in.subList(0, line.points()).stream().map(this::name).collect(Collectors.joining(" to "));
        } else if (path instanceof PathConstruction.GuideAlong guide) {
            boolean level = guide.compass().vector().dy() == 0;
            return (level ? "a level line through " : "an upright line through ") + name(in.get(0));
        } else if (path instanceof PathConstruction.GuideBetween) {
            return "a line through " + name(in.get(0)) + " and " + name(in.get(1));
        } else if (path instanceof PathConstruction.GuideAlongPath) {
            return "the line of " + name(in.get(0)) + ", prolonged";
        } else if (path instanceof PathConstruction.ArcBetween) {
            return "an arc from " + name(in.get(0)) + " to " + name(in.get(1)) + " about " + name(in.get(2));
        } else if (path instanceof PathConstruction.ArcSwung) {
            return "an arc from " + name(in.get(0)) + " about " + name(in.get(1)) + ", swung " + angle(in.get(2));
        } else if (path instanceof PathConstruction.Join) {
            return names(in) + " joined";
        } else if (path instanceof PathConstruction.Part) {
            return "the part of " + name(in.get(0)) + " from " + name(in.get(1)) + " to " + name(in.get(2));
        } else if (path instanceof PathConstruction.Mirrored) {
            return name(in.get(0)) + " mirrored over " + name(in.get(1));
        } else if (path instanceof PathConstruction.Turned) {
            return name(in.get(0)) + " turned " + angle(in.get(1)) + " about " + name(in.get(2));
        }
        return "parallel to " + name(in.get(0)) + ", " + amount(in.get(1)) + " away";
    }

    private String names(List<Handle<?>> in) {
        return in.stream().map(this::name).collect(Collectors.joining(", "));
    }

    private String curve(CurveConstruction curve, List<Handle<?>> in) {
        if (curve instanceof CurveConstruction.Spline spline) {
            int count = spline.headings().size();
            List<String> names = new ArrayList<>(
                    IntStream.range(0, count).mapToObj(i -> name(in.get(i))).toList());
            String through = count > 2 ? " through " + String.join(", ", names.subList(1, count - 1)) : "";
            return "a smooth curve from " + names.get(0) + through + " to " + names.get(count - 1);
        }
        return "from " + name(in.get(0)) + " to " + name(in.get(1)) + ", hollowed by " + amount(in.get(2));
    }
}
