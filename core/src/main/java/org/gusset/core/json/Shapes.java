package org.gusset.core.json;

import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Segment;

/** Writes paths as the exact segments that they are made of. */
final class Shapes {
    private final JsonText json;
    private final Amounts amounts;

    Shapes(JsonText json) {
        this.json = json;
        this.amounts = new Amounts(json);
    }

    void path(Path path) {
        json.open('[');
        path.segments().forEach(this::segment);
        json.close(']');
    }

    private void segment(Segment segment) {
        json.open('{').key("kind");
        if (segment instanceof ArcSegment arc) {
            json.text("arc");
            ends(arc);
            json.key("centre");
            amounts.point(arc.centre());
            json.key("radius").number(arc.radius());
            json.key("startDegrees").number(arc.fromDegrees());
            json.key("sweepDegrees").number(arc.sweepDegrees());
        } else if (segment instanceof CubicSegment cubic) {
            json.text("cubic");
            ends(cubic);
            json.key("control1");
            amounts.point(cubic.control1());
            json.key("control2");
            amounts.point(cubic.control2());
        } else {
            json.text("line");
            ends(segment);
        }
        json.close('}');
    }

    private void ends(Segment segment) {
        json.key("from");
        amounts.point(segment.start());
        json.key("to");
        amounts.point(segment.end());
    }
}
