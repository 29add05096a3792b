package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class RunningOnTest {
    private static final Point JOINT = new Point(50, 20);

    @Test
    void neighboursThatRunOnMeetAtTheirJointOnlyAsTheFullSearchFinds() {
        RandomPaths random = new RandomPaths(7);
        int apart = 0;
        for (int i = 0; i < 20_000; i++) {
            Segment first = segment(random, -1).reversed();
            Segment second = segment(random, 1);
            if (!RunningOn.apart(first, second)) {
                continue;
            }
            apart++;
            for (Contact contact : SegmentContacts.of(first, false, second, false)) {
                double before = first.length() - first.lengthTo(contact.t());
                double after = second.lengthTo(contact.otherT());
                assertThat(before + after)
                        .as("draw %d: %s and %s", i, first, second)
                        .isLessThanOrEqualTo(2 * Path.COINCIDE);
            }
        }
        assertThat(apart).isBetween(1_000, 19_000);
    }

    @Test
    void neighboursThatTurnBackAreLookedAt() {
        LineSegment there = new LineSegment(new Point(0, 0), JOINT);
        assertThat(RunningOn.apart(there, new LineSegment(JOINT, new Point(0, 1))))
                .isFalse();
        assertThat(RunningOn.apart(there, new LineSegment(JOINT, there.start())))
                .isFalse();
        assertThat(RunningOn.apart(there, new LineSegment(JOINT, new Point(100, 40))))
                .isTrue();
        assertThat(RunningOn.apart(there, new LineSegment(new Point(50, 20.5), new Point(100, 40))))
                .isFalse();
    }

    @Test
    void aHookBackOverTheJointIsFound() {
        // The second leaves to the right and comes back across the first.
        LineSegment first = new LineSegment(new Point(0, 0), new Point(10, 0));
        CubicSegment hook = new CubicSegment(new Point(10, 0), new Point(30, 0), new Point(5, -20), new Point(5, 5));
        assertThat(RunningOn.apart(first, hook)).isFalse();
        assertThat(Path.of(List.of(first, hook)).selfMeetings()).hasSize(1);
    }

    /** A line or curve from the joint, most of them running to one side. */
    private static Segment segment(RandomPaths random, int sense) {
        if (random.count(4) == 0) {
            return new LineSegment(JOINT, off(random, sense));
        }
        Point control = random.count(8) == 0 ? JOINT : off(random, sense);
        return new CubicSegment(JOINT, control, off(random, sense), off(random, sense));
    }

    private static Point off(RandomPaths random, int sense) {
        return new Point(JOINT.x() + sense * random.between(-2, 100), JOINT.y() + random.between(-60, 60));
    }
}
