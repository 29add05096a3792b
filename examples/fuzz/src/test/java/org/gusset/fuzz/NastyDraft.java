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
    private int names;

    private NastyDraft(Bytes in) {
        this.in = in;
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

    private String length() {
        return switch (in.below(12)) {
            case 0 -> "girth";
            case 1 -> "girth / " + Nasty.written(in);
            case 2 -> "-" + Nasty.written(in) + " cm";
            case 3 -> "sqrt(girth * " + Nasty.written(in) + " cm)";
            case 4 -> points.size() < 2 ? "tall" : "distance(" + in.of(points) + ", " + in.of(points) + ")";
            case 5 -> paths.isEmpty() ? "tall" : "length(" + in.of(paths) + ")";
            case 6 -> in.of("min", "max") + "(tall, " + Nasty.written(in) + " mm)";
            case 7 -> "round(girth, " + in.of("to", "up to", "down to") + " " + Nasty.written(in) + " mm)";
            case 8 -> "loose * " + Nasty.written(in);
            case 9 -> Nasty.written(in) + " " + in.of("mm", "cm", "m", "in", "ft", "yd");
            default -> in.of("10 cm", "20 cm", "30 cm", "40 cm", "5 mm", "1 cm", "0 cm", "25.4 mm");
        };
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
                "tan(1) * 1 deg",
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

    private String place() {
        return switch (in.below(6)) {
            case 0 -> "halfway";
            case 1 -> "at " + length();
            case 2 -> "at " + length() + " from end";
            case 3 -> "at " + Nasty.written(in) + "%";
            case 4 -> "nearest " + point();
            default -> "at " + length() + " from " + point();
        };
    }

    private void file() {
        line("gusset 1");
        line("draft \"Trouble\"");
        line("measure girth" + in.of("", " from 1 mm to 1000 m", " from girth to tall", " else tall * 2"));
        line("measure tall" + in.of("", " else girth / " + Nasty.written(in)));
        line("choose loose = " + in.of("4 cm", "0 cm", "-4 cm", length()));
        line("cloth wool wide " + in.of("150 cm", length()));
        for (int i = in.below(3); i >= 0; i--) {
            piece();
        }
        for (int i = in.below(4); i > 0; i--) {
            closing();
        }
    }

    private void closing() {
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
                        "change allow " + length(),
                        "lengthen at top by " + length(),
                        "slash from on hem halfway to on top halfway spread " + length()));
                line("}");
            }
            case 5 ->
                line("piece " + fresh("Part") + " taken from " + one + " "
                        + in.of("above", "below", "left of", "right of", "within " + length() + " of") + " " + one + "."
                        + in.of("top", "side", "hem", "cross") + " {\n allow " + length() + "\n}");
            default ->
                line("strip " + fresh("Band") + " long " + length() + " wide " + length()
                        + in.of("", " folded", " on bias", " folded on bias") + " {\n allow " + length()
                        + "\n cut " + Nasty.written(in) + " from wool\n}");
        }
    }

    private void piece() {
        String name = fresh("Piece");
        points.clear();
        paths.clear();
        darts.clear();
        line("piece " + name + " {");
        line("point a = origin");
        line("point b = a right " + length());
        line("point c = " + in.of("b down ", "a down ", "b angled -45 deg by ", "a left ") + length());
        line("point d = "
                + in.of("a down to c", "a", "b", "c left " + length(), "between a and c", "a down " + length()));
        points.addAll(List.of("a", "b", "c", "d"));
        for (int i = in.below(4); i > 0; i--) {
            shape();
        }
        edge("top", "a", "b");
        edge("side", "b", "c");
        edge("hem", "c", "d");
        edge("centre", "d", "a");
        for (int i = in.below(10); i > 0; i--) {
            shape();
        }
        line("guide cross = " + in.of("across", "down", "up") + " from " + point());
        paths.add("cross");
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
                        "hem, side, top, centre",
                        "top, side",
                        "centre",
                        "top, top"));
        finish();
        line("}");
        pieces.add(name);
    }

    private void edge(String name, String from, String to) {
        String middle = point();
        line(
                switch (in.below(10)) {
                    case 0 ->
                        "curve " + name + " = from " + from + " to " + to + " hollowed " + direction() + " by "
                                + length() + in.of("", " at 1/3", " at 0", " at 1", " at 100%");
                    case 1 ->
                        "curve " + name + " = from " + from + " heading " + angle() + " to " + to + " heading "
                                + angle() + in.of("", " tension 1.2", " tension " + Nasty.written(in));
                    case 2 -> "curve " + name + " = from " + from + " through " + middle + " to " + to;
                    case 3 -> "arc " + name + " = from " + from + " to " + to + " centre " + middle;
                    case 4 -> "line " + name + " = " + from + " to " + middle + " to " + to;
                    case 5 ->
                        "curve " + name + " = from " + from + " heading " + direction() + " through " + middle + ", "
                                + point() + " to " + to + " heading toward " + point();
                    default -> "line " + name + " = " + from + " to " + to;
                });
        paths.add(name);
    }

    private void dart() {
        String name = fresh("dart");
        line("dart " + name + " = on " + path() + " " + place() + " intake " + length() + " to "
                + in.of("between a and c", "on hem halfway", point())
                + in.of("", " pressed toward " + point(), " curved left by " + length()));
        darts.add(name);
    }

    private void change() {
        switch (in.below(5)) {
            case 0 ->
                line("slash from on " + path() + " " + place() + " to on " + path() + " " + place() + " spread "
                        + length());
            case 1 -> line("lengthen at " + in.of("cross", path()) + " by " + length());
            case 2 -> line("gather " + path() + " to " + length());
            case 3 ->
                line("pleat " + path() + in.of("", " between " + point() + " and " + point()) + " to " + length()
                        + " with " + Nasty.written(in) + in.of("", " box", " knife") + " pleats");
            default -> {
                if (!darts.isEmpty()) {
                    String dart = in.of(darts);
                    line("pivot about " + in.of(dart + ".tip", point()) + " closing "
                            + in.of("", "1/2 of ", "0.3 of ", "100% of ") + dart + " "
                            + in.of(
                                    "spreading " + path() + " " + place(),
                                    "into " + fresh("dart") + " on " + path() + " " + place()));
                }
            }
        }
    }

    private void finish() {
        line("allow " + length()
                + in.of(
                        "",
                        ", hem 3 cm turned up",
                        ", hem " + length() + " turned up",
                        ", top none",
                        ", side " + length()));
        if (in.below(4) == 0) {
            line("corner " + in.of("top, side", "side, hem", "hem, centre") + " "
                    + in.of("mitred", "squared to hem", "mirrored to side", "blunt", "pointed"));
        }
        line("cut " + in.of("1", "2", "1 pair", "1 left", "1 on fold centre", Nasty.written(in)) + " from wool");
        line("grain " + in.of("along centre", "from a to d", "bias", "along " + path(), "from a to " + point()));
        for (int i = in.below(4); i > 0; i--) {
            line(
                    switch (in.below(7)) {
                        case 0 -> "notch " + path() + " " + place() + in.of("", " double", " triple");
                        case 1 -> "mark drill " + point();
                        case 2 -> "mark buttonhole " + point() + " along " + path() + " by " + length();
                        case 3 -> "mark along " + path();
                        case 4 ->
                            "points " + fresh("row") + " = " + Nasty.written(in) + " on " + path()
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
            line("unknown " + name + " from " + length() + " to " + length());
            line("solve " + name + " so that " + name + " * " + in.of("2", name, Nasty.written(in)) + " = " + length()
                    + in.of("", " nearest " + length()));
            line("let " + fresh("v") + " = " + name + " + " + length());
        } else {
            edge(name, point(), point());
        }
    }
}
