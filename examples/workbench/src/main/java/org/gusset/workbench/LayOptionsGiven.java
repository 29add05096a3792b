package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.Sale;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Cloth;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.Unit;
import picocli.CommandLine.Option;

/** The options of {@code lay}: what cloth there is, how it is folded, how long plans are searched for. */
final class LayOptionsGiven {
    /** The name of the cloth of a draft that names none. */
    private static final String ONLY = "cloth";

    private static final double MOST_SECONDS = 3600;

    @Option(
            names = "--cloth",
            paramLabel = "[NAME=]WIDTH",
            description =
                    "How wide a cloth is (@|bold shell=140cm|@), in place of what the draft says; without a name the first."
                            + " Once for each cloth.")
    private List<String> widths = new ArrayList<>();

    @Option(
            names = "--have",
            paramLabel = "[NAME=]LENGTH",
            description =
                    "How much there is of a cloth (@|bold 1.25m|@): tells whether it is enough, and if not, what would"
                            + " make it so.")
    private List<String> lengths = new ArrayList<>();

    @Option(
            names = "--selvage",
            paramLabel = "[NAME=]WIDTH",
            description = "How much of each side of a cloth cannot be used. Nothing unless told.")
    private List<String> selvages = new ArrayList<>();

    @Option(
            names = "--folded",
            paramLabel = "HOW",
            description =
                    "Fold the cloth in this way alone: @|bold lengthwise|@, @|bold part|@ (one selvage in only so far),"
                            + " @|bold middle|@ (both selvages in), @|bold twice|@, @|bold across|@ or @|bold open|@. Unless told,"
                            + " the one is taken of which least has to be bought.")
    private String folded = "";

    @Option(
            names = "--one-way",
            description = "The cloth has a nap or a print with an up and a down: no piece is turned end for end.")
    private boolean oneWay;

    @Option(
            names = "--gap",
            paramLabel = "LENGTH",
            description = "The least distance between two pieces. Nothing unless told: they may touch.")
    private String gap = "";

    @Option(
            names = "--tilt",
            paramLabel = "DEGREES",
            description = "How far a piece may be turned off its grain, up to 5. Nothing unless told.")
    private double tilt;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "How long plans are bettered, for all cloths of a body together; 4 unless told.")
    private double seconds = 4;

    /** Refuses what no plan can be made of. */
    void check() {
        if (!(seconds >= 0 && seconds <= MOST_SECONDS)) {
            throw new Refusal("--seconds takes from 0 to 3600.");
        }
        if (!(tilt >= 0 && tilt <= LayOptions.MOST_TILT)) {
            throw new Refusal("--tilt takes from 0 to 5 degrees: beyond that it is another grain.");
        }
        only();
    }

    double seconds() {
        return seconds;
    }

    Searching searching() {
        return new Searching();
    }

    /** True if only the command asks for one way, so that it may be given up. */
    boolean napByChoice(Drawing drawing, String cloth) {
        return oneWay
                && drawing.cloths().stream()
                        .noneMatch(c -> c.name().equals(cloth) && c.ways().oneWay());
    }

    LayOptions options(LengthStyle style) {
        LayOptions options =
                LayOptions.defaults().withTilt(tilt).withSale(style.unit() == Unit.IN ? Sale.YARDS : Sale.METRIC);
        if (!gap.isEmpty()) {
            options = options.withGap(length(gap, "--gap", 0));
        }
        Optional<Folding> only = only();
        return only.isPresent() ? options.withOnly(only.get()) : options;
    }

    private Optional<Folding> only() {
        return switch (folded) {
            case "" -> Optional.empty();
            case "lengthwise" -> Optional.of(Folding.LENGTHWISE);
            case "part" -> Optional.of(Folding.PART);
            case "middle" -> Optional.of(Folding.TO_MIDDLE);
            case "twice" -> Optional.of(Folding.TWICE);
            case "across" -> Optional.of(Folding.CROSSWISE);
            case "open" -> Optional.of(Folding.OPEN);
            default ->
                throw new Refusal(
                        "--folded takes lengthwise, part, middle, twice, across or open, not `" + folded + "`.");
        };
    }

    /** The cloths of a drawing as they are given, those that the draft describes first. */
    List<LayCloth> cloths(Drawing drawing) {
        List<String> names = new ArrayList<>();
        drawing.cloths().forEach(c -> names.add(c.name()));
        LayPlanner.undescribed(drawing).forEach(names::add);
        if (names.isEmpty()) {
            names.add(ONLY);
        }
        Map<String, Double> wide = read(widths, "--cloth", names, 1);
        Map<String, Double> have = read(lengths, "--have", names, 1);
        Map<String, Double> edges = read(selvages, "--selvage", names, 0);
        List<LayCloth> cloths = new ArrayList<>();
        for (String name : names) {
            Double asked = wide.get(name);
            Optional<Cloth> told =
                    drawing.cloths().stream().filter(c -> c.name().equals(name)).findFirst();
            if (told.isEmpty() && asked == null) {
                if (name.equals(ONLY)) {
                    throw new Refusal("The draft names no cloth: say how wide it is, as --cloth 140cm.");
                }
                continue;
            }
            LayCloth cloth = told.map(LayCloth::of).orElseGet(() -> LayCloth.of(name, asked == null ? 0 : asked));
            if (asked != null) {
                cloth = cloth.withWidth(asked);
            }
            if (edges.containsKey(name)) {
                double edge = edges.get(name);
                if (!(cloth.usable() - 2 * edge > 0)) {
                    throw new Refusal("--selvage leaves nothing of `" + name + "`.");
                }
                cloth = cloth.withSelvage(edge);
            }
            if (have.containsKey(name)) {
                cloth = cloth.withAtHand(have.get(name));
            }
            Optional<Folding> only = only();
            if (only.isPresent()) {
                cloth = cloth.withFolding(only.get());
            }
            cloths.add(oneWay ? cloth.withOneWay(true) : cloth);
        }
        return cloths;
    }

    private static Map<String, Double> read(List<String> given, String option, List<String> names, double least) {
        Map<String, Double> read = new TreeMap<>();
        for (String one : given) {
            int equals = one.indexOf('=');
            String name = equals < 0 ? names.get(0) : one.substring(0, equals).strip();
            if (!names.contains(name)) {
                throw new Refusal("`" + option + " " + one + "`: the draft cuts nothing from `" + name + "`; it has "
                        + String.join(", ", names) + ".");
            }
            if (read.put(name, length(one.substring(equals + 1), option, least)) != null) {
                throw new Refusal("`" + option + "` says `" + name + "` twice.");
            }
        }
        return read;
    }

    private static double length(String text, String option, double least) {
        Outcome<Quantity> read = QuantityText.parse(text.strip(), Place.nowhere());
        Optional<Double> mm = read.value()
                .filter(q -> q.dimension().equals(Dimension.LENGTH))
                .map(Quantity::value)
                .filter(v -> v >= least && v <= 1e6);
        return mm.orElseThrow(() -> new Refusal(String.format(
                Locale.ROOT,
                "`%s %s` is not a length%s: write it with its unit, as 140cm or 1.25m.",
                option,
                text,
                least > 0 ? " that a cloth can have" : "")));
    }
}
