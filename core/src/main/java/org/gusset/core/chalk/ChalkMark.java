package org.gusset.core.chalk;

import org.gusset.core.geometry.Point;

/**
 * One mark, set off from the base and the top line. Lengths in mm.
 *
 * @param name what is there, in the draft's names
 * @param point the point as drafted, in the piece's frame
 * @param across how far off the base, rounded to the tape
 * @param down how far below the top line, rounded to the tape
 * @param error how far the rounded mark lies from the point
 */
public record ChalkMark(String name, Point point, double across, double down, double error) {
    static ChalkMark of(String name, Point point, ChalkFrame frame, Tape tape) {
        double across = tape.rounded(frame.across(point)) + 0.0;
        double down = tape.rounded(frame.down(point)) + 0.0;
        return new ChalkMark(name, point, across, down, frame.at(across, down).distance(point));
    }
}
