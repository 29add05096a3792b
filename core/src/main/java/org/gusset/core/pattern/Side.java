package org.gusset.core.pattern;

import org.gusset.core.geometry.Vector;

/** On which side of an outline, as one walks it, the outside lies. */
enum Side {
    LEFT(1),
    RIGHT(-1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** The outside of an outline by its signed area: right of one that runs anticlockwise as seen. */
    static Side outsideOf(double signedArea) {
        return signedArea > 0 ? RIGHT : LEFT;
    }

    /** 1 for the left, -1 for the right: the sign that parallel copies count with. */
    int sign() {
        return sign;
    }

    /** The unit way out, square to a way of travel. */
    Vector out(Vector travel) {
        return this == LEFT ? travel.left() : travel.right();
    }

    /** How far the outline turns from one way to the next in radians, positive towards the inside. */
    double turn(Vector before, Vector after) {
        return StrictMath.atan2(-sign * before.cross(after), before.dot(after));
    }
}
