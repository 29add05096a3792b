package org.gusset.assertions;

import java.util.Objects;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;

/** A small draft for the juggler's bag of the Quillhaven Players, and the same with slips. */
final class Drafts {
    static final String BAG = """
            draft "Club bag"
            measure club from 20 cm to 90 cm
            choose bag_width = 30 cm from 12 cm to 60 cm
            choose lining = plain out of plain, quilted
            choose patch = yes
            let depth = club + 5 cm
            piece Bag {
              point mouth_left   = origin
              point mouth_right  = mouth_left right bag_width
              point bottom_right = mouth_right down depth
              point bottom_left  = mouth_left down depth
              let turned = 3 cm
              line mouth       = mouth_left to mouth_right
              line right_side  = mouth_right to bottom_right
              line bottom_fold = bottom_right to bottom_left
              line left_side   = bottom_left to mouth_left
              outline mouth, right_side, bottom_fold, left_side
              allow 1.5 cm, mouth 4 cm turned up
              cut 1 on fold bottom_fold
              grain along left_side
              notch right_side at turned from mouth_right
              notch left_side at turned from mouth_left
            }
            piece Patch if patch {
              point a = origin
              point b = a right 10 cm
              point c = b down 10 cm
              point d = a down 10 cm
              line top   = a to b
              line right_edge = b to c
              line low   = c to d
              line left_edge = d to a
              gather top to 6 cm
              outline top, right_edge, low, left_edge
              allow 1 cm
              cut 1 pair
              grain along left_edge
            }
            seam sides = Bag.right_side to Bag.left_side
            check bag_width >= 20 cm "The bag is {bag_width} wide, and no club goes in."
            """;

    private Drafts() {}

    static Drawing drawing(String text) {
        return drawing(text, Choices.none());
    }

    static Drawing drawing(String text, Choices choices) {
        return Objects.requireNonNull(Gusset.compile(Source.of("bag.gusset", text))
                .orThrow()
                .evaluate(Measurements.of("Pip Thistlewick").with("club", Quantity.length(450)), choices)
                .value()
                .orElse(null));
    }

    static Drawing bag() {
        return drawing(BAG);
    }

    /** The left side slants and is longer: 500 mm down and 50 mm across, 502.5 mm by Pythagoras. */
    static Drawing slanted() {
        return drawing(BAG.replace("mouth_left down depth", "mouth_left down depth left 5 cm"));
    }

    /** The outline of the bag crosses itself. */
    static Drawing crossed() {
        return drawing(
                BAG.replace("bottom_right = mouth_right down depth", "bottom_right = mouth_left down depth left 5 cm"));
    }
}
