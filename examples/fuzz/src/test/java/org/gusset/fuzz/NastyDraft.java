package org.gusset.fuzz;

import java.util.ArrayList;
import java.util.List;

/**
 * A draft out of bytes: the forms of the language put together as they may be, with numbers and points that make trouble: edges without
 * length, points on one another, circles that touch, outlines that touch or cross themselves.
 */
final class NastyDraft {
    private final Bytes in;
    private final StringBuilder out = new StringBuilder();
    private final List<String> points = new ArrayList<>();
    private final List<String> paths = new ArrayList<>();
    private final List<String> darts = new ArrayList<>();
    private final List<String> pieces = new ArrayList<>();
    private final int wild;
    private int names;

    private NastyDraft(Bytes in) {
        this.in = in;
        this.wild = in.below(8);
    }

    static String text(Bytes in) {
        NastyDraft draft = new NastyDraft(in);
        draft.file();
        return draft.out.toString();
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private String fresh(String stem) {
        names++;
        return stem + "_" + names;
    }

    /** A length: one that a garment has, or, the wilder the draft is, one that none has. */
    private String length() {
        if (in.below(12) >= wild) {
            return switch (in.below(8)) {
                case 0 -> "girth / " + in.of("2", "4", "10", "100");
                case 1 -> points.size() < 2 ? "tall / 2" : "distance(" + in.of(points) + ", " + in.of(points) + ")";
                case 2 -> paths.isEmpty() ? "tall / 4" : "length(" + in.of(paths) + ")";
                case 3 -> "loose";
                default -> usual();
            };
        }
        return switch (in.below(9)) {
            case 0 -> "girth / " + Nasty.written(in);
            case 1 -> "-" + Nasty.written(in) + " cm";
            case 2 -> "sqrt(girth * " + Nasty.written(in) + " cm)";
            case 3 -> in.of("min", "max") + "(tall, " + Nasty.written(in) + " mm)";
            case 4 -> "round(girth, to " + Nasty.written(in) + " mm)";
            case 5 -> "loose * " + Nasty.written(in);
            case 6 -> "-" + usual();
            case 7 -> "0 cm";
            default -> Nasty.written(in) + " " + in.of("mm", "cm", "m", "in", "ft", "yd");
        };
    }

    private String usual() {
        return in.of("10 cm", "20 cm", "30 cm", "40 cm", "5 mm", "1 cm", "2 cm", "25.4 mm", "60 cm", "3 in");
    }

    /** A small length, as of an allowance or an intake. */
    private String small() {
        return in.below(12) >= wild ? in.of("1 cm", "5 mm", "2 cm", "0 cm", "3 cm", "1 mm", "15 mm", "4 cm") : length();
    }

    private String angle() {
        return in.of(
                "0 deg",
                "90 deg",
                "-90 deg",
                "180 deg",
                "360 deg",
                "45 deg",
                "0.0000001 deg",
                "359.9999999 deg",
                "720 deg",
                "1000000 deg",
                "1 rad",
                "tan(45 deg) * 1 deg",
                "-179.99999 deg");
    }

    private String direction() {
        return in.of("left", "right", "up", "down");
    }

    private String point() {
        return points.isEmpty() ? "origin" : in.of(points);
    }

    private String path() {
        return paths.isEmpty() ? "top" : in.of(paths);
    }

    /** An edge of the outline. */
    private String edge() {
        return in.of("top", "side", "hem", "centre");
    }

    private String place() {
        return switch (in.below(6)) {
            case 0 -> "halfway";
            case 1 -> "at " + small();
            case 2 -> "at " + small() + " from end";
            case 3 -> "at " + in.of("30", "50", "66", "10", Nasty.written(in)) + "%";
            case 4 -> "nearest " + point();
            default -> "at " + small() + " from " + in.of("start", point());
        };
    }

    private void file() {
        line("gusset 1");
        line("draft \"Trouble\"");
        line("measure girth" + in.of("", " from 1 mm to 1000 m", " from 0 cm to 200 cm", " else 90 cm"));
        line("measure tall" + in.of("", "", " else girth / " + length(), " from girth / 10 to girth * 2"));
        line("choose loose = " + in.of("4 cm", "0 cm", "-4 cm", length()));
        line("cloth wool wide " + in.of("150 cm", "150 cm", "150 cm", length()));
        line("let girth_2 = girth / 2");
        for (int i = in.below(3); i >= 0; i--) {
            piece();
        }
        for (int i = in.below(4); i > 0; i--) {
            closing();
        }
    }

    private void closing() {
        points.clear();
        paths.clear();
        String one = in.of(pieces);
        String other = in.of(pieces);
        switch (in.below(7)) {
            case 0 ->
                line("seam " + fresh("seam") + " = " + one + ".top to " + other + "." + in.of("top", "side", "hem")
                        + in.of(
                                "",
                                " ease " + length() + " to " + length(),
                                " meeting smooth at " + one + ".a",
                                " pressed open",
                                " within " + length()));
            case 1 ->
                line("check " + in.of("length", "sewn") + "(" + one + ".top) " + in.of("<", "is", ">=", "is not") + " "
                        + length());
            case 2 ->
                line("finished " + fresh("round") + " = length(all " + one + ".top) over girth ease " + length()
                        + " to " + length());
            case 3 ->
                line("opening " + fresh("hole") + " = all " + one + ".top passes " + length() + " stretch "
                        + Nasty.written(in) + "%");
            case 4 -> {
                String copy = fresh("Copy");
                line("piece " + copy + " traced from " + one + in.of("", " mirrored over " + one + ".top") + " {");
                line(in.of(
                        "",
                        "change point b = a right " + length(),
                        "change allow " + small(),
                        "lengthen at cross by " + small(),
                        "slash from on hem halfway to on top halfway spread " + small()));
                line("}");
            }
            case 5 ->
                line("piece " + fresh("Part") + " taken from " + one + " "
                        + in.of("above", "below", "left of", "right of", "within " + length() + " of") + " " + one + "."
                        + in.of("top", "side", "hem", "cross") + " {\n allow " + small() + "\n}");
            default ->
                line("strip " + fresh("Band") + " long " + length() + " wide " + length()
                        + in.of("", " folded", " on bias", " folded on bias") + " {\n allow " + small()
                        + "\n cut " + in.of("1", "2", "1 pair") + " from wool\n}");
        }
    }

    private void piece() {
        String name = fresh("Piece");
        points.clear();
        paths.clear();
        darts.clear();
        line("piece " + name + " {");
        line("point a = origin");
        line("point b = a right " + in.of("30 cm", "40 cm", "girth / 2", length()));
        line("point c = "
                + in.of("b down 40 cm", "b down tall", "b down 30 cm left 5 cm", "b down ", "a down ")
                        .replaceFirst(" $", " " + length()));
        line("point d = " + in.of("a down to c", "a down to c", "a down to c", "a down 45 cm", "b", "a"));
        points.addAll(List.of("a", "b", "c", "d"));
        edge("top", "a", "b");
        edge("side", "b", "c");
        edge("hem", "c", "d");
        edge("centre", "d", "a");
        for (int i = in.below(10); i > 0; i--) {
            shape();
        }
        line("guide cross = " + in.of("across from a down 15 cm", "down from b left 10 cm", "up from " + point()));
        if (in.below(3) == 0) {
            dart();
        }
        for (int i = in.below(4) - 1; i > 0; i--) {
            change();
        }
        line("outline "
                + in.of(
                        "top, side, hem, centre",
                        "top, side, hem, centre",
                        "top, side, hem, centre",
                        "top, side, hem, centre",
                        "top, side, hem, centre",
                        "centre, hem, side, top",
                        "hem, side, top, centre"));
        finish();
        line("}");
        pieces.add(name);
    }

    private void edge(String name, String from, String to) {
        String middle = point();
        line(
                switch (in.below(wild < 3 ? 48 : 20)) {
                    case 0 ->
                        "curve " + name + " = from " + from + " to " + to + " hollowed " + direction() + " by "
                                + small() + in.of("", " at 1/3", " at 0", " at 1", " at 100%");
                    case 1 ->
                        "curve " + name + " = from " + from + " heading " + angle() + " to " + to + " heading "
                                + angle() + in.of("", " tension 1.2", " tension " + Nasty.written(in));
                    case 2 -> "curve " + name + " = from " + from + " through " + middle + " to " + to;
                    case 3 -> "arc " + name + " = from " + from + " to " + to + " centre " + middle;
                    case 4 -> "line " + name + " = " + from + " to " + middle + " to " + to;
                    case 5 ->
                        "curve " + name + " = from " + from + " heading " + direction() + " through " + middle + ", "
                                + point() + " to " + to + " heading toward " + point();
                    case 6, 7 ->
                        "curve " + name + " = from " + from + " heading " + in.of("-15 deg", "15 deg", "-80 deg")
                                + " to " + to + " heading " + in.of("12 deg", "-100 deg", "-90 deg", "170 deg");
                    default -> "line " + name + " = " + from + " to " + to;
                });
        paths.add(name);
    }

    private void dart() {
        String name = fresh("dart");
        line("dart " + name + " = on " + edge() + " " + place() + " intake " + small() + " to "
                + in.of("between a and c", "on hem halfway", point())
                + in.of("", " pressed toward " + point(), " curved left by " + length()));
        darts.add(name);
    }

    private void change() {
        switch (in.below(5)) {
            case 0 ->
                line("slash from on " + edge() + " " + place() + " to on " + edge() + " " + place() + " spread "
                        + small());
            case 1 -> line("lengthen at cross by " + small());
            case 2 -> line("gather " + edge() + " to " + length());
            case 3 ->
                line("pleat " + edge() + in.of("", " between " + point() + " and " + point()) + " to " + length()
                        + " with " + in.of("1", "2", "3", Nasty.written(in)) + in.of("", " box", " knife") + " pleats");
            default -> {
                if (!darts.isEmpty()) {
                    String dart = in.of(darts);
                    line("pivot about " + in.of(dart + ".tip", point()) + " closing "
                            + in.of("", "1/2 of ", "0.3 of ", "100% of ") + dart + " "
                            + in.of(
                                    "spreading " + edge() + " " + place(),
                                    "into " + fresh("dart") + " on " + edge() + " " + place()));
                }
            }
        }
    }

    private void finish() {
        line("allow " + small()
                + in.of(
                        "",
                        ", hem 3 cm turned up",
                        ", hem " + small() + " turned up",
                        ", top none",
                        ", side " + small()));
        if (in.below(4) == 0) {
            line("corner " + in.of("top, side", "side, hem", "hem, centre") + " "
                    + in.of("mitred", "squared to hem", "mirrored to side", "blunt", "pointed"));
        }
        line("cut " + in.of("1", "2", "1 pair", "1 left", "1 on fold centre", "2") + " from wool");
        line("grain " + in.of("along centre", "from a to d", "bias", "from a to c", "from a to " + point()));
        for (int i = in.below(4); i > 0; i--) {
            line(
                    switch (in.below(7)) {
                        case 0 -> "notch " + edge() + " " + place() + in.of("", " double", " triple");
                        case 1 -> "mark drill " + point();
                        case 2 -> "mark buttonhole " + point() + " along " + path() + " by " + small();
                        case 3 -> "mark along " + path();
                        case 4 ->
                            "points " + fresh("row") + " = " + in.of("3", "1", "7", Nasty.written(in)) + " on " + path()
                                    + in.of("", " between " + point() + " and " + point());
                        case 5 -> "label \"It is {" + length() + "} wide\"";
                        default -> "nest at " + point();
                    });
        }
    }

    private void shape() {
        String name = fresh("p");
        String value = switch (in.below(18)) {
            case 0 -> point() + " " + direction() + " " + length();
            case 1 -> point() + " toward " + point() + " by " + length();
            case 2 -> point() + " past " + point() + " by " + length();
            case 3 -> point() + " angled " + angle() + " by " + length();
            case 4 -> "between " + point() + " and " + point() + in.of("", " halfway", " at " + length());
            case 5 -> "on " + path() + " " + place();
            case 6 ->
                "swept " + length() + " from " + point() + " and " + length() + " from " + point() + " nearest "
                        + point();
            case 7 -> point() + " mirrored over " + path();
            case 8 -> point() + " turned " + angle() + " about " + point();
            case 9 -> "at (" + length() + ", " + length() + ")";
            case 10 -> "where " + path() + " meets " + path() + in.of("", " nearest " + point());
            case 11 -> point() + " " + direction() + " to " + in.of(point(), path());
            case 12 -> point() + " swept by " + length() + " to " + path() + in.of("", " nearest " + point());
            case 13 ->
                "(on " + path() + " " + place() + ") square to " + path() + " " + direction() + " by " + length();
            case 14 -> point() + " toward " + point() + " to " + path();
            case 15 -> point() + " if girth " + in.of("<", ">", "is") + " " + length() + " else " + point();
            default -> "";
        };
        if (!value.isEmpty()) {
            line("point " + name + " = " + value);
            points.add(name);
        } else if (in.flip() && !paths.isEmpty()) {
            line(in.of("curve", "line") + " " + name + " = "
                    + in.of(
                            path() + " parallel " + direction() + " by " + length(),
                            "part of " + path() + " between " + point() + " and " + point(),
                            path() + " mirrored over " + path(),
                            path() + " turned " + angle() + " about " + point()));
            paths.add(name);
        } else if (in.flip()) {
            line("unknown " + name + " from " + in.of("1 mm", "0 cm", length()) + " to " + in.of("3 m", length()));
            line("solve " + name + " so that "
                    + in.of(
                            name + " * 2",
                            name + " * " + Nasty.written(in),
                            name + " * " + name + " / girth",
                            "girth - " + name,
                            "sqrt(" + name + " * girth)")
                    + " = "
                    + length()
                    + in.of("", " nearest " + length()));
            line("let " + fresh("v") + " = " + name + " + " + length());
        } else {
            edge(name, point(), point());
        }
    }
}
