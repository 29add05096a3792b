package org.gusset.benchmarks.text;

import java.util.Locale;
import java.util.Random;

/**
 * A draft of as many lines as are wanted, made from a seed: measures, choices and values, then piece after piece of the statements of
 * a shirt or a coat, and the seams between them. It holds only what both the library and its grammar alone can read; forms whose
 * tokens the library joins before parsing ({@code turned up}, {@code 1 1/2 cm}) are left out.
 */
public final class LongDraft {
    private static final String[] MEASURES = {"chest", "waist", "hip", "neck", "upper_arm", "back_length"};
    private static final int VALUES = 24;

    /** At least so many further values, points and lines to a piece: a library takes no more than a thousand pieces, and a long draft is to be more of the same. */
    private static final int EXTRAS = 70;

    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private int written;
    private int piece;

    private LongDraft(long seed) {
        this.random = new Random(seed);
    }

    /** The text, which is always the same for a seed and a number of lines. */
    public static String of(long seed, int lines) {
        LongDraft draft = new LongDraft(seed);
        draft.head();
        while (draft.written < lines - 120) {
            draft.piece();
        }
        while (draft.written < lines) {
            draft.line("# The end of the long draft.");
        }
        return draft.text.toString();
    }

    private void head() {
        line("gusset 1");
        line("draft \"A long draft\"");
        line("  \"Everything that hangs in the wardrobe of the Quillhaven Players, in one file.\"");
        line("");
        for (String measure : MEASURES) {
            line("measure %s from %d cm to %d cm \"round it, tape level\"", measure, 20 + random.nextInt(20), 140);
        }
        line("choose ease = 12 cm from 2 cm to 40 cm \"added to the whole chest\"");
        line("choose length = 72 cm from 40 cm to 140 cm \"nape to finished hem\"");
        line("choose neckline = vee out of vee, round, square_cut \"shape of the neckline\"");
        line("rule width_of(girth length) = girth / 5 + 0.5 cm \"common practice, no source\"");
        line("cloth shell wide 140 cm folded lengthwise \"plain cotton\"");
        line("let value0 = (chest + ease) / 4");
        for (int i = 1; i < VALUES; i++) {
            line("let value%d = %s", i, amount(i));
        }
    }

    /** About a hundred and ten lines: frame, neck and shoulder, armhole, side and hem, what is said of the piece, a seam to the one before. */
    private void piece() {
        String name = "Part" + piece;
        line("");
        line("# Part %d of the long draft.", piece);
        line("piece %s {", name);
        line("  step \"Square the frame\" {");
        line("    point nape = origin");
        line("    point hem_fold = nape down length + %s", small());
        line("    guide scye = across from nape down %s", amount(VALUES));
        line("    let quarter = (chest + ease) / 4 - %s", small());
        line("    say \"Everything is squared from the fold. A quarter with its ease is {quarter}.\"");
        line("  }");
        line("  step \"Neck and shoulder\" {");
        line("    point neck_pt = nape right width_of(neck) up %s", small());
        line("    point tip = nape right %s + 18 cm down %s", amount(VALUES), small());
        line("    line shoulder = neck_pt to tip");
        line("    curve neck_edge = from nape heading right to neck_pt heading square to shoulder");
        line("  }");
        line("  step \"Armhole\" {");
        line("    point underarm = nape down %s + 16 cm right quarter + 6 cm", amount(VALUES));
        line("    curve armhole = from tip heading square to shoulder to underarm heading right");
        line("    point pitch = on armhole at %d%%", 40 + random.nextInt(30));
        line("    say \"The armhole is {length(armhole)} long.\"");
        line("  }");
        line("  point hem_side = underarm down to hem_fold");
        line("  point dip = between hem_fold and hem_side at %d%% down %s", 30 + random.nextInt(40), small());
        line("  line side = underarm to hem_side");
        line("  curve hem = from hem_side through dip to hem_fold");
        line("  line centre = hem_fold to nape");
        extras();
        line("  outline neck_edge, shoulder, armhole, side, hem, centre");
        line("  allow 1.5 cm, hem %s, neck_edge 1 cm", small());
        line("  cut 1 on fold centre from shell");
        line("  grain along centre");
        line("  notch armhole nearest pitch double");
        line("  notch side halfway");
        line("}");
        if (piece % 2 == 1) {
            String before = "Part" + (piece - 1);
            line(
                    "seam shoulder%d = %s.shoulder to %s.shoulder within 40 cm pressed toward %s",
                    piece, name, before, before);
            line(
                    "check length(%s.armhole, %s.armhole) >= upper_arm - %s \"The armholes are only {length(%s.armhole)} long.\"",
                    name, before, small(), name);
        }
        piece++;
    }

    private void extras() {
        int more = EXTRAS + random.nextInt(5);
        for (int i = 0; i < more; i++) {
            switch (random.nextInt(5)) {
                case 0 -> line("  point extra%d = tip toward underarm by %s", i, small());
                case 1 ->
                    line("  let extra%d = max(%s, distance(tip, underarm) / %d)", i, small(), 2 + random.nextInt(7));
                case 2 -> line("  line extra%d = nape right %s to hem_fold up %s", i, small(), small());
                case 3 -> line("  let extra%d = %s if neckline is vee else neck / 5 + %s", i, small(), small());
                default -> line("  point extra%d = where scye meets side", i);
            }
        }
    }

    /** A sum over measures and over values before the one with a number. */
    private String amount(int before) {
        String measure = MEASURES[random.nextInt(MEASURES.length)];
        String value = "value" + random.nextInt(before);
        return switch (random.nextInt(4)) {
            case 0 -> measure + " / " + (4 + random.nextInt(8)) + " + " + small();
            case 1 -> "max(" + value + " / " + (2 + random.nextInt(4)) + ", " + small() + ")";
            case 2 -> "(" + measure + " + ease) * 0." + (1 + random.nextInt(3)) + " - " + small();
            default -> value + " * 0." + (2 + random.nextInt(7)) + " + " + small();
        };
    }

    private String small() {
        return String.format(Locale.ROOT, "%d.%d cm", 1 + random.nextInt(4), random.nextInt(10));
    }

    private void line(String line) {
        text.append(line).append('\n');
        written++;
    }

    private void line(String form, Object... facts) {
        line(String.format(Locale.ROOT, form, facts));
    }
}
