package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.gusset.core.stress.Failure;
import org.gusset.core.stress.Settings;
import org.gusset.core.stress.Stress;
import org.gusset.core.stress.StressReport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped draft over all that its ranges let in: made-up bodies, no source. {@code -Dgusset.stress.bodies=N} tries more of them. */
class StressShippedDraftsTest {
    private static final int BODIES = Integer.getInteger("gusset.stress.bodies", 500);

    /** What may fail, and docs/reference/survey.md tells why: the message's code and the check or seam. */
    private static final Map<String, String> EXPLAINED = Map.of("drawstring-bag.gusset", "SEW005 mouth_hole");

    private static final ExecutorService WORKERS =
            Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());

    @AfterAll
    static void stop() {
        WORKERS.shutdownNow();
    }

    static List<String> drafts() throws IOException {
        return ShippedDraftsTest.drafts();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void noBodyWithinTheRangesIsRefusedAPieceAndWhatFailsIsExplained(String file) {
        StressReport report = Stress.of(
                Fitted.draft(file), Settings.defaults().withBodies(BODIES).withExecutor(WORKERS));
        assertThat(report.withoutRange()).isEmpty();
        assertThat(report.exceptions()).isZero();
        assertThat(report.all().legal()).isGreaterThanOrEqualTo(BODIES * 9 / 10);
        assertThat(report.all().refused()).isZero();
        String explained = EXPLAINED.getOrDefault(file, "");
        assertThat(report.failures()).map(StressShippedDraftsTest::what).isSubsetOf(explained);
        assertThat(report.failures())
                .allSatisfy(failure -> assertThat(failure.message()).isPresent());
    }

    private static String what(Failure failure) {
        return failure.code() + " " + failure.subject();
    }
}
