package org.gusset.dsl.drafts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A random legal draft: every name is defined once and before it is used, kinds and dimensions fit, and the shapes are mostly such that
 * they can be drawn. The same seed gives the same text.
 */
final class RandomDraft {
    private final Random random;
    private final StringBuilder out = new StringBuilder();
    private final List<String> lengths = new ArrayList<>();
    private final List<String> truths = new ArrayList<>();
    private final List<String> rules = new ArrayList<>();
    private final List<String> pieces = new ArrayList<>();
    private int names;

    private RandomDraft(long seed) {
        this.random = new Random(seed);
    }

    /** The text of a seed. Its measures are {@code girth}, {@code tall} and perhaps {@code extra}. */
    static String text(long seed) {
        RandomDraft draft = new RandomDraft(seed);
        draft.file();
        return draft.out.toString();
    }

    // ---- small things

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    private <T> T of(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    private String fresh(String stem) {
        names++;
        return stem + "_" + names;
    }

    private void line(int indent, String text) {
        out.append("  ".repeat(indent)).append(text);
        if (chance(0.05)) {
            out.append("  # ").append(pick("as the master said", "look here", "1/2 of it"));
        }
        out.append('\n');
        if (chance(0.04)) {
            out.append('\n');
        }
    }

    private String cm(double low, double high) {
        double value = low + (high - low) * random.nextDouble();
        return switch (random.nextInt(5)) {
            case 0 -> Math.max(1, Math.round(value)) + " cm";
            case 1 -> Math.max(1, Math.round(value * 10)) + " mm";
            case 2 -> Math.max(1, Math.round(value / 2.54)) + " " + pick("1/2", "1/4", "3/8") + " in";
            default -> String.format(Locale.ROOT, "%.1f cm", Math.max(0.1, value));
        };
    }

    /** A length above nothing, about as large as told. */
    private String length(double low, double high) {
        if (lengths.isEmpty() || chance(0.6)) {
            return cm(low, high);
        }
        String known = of(lengths);
        return switch (random.nextInt(8)) {
            case 0 -> "min(" + known + " / 4, " + cm(low, high) + ")";
            case 1 -> "max(" + cm(low, high) + ", " + known + " / 40)";
            case 2 -> cm(low, high) + " + " + known + " * 1%";
            case 3 -> "round(" + cm(low, high) + ", to 1 mm)";
            case 4 -> "(" + cm(low, high) + " if " + truth() + " else " + cm(low, high) + ")";
            case 5 -> "abs(" + cm(low, high) + ")";
            case 6 -> rules.isEmpty() ? cm(low, high) : of(rules) + "(" + cm(low, high) + ", " + between(1, 3) + ")";
            default -> "sqrt(" + cm(low, high) + " * " + cm(low, high) + ")";
        };
    }

    private String truth() {
        if (!truths.isEmpty() && chance(0.5)) {
            return of(truths);
        }
        String compared =
                (lengths.isEmpty() ? cm(5, 60) : of(lengths)) + " " + pick("<", ">", "<=", ">=") + " " + cm(5, 90);
        return switch (random.nextInt(4)) {
            case 0 -> "not (" + compared + ")";
            case 1 -> compared + " and " + cm(1, 9) + " < " + cm(1, 9);
            case 2 -> compared + " or " + cm(1, 9) + " is " + cm(1, 9);
            default -> compared;
        };
    }

    // ---- the file

    private void file() {
        if (chance(0.7)) {
            line(0, "gusset 1");
        }
        line(0, "draft \"Trial " + between(1, 999) + "\"" + (chance(0.5) ? "  \"Made by chance.\"" : ""));
        line(0, "measure girth from 50 cm to 140 cm" + (chance(0.5) ? " \"round it\"" : ""));
        line(0, "measure tall from 20 cm to 90 cm");
        lengths.add("girth");
        lengths.add("tall");
        if (chance(0.5)) {
            line(0, "measure extra else girth / " + between(2, 9));
            lengths.add("extra");
        }
        line(0, "choose loose = " + cm(1, 8) + " from 0 cm to 30 cm  \"ease\"");
        lengths.add("loose");
        line(0, "choose shape = " + pick("plain", "fancy") + " out of plain, fancy");
        truths.add("shape is fancy");
        if (chance(0.5)) {
            line(0, "choose lined = " + pick("yes", "no"));
            truths.add("lined");
        }
        if (chance(0.4)) {
            line(0, "fit let_out = 0 cm from -2 cm to 2 cm  \"let out\"");
        }
        if (chance(0.6)) {
            line(0, "rule share(whole length, parts number) = whole / parts  \"common practice, no source\"");
            rules.add("share");
        }
        if (chance(0.5)) {
            String name = fresh("root");
            line(0, "unknown " + name + " from 1 mm to 300 cm");
            line(0, "solve " + name + " so that " + name + " * " + between(2, 5) + " = girth + tall");
            lengths.add(name);
        }
        for (int i = between(0, 3); i > 0; i--) {
            String name = fresh("value");
            line(0, "let " + name + " = " + length(2, 40));
            lengths.add(name);
        }
        line(0, "cloth wool wide " + between(80, 160) + " cm" + (chance(0.3) ? " \"plain\"" : ""));
        for (int i = between(1, 3); i > 0; i--) {
            pieces.add(new Piece().write());
        }
        if (chance(0.5)) {
            traced();
        }
        if (chance(0.4)) {
            strip();
        }
        closing();
    }

    private void traced() {
        String from = of(pieces);
        String name = fresh("Copy");
        line(
                0,
                "piece " + name + " traced from " + from
                        + (chance(0.3) ? " mirrored over " + from + ".centre" : "")
                        + (chance(0.3) ? " if " + truth() : "") + " {");
        if (chance(0.6)) {
            line(1, "change cut " + pick("1 pair", "2", "1 on fold centre") + " from wool");
        }
        if (chance(0.4)) {
            line(1, "change allow " + cm(0.5, 2));
        }
        line(0, "}");
    }

    private void strip() {
        String name = fresh("Band");
        line(
                0,
                "strip " + name + " long " + length(20, 200) + " wide " + cm(3, 9) + pick("", " folded")
                        + pick("", " on bias") + " {");
        line(1, "allow " + cm(0.5, 1.5));
        line(1, "cut " + between(1, 3) + " from wool");
        line(0, "}");
    }

    private void closing() {
        String first = of(pieces);
        String second = of(pieces);
        line(
                0,
                "seam " + fresh("seam") + " = " + first + ".side to " + second + ".side ease -90 cm to 90 cm"
                        + pick("", "  pressed open"));
        line(
                0,
                "check length(" + first + ".hem) > 1 mm"
                        + (chance(0.5) ? "  \"It is {length(" + first + ".hem)}.\"" : ""));
        if (chance(0.5)) {
            line(
                    0,
                    "finished " + fresh("round") + " = length(all " + first
                            + ".top) over girth ease -200 cm to 300 cm");
        }
        if (chance(0.3)) {
            line(0, "opening " + fresh("hole") + " = all " + first + ".top passes 1 cm stretch 10%");
        }
    }

    /** A piece: a four-sided outline and whatever else comes to mind. */
    private final class Piece {
        private final String name = fresh("Piece");
        private final List<String> points = new ArrayList<>(List.of("a", "b", "c", "d"));
        private final List<String> paths = new ArrayList<>(List.of("top", "side", "hem", "centre"));
        private boolean dart;

        String write() {
            line(0, "piece " + name + " {");
            boolean stepped = chance(0.4);
            int indent = 1;
            if (stepped) {
                line(1, "step \"Frame\" {");
                indent = 2;
            }
            line(indent, "point a = origin");
            line(indent, "point b = a right max(24 cm, " + length(25, 45) + ")");
            line(
                    indent,
                    "point c = b down max(30 cm, " + length(32, 70) + ") " + pick("right", "left") + " " + cm(0.5, 4));
            line(indent, "point d = a down to c");
            if (stepped) {
                line(indent, "say \"It is {distance(a, b)} wide.\"");
                line(1, "}");
            }
            line(
                    1,
                    pick(
                            "line top = a to b",
                            "curve top = from a to b hollowed down by " + cm(0.5, 2),
                            "curve top = from a heading -15 deg to b heading 12 deg"));
            line(
                    1,
                    pick(
                            "line side = b to c",
                            "curve side = from b to c hollowed " + pick("left", "right") + " by 1 cm"));
            line(1, pick("line hem = c to d", "curve hem = from c to d hollowed down by " + cm(0.5, 2)));
            line(1, "line centre = d to a");
            for (int i = between(0, 8); i > 0; i--) {
                shape();
            }
            if (chance(0.4)) {
                line(
                        1,
                        "dart tuck = on side at " + between(30, 60) + "% intake " + cm(1, 3)
                                + " to (on side at 45%) left 11 cm" + pick("", " pressed toward c"));
                dart = true;
            }
            if (chance(0.2)) {
                line(
                        1,
                        "dart inner = between (a right 6 cm down 6 cm) and (a right 6 cm down 14 cm) intake 1 cm"
                                + " at a right 6 cm down 10 cm");
            }
            if (chance(0.3)) {
                change();
            }
            layout();
            line(0, "}");
            return name;
        }

        private void change() {
            int kind = random.nextInt(3);
            if (kind == 0 && dart) {
                line(
                        1,
                        "pivot about tuck.tip closing " + pick("", "1/2 of ", "0.3 of ") + "tuck "
                                + pick("spreading hem nearest tuck.tip", "into low_tuck on hem nearest tuck.tip"));
            } else if (kind == 1) {
                line(1, "slash from on hem at 92% to on top at 5% spread " + cm(0.5, 3));
            } else {
                String low = fresh("low");
                line(1, "guide " + low + " = across from a down 27 cm");
                line(1, "lengthen at " + low + " by " + cm(0.5, 3));
            }
            line(1, "let " + fresh("after") + " = length(hem) + sewn(side)");
        }

        private void layout() {
            line(1, "outline top, side, hem, centre");
            line(1, "allow " + cm(0.5, 1.5) + pick("", ", hem 3 cm", ", hem 3 cm turned up", ", top none"));
            if (chance(0.2)) {
                line(1, "corner side, hem " + pick("mitred", "squared to hem", "mirrored to hem", "blunt"));
            }
            line(1, "cut " + pick("1", "2", "1 pair", "1 left") + " from wool");
            line(1, pick("grain along centre", "grain from a to d", "grain bias"));
            if (chance(0.4)) {
                line(1, "notch " + pick("side", "hem") + " " + place() + pick("", " double"));
            }
            if (chance(0.3)) {
                line(1, "mark " + pick("drill", "button") + " a right 8 cm down 9 cm");
            }
            if (chance(0.2)) {
                line(1, "mark buttonhole (a right 8 cm down 12 cm) along top by 2 cm");
            }
            if (chance(0.2)) {
                line(
                        1,
                        pick(
                                "gather top to " + between(5, 12) + " cm",
                                "pleat top to " + between(5, 12) + " cm with " + between(1, 4)
                                        + pick("", " box", " knife") + " pleats"));
            }
            if (chance(0.2)) {
                line(1, "label \"For {girth}\"");
            }
            if (chance(0.2)) {
                line(1, "points " + fresh("row") + " = " + between(1, 6) + " on " + pick("hem", "centre"));
            }
        }

        private String place() {
            return pick("halfway", "at 1/3", "at 40%", "at 5 cm", "at 4 cm from end", "nearest c");
        }

        /** A point or path that nothing in the outline rests on. */
        private void shape() {
            String p = of(points);
            String q = of(List.of("a", "b", "c", "d"));
            String path = of(List.of("top", "side", "hem", "centre"));
            String more = fresh("p");
            switch (random.nextInt(20)) {
                case 0 -> point(more, p + " right " + length(1, 9) + " up " + length(1, 9));
                case 1 -> point(more, "a toward c by " + length(1, 9));
                case 2 -> point(more, "a past b by " + length(1, 9));
                case 3 -> point(more, p + " angled " + between(-170, 170) + " deg by " + length(1, 9));
                case 4 ->
                    point(
                            more,
                            "(on centre " + place().replace("nearest c", "halfway") + ") square to centre right by "
                                    + length(1, 5));
                case 5 -> point(more, "between a and c" + pick("", " at 2/5", " halfway"));
                case 6 -> point(more, "on " + path + " " + place());
                case 7 -> point(more, "swept distance(a, c) from a and distance(b, c) from b nearest c");
                case 8 -> point(more, p + " mirrored over centre");
                case 9 -> point(more, p + " turned " + between(-90, 90) + " deg about " + q);
                case 10 -> point(more, p + " if " + truth() + " else " + q);
                case 11 -> point(more, "at (" + length(1, 20) + ", " + length(1, 20) + ")");
                case 12 -> point(more, path + "." + pick("start", "end"));
                case 13 -> {
                    line(1, "guide " + more + " = across from a down " + length(5, 15));
                    point(fresh("p"), "where " + more + " meets side");
                }
                case 14 -> line(1, "guide " + more + " = a to c");
                case 15 ->
                    curve(more, "from a heading " + between(-80, -10) + " deg through (a right 5 cm down 9 cm) to c");
                case 16 -> line(1, "arc " + more + " = from b centre a swung " + between(-120, -10) + " deg");
                case 17 -> line(1, "join " + more + " = top, side");
                case 18 -> curve(more, "centre parallel right by " + length(1, 5));
                default -> {
                    line(1, "let " + more + " = distance(a, " + pick("b", "c", "d") + ") + " + length(1, 5));
                    if (chance(0.5)) {
                        line(1, "let " + fresh("area") + " = length(" + path + ") * " + cm(1, 5));
                    }
                }
            }
        }

        private void point(String point, String value) {
            line(1, "point " + point + " = " + value);
            points.add(point);
        }

        private void curve(String curve, String body) {
            line(1, "curve " + curve + " = " + body);
            paths.add(curve);
        }
    }
}
