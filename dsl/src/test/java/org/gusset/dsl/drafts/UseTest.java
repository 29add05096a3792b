package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.api.Test;

/** Drafts that use others. */
class UseTest {
    private static final double HAIR = 1e-9;

    private static final String BLOCK = """
            draft "Block"
            measure chest from 70 cm to 150 cm
            measure back  from 30 cm to 60 cm
            choose ease = 8 cm from 2 cm to 30 cm
            choose neckline = vee out of vee, round
            choose lined = no
            cloth lining wide 150 cm
            let quarter = (chest + ease) / 4
            rule neck_width(girth length) = girth / 5 - 0.5 cm
            piece Body {
              point a = origin
              point b = a right quarter
              point c = b down back
              point d = a down (back if neckline is vee else back - 1 cm)
              line top = a to b
              line side = b to c
              line hem = c to d
              line centre = d to a
              outline top, side, hem, centre
              allow 1 cm
              cut 1 on fold centre from lining
              grain along centre
              notch side halfway
            }
            piece Extra traced from Body if lined { }
            """;

    private final Map<String, String> files = new LinkedHashMap<>(Map.of("block.gusset", BLOCK));
    private final List<String> asked = new ArrayList<>();

    private Outcome<Draft> compile(String text) {
        Sources sources = (file, asking) -> {
            asked.add(asking.name() + " asks for " + file);
            String found = files.get(file);
            return found == null
                    ? Sources.Answer.none("there is no such file in the chest")
                    : Sources.Answer.of(Source.of(file, found));
        };
        return Gusset.compile(Source.of("first.gusset", text), sources);
    }

    private Drawing drawn(String text, Object... body) {
        Outcome<Draft> draft = compile("draft \"First\"\n" + text);
        assertThat(draft.diagnostics()).isEmpty();
        return Drafts.draw(draft.value().orElseThrow(), Drafts.body(body));
    }

    private List<String> told(String text) {
        return compile("draft \"First\"\n" + text).diagnostics().stream()
                .map(UseTest::placed)
                .toList();
    }

    private static String placed(Diagnostic diagnostic) {
        Span span = (Span) diagnostic.place();
        return diagnostic.code().id() + " " + span.source() + ":" + span.line();
    }

    @Test
    void valuesRulesAndPiecesOfAnotherDraftAreSaidWithADot() {
        Drawing drawing = drawn(
                "use \"block.gusset\" as block\n"
                        + "let quarter = block.quarter\nlet neck = block.neck_width(36 cm)\n"
                        + "let side = length(block.Body.side)\nlet wide = distance(block.Body.a, block.Body.b)\n"
                        + "let both = length(all block.Body.top)\nlet area = area(block.Body)",
                "chest",
                100,
                "back",
                42);
        assertThat(Drafts.value(drawing, "quarter")).isCloseTo(270, within(HAIR));
        assertThat(Drafts.value(drawing, "neck")).isCloseTo(67, within(HAIR));
        assertThat(Drafts.value(drawing, "side")).isCloseTo(420, within(HAIR));
        assertThat(Drafts.value(drawing, "wide")).isCloseTo(270, within(HAIR));
        assertThat(Drafts.value(drawing, "both")).isCloseTo(540, within(HAIR));
        assertThat(Drafts.value(drawing, "area")).isCloseTo(270 * 420, within(1e-6));
        // What is used is not cut.
        assertThat(drawing.pieces()).isEmpty();
    }

    @Test
    void aFileMayBeUsedTwiceWithOtherChoices() {
        Drawing drawing = drawn(
                "choose loose = 20 cm from 0 cm to 60 cm\n"
                        + "use \"block.gusset\" as narrow\nuse \"block.gusset\" as wide with ease = loose / 2 + 2 cm, neckline = round\n"
                        + "let first = narrow.quarter\nlet second = wide.quarter\n"
                        + "let third = length(narrow.Body.centre)\nlet fourth = length(wide.Body.centre)",
                "chest",
                100,
                "back",
                42);
        assertThat(Drafts.value(drawing, "first")).isCloseTo(270, within(HAIR));
        assertThat(Drafts.value(drawing, "second")).isCloseTo(280, within(HAIR));
        assertThat(Drafts.value(drawing, "third")).isCloseTo(420, within(HAIR));
        assertThat(Drafts.value(drawing, "fourth")).isCloseTo(410, within(HAIR));
    }

    @Test
    void aTracedPieceKeepsTheNamesOfItsOwnFile() {
        Drawing drawing = drawn(
                "measure chest from 60 cm to 120 cm\nlet quarter = 3 cm\nlet top = 4 cm\n"
                        + "use \"block.gusset\" as block with ease = 12 cm\n"
                        + "piece Bodice traced from block.Body {\n  change point c = b down back_length\n"
                        + "  notch hem at quarter\n  corner hem, centre pointed\n}\nmeasure back_length from 30 cm to 60 cm\n"
                        + "piece Left traced from Bodice mirrored over Bodice.centre { }\n"
                        + "piece Yoke taken from block.Body right of seam_line { }\n"
                                .replace("right of seam_line", "within 3 cm of top")
                        + "let side = length(Bodice.side)\nlet hem = length(Bodice.hem)",
                "chest",
                100,
                "back",
                42,
                "back_length",
                45);
        assertThat(Drafts.value(drawing, "side")).isCloseTo(450, within(HAIR));
        assertThat(Drafts.value(drawing, "hem")).isCloseTo(Math.hypot(280, 30), within(HAIR));
        assertThat(drawing.pieces()).extracting(p -> p.name()).containsExactly("Bodice", "Left", "Yoke");
        assertThat(Drafts.made(drawing, "Bodice").notches()).hasSize(2);
        assertThat(drawing.cloths()).extracting(c -> c.name()).containsExactly("lining");
        assertThat(drawing.diagnostics()).isEmpty();
    }

    @Test
    void measuresAreSharedByNameAndTheirRangesIntersect() {
        String text =
                "measure chest from 60 cm to 120 cm\nuse \"block.gusset\" as block\nlet x = block.quarter + chest / 4";
        Drawing drawing = drawn(text, "chest", 100, "back", 42);
        assertThat(drawing.diagnostics()).isEmpty();
        assertThat(Drafts.value(drawing, "x")).isCloseTo(520, within(HAIR));
        assertThat(Drafts.codes(drawn(text, "chest", 65, "back", 42).diagnostics()))
                .containsExactly("MEA111");
        assertThat(Drafts.codes(drawn(text, "chest", 130, "back", 42).diagnostics()))
                .containsExactly("MEA112");
        Draft draft = compile("draft \"First\"\n" + text).value().orElseThrow();
        assertThat(draft.measures()).extracting(Draft.Measure::name).containsExactly("chest");
    }

    @Test
    void rangesThatShareNothingAreTold() {
        assertThat(told("measure chest from 20 cm to 60 cm\nuse \"block.gusset\" as block\nlet x = block.quarter"))
                .containsExactly("KND027 block.gusset:2");
        assertThat(told("measure chest from 20 deg to 60 deg\nuse \"block.gusset\" as block\nlet x = block.quarter"))
                .contains("KND028 block.gusset:2");
    }

    @Test
    void aChoiceThatIsSetMustBeOneAndLieInItsRange() {
        assertThat(told("use \"block.gusset\" as block with eese = 3 cm\nlet x = block.quarter"))
                .containsExactly("NAM015 first.gusset:2");
        assertThat(told("use \"block.gusset\" as block with ease = 3\nlet x = block.quarter"))
                .containsExactly("DIM004 first.gusset:2");
        assertThat(told("use \"block.gusset\" as block with neckline = boat\nlet x = block.quarter"))
                .containsExactly("NAM011 first.gusset:2");
        assertThat(told("choose shape = boat out of boat, vee\n"
                        + "use \"block.gusset\" as block with neckline = shape\nlet x = block.quarter"))
                .containsExactly("KND001 first.gusset:3");
        Drawing drawing = drawn(
                "use \"block.gusset\" as block with ease = 50 cm\nlet x = block.quarter", "chest", 100, "back", 42);
        assertThat(drawing.findings())
                .filteredOn(f -> f.name().equals("block.ease"))
                .extracting(Finding::verdict)
                .containsExactly(Finding.Verdict.FAILED);
    }

    @Test
    void whatIsMissingIsToldWithTheWayToIt() {
        files.put("middle.gusset", "draft \"Middle\"\nuse \"lost.gusset\" as lost\nlet x = lost.y\n");
        List<Diagnostic> diagnostics = compile("draft \"First\"\nuse \"middle.gusset\" as middle\nlet z = middle.x\n")
                .diagnostics();
        assertThat(diagnostics).hasSize(1);
        assertThat(placed(diagnostics.get(0))).isEqualTo("NAM014 middle.gusset:2");
        assertThat(diagnostics.get(0))
                .hasToString("NAM014 error: `lost.gusset` cannot be used: there is no such file in the chest.");
        assertThat(diagnostics.get(0).related()).hasSize(1);
        assertThat(asked).containsExactly("first.gusset asks for middle.gusset", "middle.gusset asks for lost.gusset");
    }

    @Test
    void aCircleIsToldWithItsChain() {
        files.put("a.gusset", "draft \"A\"\nuse \"b.gusset\" as b\nlet x = b.y\n");
        files.put("b.gusset", "draft \"B\"\nuse \"a.gusset\" as a\nlet y = a.x\n");
        List<Diagnostic> diagnostics =
                compile("draft \"First\"\nuse \"a.gusset\" as a\nlet z = a.x\n").diagnostics();
        assertThat(diagnostics).hasSize(1);
        assertThat(diagnostics.get(0))
                .hasToString(
                        "NAM006 error: `a.gusset` goes round in a circle: first.gusset uses a.gusset uses b.gusset uses"
                                + " a.gusset.");
    }

    @Test
    void mistakesInAUsedFileAreToldThere() {
        files.put("block.gusset", BLOCK.replace("point b = a right quarter", "point b = a right quartr"));
        assertThat(told("use \"block.gusset\" as block\nlet x = length(block.Body.top)\nlet y = block.nothing"))
                .containsExactly("NAM005 first.gusset:4", "NAM001 block.gusset:12");
        files.put("block.gusset", BLOCK.replace("line top = a to b", "line top = a tu b"));
        assertThat(told("use \"block.gusset\" as block\nlet x = length(block.Body.top)"))
                .containsExactly("SYN001 block.gusset:15");
    }

    @Test
    void aDraftIsNoValue() {
        assertThat(told("use \"block.gusset\" as block\nlet x = block")).containsExactly("KND029 first.gusset:3");
        assertThat(told("use \"block.gusset\" as block\nlet x = block.Body.top.nothing"))
                .containsExactly("NAM005 first.gusset:3");
        assertThat(told("use \"block.gusset\" as block\nlet x = block.neck_with(3 cm)"))
                .containsExactly("NAM008 first.gusset:3");
        assertThat(told("use \"block.gusset\" as block\npiece P traced from block.Bodi { }"))
                .contains("NAM004 first.gusset:3");
        assertThat(told("use \"block.gusset\" as block\nuse \"block.gusset\" as block\nlet x = block.quarter"))
                .containsExactly("NAM002 first.gusset:3");
    }

    @Test
    void filesThatUseOneAnotherWithoutEndAreBounded() {
        StringBuilder uses = new StringBuilder("draft \"Many\"\n");
        for (int i = 0; i < 20; i++) {
            uses.append("use \"level").append("%d.gusset\" as u").append(i).append('\n');
        }
        for (int level = 0; level < 5; level++) {
            files.put("level" + level + ".gusset", uses.toString().replace("%d", Integer.toString(level + 1)));
        }
        files.put("level5.gusset", "draft \"Last\"\n");
        assertThat(told("use \"level0.gusset\" as all_of_it"))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("LIM103");
    }

    @Test
    void withoutAHostThatLendsNothingCanBeUsed() {
        Outcome<Draft> draft =
                Gusset.compile(Source.of("first.gusset", "draft \"First\"\nuse \"block.gusset\" as b\n"));
        assertThat(draft.diagnostics())
                .singleElement()
                .hasToString("NAM014 error: `block.gusset` cannot be used: no other files can be reached from here.");
    }

    @Test
    void aPieceThatIsLeftOutCannotBeMeasured() {
        String text = "use \"block.gusset\" as block%s\n%scheck length(block.Extra.top) > 1 cm \"there\"\n";
        Drawing without = drawn(text.formatted("", ""), "chest", 100, "back", 42);
        assertThat(without.diagnostics()).isEmpty();
        assertThat(without.findings())
                .filteredOn(f -> f.name().startsWith("length"))
                .extracting(Finding::verdict)
                .containsExactly(Finding.Verdict.SKIPPED);
        Drawing with = drawn(text.formatted(" with lined = yes", ""), "chest", 100, "back", 42);
        assertThat(with.findings())
                .filteredOn(f -> f.name().startsWith("length"))
                .extracting(Finding::verdict)
                .containsExactly(Finding.Verdict.PASSED);
    }

    @Test
    void unknownsAreSolvedInTheFileThatAsksForThem() {
        files.put("solved.gusset", """
                draft "Solved"
                measure chest from 70 cm to 150 cm
                unknown wide from 1 cm to 90 cm
                solve wide so that wide * 3 = chest
                piece Strip_of {
                  unknown deep from 1 cm to 90 cm
                  point a = origin
                  point b = a right wide
                  point c = b down deep
                  point d = a down deep
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  solve deep so that length(top) + length(side) = 50 cm
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1
                  grain along centre
                }
                """);
        Drawing drawing = drawn(
                "use \"solved.gusset\" as s\nlet w = s.wide\npiece Copy traced from s.Strip_of { }\n"
                        + "let deep = length(Copy.side)",
                "chest",
                90);
        assertThat(Drafts.value(drawing, "w")).isCloseTo(300, within(1e-6));
        assertThat(Drafts.value(drawing, "deep")).isCloseTo(200, within(1e-6));
    }

    @Test
    void theFingerprintKnowsTheFilesThatAreUsed() {
        String text = "draft \"First\"\nuse \"block.gusset\" as block\nlet x = block.quarter\n";
        Measurements body = Drafts.body("chest", 100, "back", 42);
        String before = compile(text)
                .value()
                .orElseThrow()
                .evaluate(body, Choices.none())
                .value()
                .orElseThrow()
                .fingerprint();
        files.put("block.gusset", BLOCK.replace("/ 4", "/ 4.0001"));
        String after = compile(text)
                .value()
                .orElseThrow()
                .evaluate(body, Choices.none())
                .value()
                .orElseThrow()
                .fingerprint();
        assertThat(Optional.of(after)).isNotEqualTo(Optional.of(before));
    }
}
