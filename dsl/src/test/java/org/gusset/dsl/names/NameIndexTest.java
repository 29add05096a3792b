package org.gusset.dsl.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.api.Test;

/** What the index says of small texts, in which {@code <1>}, {@code <2>} ... mark the places that are one name. */
class NameIndexTest {
    private static final String HEAD = "draft \"Trial\"\nmeasure hip from 50 cm to 150 cm \"round the hip\"\n";

    /** A text without its marks, and where they stood. */
    private record Marked(String text, Map<Integer, Integer> marks) {
        static Marked of(String marked) {
            StringBuilder text = new StringBuilder();
            Map<Integer, Integer> marks = new java.util.TreeMap<>();
            for (int i = 0; i < marked.length(); i++) {
                if (marked.startsWith("<", i) && i + 2 < marked.length() && marked.charAt(i + 2) == '>') {
                    marks.put(text.length(), marked.charAt(i + 1) - '0');
                    i += 2;
                } else {
                    text.append(marked.charAt(i));
                }
            }
            return new Marked(text.toString(), marks);
        }
    }

    private static NameIndex index(String text) {
        return Gusset.names(Source.of("t.gusset", text), Sources.none(), Settings.defaults());
    }

    /** Holds the marks of a text to what the index joins. */
    private static void assertMarks(String marked) {
        Marked wanted = Marked.of(HEAD + marked);
        NameIndex index = index(wanted.text());
        for (int number : wanted.marks().values()) {
            List<Integer> places = wanted.marks().entrySet().stream()
                    .filter(e -> e.getValue() == number)
                    .map(Map.Entry::getKey)
                    .toList();
            Optional<Use> use = index.at("t.gusset", places.get(0));
            assertThat(use).as("the name at " + places.get(0)).isPresent();
            assertThat(index.together(use.orElseThrow().named()).stream()
                            .map(u -> u.place().start())
                            .distinct())
                    .as("the places of <" + number + "> " + use.get().named().name())
                    .containsExactlyElementsOf(places);
        }
    }

    @Test
    void namesOfPiecesAreTheirOwnAlsoWhereTwoPiecesHaveTheSame() {
        assertMarks("""
                piece <1>A {
                  point <2>p = origin
                  point q = <2>p right hip
                  line <3>l = <2>p to q
                  say "From {height(<2>p, q)} on."
                }
                piece B {
                  point <4>p = origin
                  point q = <4>p right length(<1>A.<3>l)
                }
                let d = distance(<1>A.<2>p, <1>A.q)
                """);
    }

    @Test
    void whatATracedPieceTakesOverAndChangesIsOneName() {
        assertMarks("""
                piece <1>A {
                  point <2>p = origin
                  point q = <2>p right hip
                  point r = q down 5 cm
                  line <3>side = <2>p to q
                  line back = q to r
                  line home = r to <2>p
                  outline <3>side, back, home
                  notch <3>side halfway
                }
                piece B traced from <1>A {
                  change line <3>side = <2>p to r to q
                  drop notch <3>side
                  let n = length(<3>side) + length(<1>A.<3>side)
                }
                let m = length(B.<3>side) + distance(B.<2>p, <1>A.<2>p)
                """);
    }

    @Test
    void aSeamMatchesBareNamesOfItsOwnSides() {
        String rest = """
                  point q = p right hip
                  point r = q down 5 cm
                """;
        assertMarks("piece A {\n  point p = origin\n" + rest
                + "  point <1>m = p right hip / 2\n  line <3>e = p to q\n}\n"
                + "piece B {\n  point p = origin\n" + rest
                + "  point <2>m = p right hip / 2\n  line <4>e = p to q\n}\n"
                + "seam s = A.<3>e to B.<4>e matching <1>m with <2>m\n");
    }

    @Test
    void wordsOfAChoiceAreNamesWhereItIsAskedFor() {
        assertMarks("""
                choose <1>neck = <2>vee out of <2>vee, <3>round
                let vee_depth = 10 cm if <1>neck is <2>vee else 5 cm if <1>neck is not <3>round else 2 cm
                """);
    }

    @Test
    void rulesTheirArgumentsUnknownsRowsDartsAndClothsAreFound() {
        assertMarks("""
                rule <1>share(<2>whole length) = <2>whole / 4
                cloth <3>shell wide 140 cm
                piece A {
                  unknown <4>u from 1 cm to 9 cm
                  point p = origin
                  point q = p right <1>share(hip)
                  line e = p to q
                  points <5>b = 3 on e
                  dart <6>d = on e halfway intake 2 cm to p down <4>u
                  line f = <5>b.1 to <6>d.tip
                  solve <4>u so that <4>u = 3 cm
                  cut 1 from <3>shell
                }
                """);
    }

    @Test
    void measuresAreOneNameInAllFilesThatShareThemAndOtherNamesGoThroughTheFilesName() {
        String block =
                HEAD + "choose ease = 2 cm\npiece Base {\n  point p = origin\n  point q = p right hip + ease\n}\n";
        String coat = HEAD
                + "use \"block.gusset\" as b with ease = 3 cm\nlet d = distance(b.Base.p, b.Base.q) + hip + b.ease\n";
        NameIndex index = Gusset.names(
                Source.of("coat.gusset", coat),
                Sources.of(Map.of("coat.gusset", coat, "block.gusset", block)),
                Settings.defaults());
        Use hip = index.at("coat.gusset", coat.indexOf("+ hip") + 2).orElseThrow();
        assertThat(index.together(hip.named()))
                .extracting(u -> u.place().source())
                .containsExactly("block.gusset", "block.gusset", "coat.gusset", "coat.gusset");
        Use ease = index.at("coat.gusset", coat.indexOf("ease")).orElseThrow();
        assertThat(ease.named().fullName()).isEqualTo("b.ease");
        assertThat(index.together(ease.named())).hasSize(4);
        assertThat(index.members("b")).extracting(Named::name).contains("ease", "Base");
        assertThat(index.members("b.Base")).extracting(Named::name).containsExactly("p", "q");
    }

    @Test
    void everyDefinitionTellsItsKindDimensionAndWords() {
        NameIndex index = index(
                HEAD
                        + "choose neck = vee out of vee, round \"shape\"\nlet a = hip * hip\nrule f(x length) = x / hip \"common practice\"\n");
        assertThat(index.names())
                .filteredOn(n -> n.kind() != NameKind.WORD && n.kind() != NameKind.ARGUMENT)
                .extracting(Named::name, Named::kind, Named::type, Named::dimension, Named::note)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "hip", NameKind.MEASURE, "a length", Optional.of(Dimension.LENGTH), "round the hip"),
                        org.assertj.core.groups.Tuple.tuple(
                                "neck", NameKind.CHOICE, "a word out of vee, round", Optional.empty(), "shape"),
                        org.assertj.core.groups.Tuple.tuple(
                                "a", NameKind.VALUE, "an area", Optional.of(Dimension.AREA), ""),
                        org.assertj.core.groups.Tuple.tuple(
                                "f",
                                NameKind.RULE,
                                "a plain number",
                                Optional.of(Dimension.NUMBER),
                                "common practice"));
    }

    @Test
    void whatCanBeSaidDependsOnThePlaceAlsoInAPieceWithoutItsEnd() {
        String text = HEAD
                + "rule f(x length) = x\npiece A {\n  point p = origin\n  point broken = p right\n  line l = p to \n";
        NameIndex index = index(text);
        assertThat(index.visible("t.gusset", text.length()))
                .extracting(Named::name)
                .contains("p", "hip", "A", "f")
                .doesNotContain("x");
        assertThat(index.visible("t.gusset", text.indexOf("= x") + 2))
                .extracting(Named::name)
                .contains("x", "hip")
                .doesNotContain("p");
        assertThat(index.visible("t.gusset", HEAD.length()))
                .extracting(Named::name)
                .contains("hip", "A")
                .doesNotContain("p", "x");
    }

    @Test
    void theNameOfABrokenDefinitionIsKnownAndTheRestIsIndexed() {
        String text = HEAD + "piece A {\n  point p = origin\n  point q = p right of of\n  line l = p to q\n}\n";
        NameIndex index = index(text);
        Use q = index.at("t.gusset", text.lastIndexOf("q")).orElseThrow();
        assertThat(q.named().name()).isEqualTo("q");
        assertThat(index.together(q.named())).hasSize(2);
        assertThat(index.names()).extracting(Named::fullName).contains("hip", "A", "A.p", "A.l");
    }

    /** The edges of a strip are drawn by the language: they are found, and cannot be renamed. */
    @Test
    void theEdgesOfAStripHaveNoWordOfTheirOwn() {
        String text = HEAD + "strip Band long hip wide 8 cm { cut 1 }\nlet l = length(Band.top)\n";
        NameIndex index = index(text);
        Use top = index.at("t.gusset", text.indexOf("top")).orElseThrow();
        assertThat(top.named().written()).isFalse();
        assertThat(top.named().fullName()).isEqualTo("Band.top");
        assertThat(index.together(top.named()))
                .extracting(u -> u.place().start())
                .containsExactly(text.indexOf("top"));
        Use band = index.at("t.gusset", text.indexOf("Band.top")).orElseThrow();
        assertThat(index.together(band.named())).hasSize(2);
    }
}
