package org.gusset.workbench.docs;

import java.util.regex.Pattern;

/** The small draft around a snippet that is not whole: a few measures and choices, one cloth and one oblong piece. */
final class Frame {
    private static final String HEAD = """
            gusset 1
            draft "Trial"
            measure chest from 60 cm to 170 cm "round the fullest part of the chest, tape level"
            measure waist from 40 cm to 160 cm "round the natural waist"
            measure hip from 60 cm to 180 cm "round the fullest part of the hip"
            measure neck from 26 cm to 60 cm "round the base of the neck"
            choose ease = 12 cm from 4 cm to 40 cm "added to the whole chest"
            choose neckline = vee out of vee, round "shape of the front neckline"
            choose pockets = yes "a patch pocket"
            let quarter = (chest + ease) / 4
            cloth shell wide 140 cm "plain cotton"
            """;
    private static final String PIECE = """
              point nape     = origin
              point top_side = nape right 20 cm
              point hem_side = top_side down 30 cm
              point hem_fold = nape down 30 cm
              line top    = nape to top_side
              line side   = top_side to hem_side
              line hem    = hem_side to hem_fold
              line centre = hem_fold to nape
            """;

    private Frame() {}

    /** The frame with these lines at file level and these in its piece. */
    static String with(String fileLines, String pieceLines) {
        return HEAD + fileLines + "piece Trial {\n" + PIECE + pieceLines + unsaid(pieceLines) + "}\n";
    }

    private static String unsaid(String lines) {
        StringBuilder rest = new StringBuilder();
        for (String line :
                new String[] {"outline top, side, hem, centre", "allow 1 cm", "cut 1 from shell", "grain along centre"
                }) {
            String word = line.substring(0, line.indexOf(' '));
            if (!Pattern.compile("(?m)^\\s*" + word + "\\b").matcher(lines).find()) {
                rest.append("  ").append(line).append('\n');
            }
        }
        return rest.toString();
    }
}
