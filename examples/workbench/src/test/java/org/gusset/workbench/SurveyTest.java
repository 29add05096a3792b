package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.assertj.core.data.Offset;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.stress.PeopleReport;
import org.gusset.core.stress.Settings;
import org.gusset.core.stress.Stress;
import org.gusset.core.stress.StressReport;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every shipped draft on the people of a survey: each 20th in the normal run, all of them with {@code -Dgusset.survey.all=true}, which
 * also writes what came of it to {@code target/survey}.
 */
class SurveyTest {
    private static final boolean ALL = Boolean.getBoolean("gusset.survey.all");
    private static final int EACH = 20;

    private static final ExecutorService WORKERS =
            Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());

    private static List<Measurements> people = List.of();

    @BeforeAll
    static void read() throws IOException {
        if (Files.exists(Survey.file())) {
            people = Survey.people(ALL ? 1 : EACH);
        }
    }

    @AfterAll
    static void stop() {
        WORKERS.shutdownNow();
    }

    private static void assumeFacts() {
        assumeTrue(
                !people.isEmpty(),
                "the survey is not there: " + Survey.file() + " (-Dgusset.facts=DIR tells where the facts are)");
    }

    static List<String> drafts() throws IOException {
        return ShippedDraftsTest.drafts();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyPersonGetsWholePiecesOrAKindWord(String name) throws IOException {
        assumeFacts();
        PeopleReport report = report(name, people);
        assertThat(report.tally().tried()).isEqualTo(people.size());
        assertThat(report.tally().refused()).as("people with a refused piece").isZero();
        assertThat(report.failures()).allSatisfy(failure -> {
            assertThat(failure.message()).as("a message").isPresent();
            assertThat(failure.message().orElseThrow().message()).isNotBlank();
        });
    }

    private static PeopleReport report(String name, List<Measurements> whom) throws IOException {
        Path file = Path.of(System.getProperty("gusset.root", "../.."))
                .resolve("examples/drafts")
                .resolve(name);
        Source source = Source.of(file.toString(), Files.readString(file));
        Draft draft =
                Bench.standard().compile(source, new FolderSources(source)).orThrow();
        StressReport report =
                Stress.of(draft, whom, Settings.defaults().withBodies(0).withExecutor(WORKERS));
        if (ALL) {
            Path folder = Files.createDirectories(Path.of("target/survey"));
            Files.writeString(folder.resolve(name + ".txt"), new StressText(LengthStyle.CM).of(report));
        }
        assertThat(report.exceptions()).as("faults of the library").isZero();
        return report.people().orElseThrow();
    }

    /** The medians of the survey's own summary for women, and the estimates worked by hand from them. */
    @Test
    void theColumnsAreTurnedIntoMeasuresAsThePageTells() {
        Measurements person = Survey.person(Map.ofEntries(
                Map.entry("subject", "1"),
                Map.entry("sex", "F"),
                Map.entry("stature", "1626"),
                Map.entry("chest_girth", "940"),
                Map.entry("waist_navel_girth", "824"),
                Map.entry("hip_girth", "1018.5"),
                Map.entry("tenth_rib_height", "1054"),
                Map.entry("hip_bone_height", "993"),
                Map.entry("waist_navel_height", "977.5"),
                Map.entry("hip_joint_height", "844"),
                Map.entry("back_nape_to_navel_waist_length", "424.5"),
                Map.entry("crotch_inside_leg_height", "780"),
                Map.entry("neck_base_girth", "370"),
                Map.entry("shoulder_biacromial_breadth", "365"),
                Map.entry("across_back_interscye_1_length", "373"),
                Map.entry("upper_arm_flexed_girth", "304"),
                Map.entry("upper_arm_length", "311"),
                Map.entry("forearm_length", "240.5"),
                Map.entry("wrist_girth", "154")));
        Map<String, Double> wanted = Map.of(
                "waist", 683.0,
                "waist_to_floor", 1023.5,
                "hip_depth", 179.5,
                "back_length", 378.5,
                "body_rise", 243.5,
                "arm_length", 551.5);
        wanted.forEach((measure, value) -> assertThat(
                        person.entry(measure).orElseThrow().quantity().value())
                .as(measure)
                .isCloseTo(value, Offset.offset(1e-9)));
        assertThat(person.entry("scye_depth")).isEmpty();
    }

    @Test
    void theSurveyIsWhole() throws IOException {
        assumeFacts();
        assertThat(Survey.people(1)).hasSize(Survey.PEOPLE);
    }
}
