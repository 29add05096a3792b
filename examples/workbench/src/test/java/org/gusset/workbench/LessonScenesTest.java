package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.assertj.core.data.Offset;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Lesson;
import org.gusset.core.draft.TraceLine;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.LessonStep;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.lesson.Told;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.style.StyleTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The lessons of the shipped drafts on the cast of the Quillhaven Players. */
class LessonScenesTest {
    private static final Offset<Double> MM = Offset.offset(0.01);

    /** How near the same figures come in the picture, which has another scale. */
    private static final Offset<Double> ROUNDING = Offset.offset(1e-6);

    private static final Map<String, List<Shown>> MADE = new ConcurrentHashMap<>();

    private static final Set<Role> NOW = Set.of(Role.DRAWN_NOW, Role.GUIDE_NOW);
    private static final Set<Role> BEFORE = Set.of(Role.DRAWN_BEFORE, Role.GUIDE_BEFORE);

    static Stream<Arguments> fitted() {
        return Fitted.drafts().stream().flatMap(draft -> Fitted.cast().stream().map(body -> Arguments.of(draft, body)));
    }

    /** A stage of a lesson and the step that shows it. */
    private record Shown(Lesson.Stage stage, LessonStep step) {}

    /** In centimetres, made once for all tests. */
    private static List<Shown> shown(String draft, String body) {
        return MADE.computeIfAbsent(draft + " " + body, both -> shown(Fitted.drawing(draft, body), LengthStyle.CM));
    }

    private static List<Shown> shown(Drawing drawing, LengthStyle lengths) {
        Lesson lesson = drawing.lesson(lengths);
        List<LessonStep> steps =
                Lessons.of(lesson, lengths, SheetOptions.defaults().withLengths(lengths));
        assertThat(steps).hasSameSizeAs(lesson.stages());
        List<Shown> shown = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            shown.add(new Shown(lesson.stages().get(i), steps.get(i)));
        }
        return shown;
    }

    @Test
    void theSmocksLessonHasAStepForEachStepOfTheDraftInFileOrder() {
        Drawing smock = Fitted.drawing("smock.gusset", "Maren Oddway");
        List<String> drawn = smock.steps().stream()
                .map(step -> step.piece() + ": " + step.title())
                .toList();
        List<String> taught = smock.lesson(LengthStyle.CM).stages().stream()
                .filter(stage -> stage.kind() == Lesson.Kind.STEP)
                .map(stage -> stage.piece() + ": " + stage.title())
                .toList();
        assertThat(taught).isEqualTo(drawn).hasSize(10);
        smock.steps()
                .forEach(step -> assertThat(smock.lesson(LengthStyle.CM).stages())
                        .filteredOn(stage -> stage.piece().equals(step.piece())
                                && stage.title().equals(step.title()))
                        .singleElement()
                        .satisfies(stage -> {
                            assertThat(stage.says())
                                    .isEqualTo(step.words().stream()
                                            .map(LengthStyle.CM.wording()::say)
                                            .toList());
                            assertThat(stage.introduced().stream()
                                            .map(Lesson.Introduced::name)
                                            .toList())
                                    .containsAll(step.names());
                        }));
    }

    @Test
    void theSmockBeginsWithItsMeasuresAndEveryPieceEndsFinished() {
        List<LessonStep> steps =
                Lessons.of(Fitted.drawing("smock.gusset", "Maren Oddway"), LengthStyle.CM, SheetOptions.defaults());
        assertThat(steps.get(0).piece()).isEmpty();
        assertThat(steps.get(0).told()).contains(new Told("chest", "97.79 cm, measured"));
        assertThat(steps).filteredOn(s -> s.title().equals("Finish the piece")).hasSize(5);
        assertThat(steps.stream().map(LessonStep::number).toList())
                .isEqualTo(Stream.iterate(1, n -> n + 1).limit(steps.size()).toList());
    }

    @Test
    void aChoiceThatIsANumberIsToldAsOne() {
        assertThat(shown("shirt.gusset", "Maren Oddway").get(0).step().told())
                .contains(new Told("buttons", "7, the draft's choice"));
    }

    /** Quarter chest and scye depth of Maren Oddway by hand: (38.5 in + 12 cm) / 4 and 8 7/8 in. */
    @Test
    void theUnderarmOfTheSmockIsSetOffWithTheTape() {
        Drawing smock = Fitted.drawing("smock.gusset", "Maren Oddway");
        assertThat(dimensions(smock, LengthStyle.CM, "Armhole"))
                .containsExactlyInAnyOrder("22.54 cm", "27.45 cm", "14.27 cm");
        assertThat(dimensions(smock, LengthStyle.INCHES, "Armhole")).contains("8 7/8 in", "10 13/16 in");
    }

    private static List<String> dimensions(Drawing drawing, LengthStyle lengths, String title) {
        LessonStep step = Lessons.of(drawing, lengths, SheetOptions.defaults().withLengths(lengths)).stream()
                .filter(s -> s.title().equals(title))
                .findFirst()
                .orElseThrow();
        return LessonInk.ofKind(step.picture(), "dimension").stream()
                .map(Ink.Group::title)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void everyNameOfTheTraceIsTaughtOnceAndNoneBeforeWhatItRestsOn(String draft, String body) {
        Drawing drawing = Fitted.drawing(draft, body);
        Set<String> sound = new HashSet<>(Set.of(""));
        drawing.pieces().stream().map(Piece::name).forEach(sound::add);
        List<String> named = drawing.trace(LengthStyle.CM).stream()
                .filter(line -> sound.contains(line.piece()))
                .map(line -> told(line))
                .toList();
        List<String> taught = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (Lesson.Stage stage : drawing.lesson(LengthStyle.CM).stages()) {
            for (Lesson.Introduced one : stage.introduced()) {
                taught.add(stage.piece() + "." + one.name() + ": " + one.sentence());
                one.uses()
                        .forEach(use -> assertThat(known)
                                .as("%s.%s rests on %s", stage.piece(), one.name(), use)
                                .contains(stage.piece() + "." + use));
                known.add(stage.piece() + "." + one.name());
            }
        }
        assertThat(taught).containsExactlyInAnyOrderElementsOf(named);
    }

    private static String told(TraceLine line) {
        return line.piece() + "." + line.name() + ": " + line.sentence();
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void everyMeasuredDistanceHasAnArrowThatIsAsLongAndSaysSo(String draft, String body) {
        for (Shown shown : shown(draft, body)) {
            List<Lesson.Way> ways = new ArrayList<>();
            for (Lesson.Introduced one : shown.stage().introduced()) {
                one.ways().stream()
                        .filter(way -> way.measured() && ways.stream().noneMatch(w -> same(w, way)))
                        .forEach(ways::add);
            }
            List<Ink.Group> arrows = LessonInk.ofKind(shown.step().picture(), "dimension");
            assertThat(arrows).as(shown.step().title()).hasSameSizeAs(ways);
            for (Ink.Group group : arrows) {
                Path arrow = ((Ink.Stroke) group.items().get(0)).path();
                assertThat(ways)
                        .as("%s in %s", group.title(), shown.step().title())
                        .anySatisfy(way ->
                                measures(way, arrow, group.title(), shown.step().scale()));
            }
        }
    }

    private static boolean same(Lesson.Way a, Lesson.Way b) {
        boolean onward = a.along().start().distance(b.along().start()) < 1e-3
                && a.along().end().distance(b.along().end()) < 1e-3;
        boolean back = a.along().start().distance(b.along().end()) < 1e-3
                && a.along().end().distance(b.along().start()) < 1e-3;
        return (onward || back) && Math.abs(a.length() - b.length()) < 1e-3;
    }

    /** A straight arrow is a copy of its way; along a curve it is parallel, and so square to the way at both ends. */
    private static void measures(Lesson.Way way, Path arrow, String text, double scale) {
        assertThat(text).isEqualTo(LengthStyle.CM.show(way.length()));
        if (way.along().straight()) {
            assertThat(arrow.length() / scale).isCloseTo(way.length(), MM);
            Vector across = arrow.end().minus(arrow.start()).times(1 / scale);
            Vector own = way.along().end().minus(way.along().start());
            assertThat(across.dx()).isCloseTo(own.dx(), MM);
            assertThat(across.dy()).isCloseTo(own.dy(), MM);
        } else {
            assertThat(arrow.tangent(0).unit().dot(way.along().tangent(0).unit()))
                    .isCloseTo(1, ROUNDING);
            assertThat(arrow.tangent(arrow.length())
                            .unit()
                            .dot(way.along().tangent(way.length()).unit()))
                    .isCloseTo(1, ROUNDING);
        }
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void whatIsNewIsStrongAndWhatStoodBeforeIsLight(String draft, String body) {
        String piece = "";
        Set<String> standing = new LinkedHashSet<>();
        for (Shown shown : shown(draft, body)) {
            if (!shown.stage().piece().equals(piece)) {
                piece = shown.stage().piece();
                standing.clear();
            }
            if (shown.stage().kind() == Lesson.Kind.MEASURES) {
                continue;
            }
            Set<String> drawn = new LinkedHashSet<>();
            shown.stage().introduced().stream()
                    .filter(one -> one.shape().isPresent())
                    .forEach(one -> drawn.add(one.name()));
            Set<String> strong = new LinkedHashSet<>();
            Set<String> light = new LinkedHashSet<>();
            for (Ink.Group group : LessonInk.ofKind(shown.step().picture(), Ink.Group.NAMED)) {
                if (group.id().startsWith("name-")) {
                    List<Role> roles = LessonInk.roles(group);
                    boolean now = NOW.containsAll(roles);
                    assertThat(now || BEFORE.containsAll(roles))
                            .as("%s: %s", group.title(), roles)
                            .isTrue();
                    (now ? strong : light).add(group.title());
                }
            }
            if (shown.stage().before().stream()
                    .noneMatch(s ->
                            s.shape().lines().isEmpty() && s.shape().points().isEmpty())) {
                assertThat(strong).isEqualTo(drawn);
                assertThat(light).isSubsetOf(standing);
                // A dart that a change has closed is drawn no more.
                assertThat(light.size()).isGreaterThanOrEqualTo(standing.size() - changes(shown, standing));
            }
            standing.addAll(drawn);
        }
    }

    private static int changes(Shown shown, Set<String> standing) {
        List<String> kept =
                shown.stage().before().stream().map(Lesson.Standing::name).toList();
        return (int) standing.stream().filter(name -> !kept.contains(name)).count();
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void everythingLiesInTheFrameThatAllStepsOfAPieceShare(String draft, String body) {
        String piece = "";
        double height = 0;
        double scale = 0;
        double whole = 0;
        for (Shown shown : shown(draft, body)) {
            LessonStep step = shown.step();
            if (step.piece().equals(piece) && !piece.isEmpty()) {
                assertThat(step.picture().height()).isEqualTo(height);
                assertThat(step.scale()).isEqualTo(scale);
                assertThat(step.scene().height()).isEqualTo(whole);
            }
            piece = step.piece();
            height = step.picture().height();
            scale = step.scale();
            whole = step.scene().height();
            if (!piece.isEmpty()) {
                Box frame = new Box(0, 0, step.picture().width(), height);
                for (Ink.Stroke stroke : LessonInk.strokes(step.picture().items())) {
                    assertThat(inside(stroke.path().bounds(), frame))
                            .as("%s %s", step.title(), stroke)
                            .isTrue();
                }
                for (Ink.TextLine line : LessonInk.words(step.picture().items())) {
                    assertThat(inside(LessonInk.box(line), frame))
                            .as(line.text())
                            .isTrue();
                }
            }
        }
    }

    private static boolean inside(Box box, Box frame) {
        return box.left() >= frame.left()
                && box.top() >= frame.top()
                && box.right() <= frame.right()
                && box.bottom() <= frame.bottom();
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void wordsNeverOverlapAndFewLieOnStrongLines(String draft, String body) {
        int all = 0;
        int crossed = 0;
        int missing = 0;
        for (Shown shown : shown(draft, body)) {
            if (shown.step().piece().isEmpty()) {
                continue;
            }
            List<Ink.TextLine> words = LessonInk.words(shown.step().picture().items());
            List<Path> strong = LessonInk.strokes(shown.step().picture().items()).stream()
                    .filter(s -> s.role() == Role.DRAWN_NOW)
                    .map(Ink.Stroke::path)
                    .toList();
            List<Path> grain = LessonInk.heads(shown.step().picture().items(), Role.GRAIN_NOW);
            for (int i = 0; i < words.size(); i++) {
                Box box = LessonInk.box(words.get(i));
                for (int k = 0; k < i; k++) {
                    assertThat(LessonInk.overlap(box, LessonInk.box(words.get(k))))
                            .as(
                                    "%s and %s in %s",
                                    words.get(i).text(),
                                    words.get(k).text(),
                                    shown.step().title())
                            .isFalse();
                }
                assertThat(grain)
                        .as("%s in %s", words.get(i).text(), shown.step().title())
                        .noneMatch(head -> LessonInk.enters(head, box));
                all++;
                crossed += strong.stream().anyMatch(line -> LessonInk.enters(line, box)) ? 1 : 0;
            }
            Set<String> texts = new HashSet<>();
            words.forEach(w -> texts.add(w.text()));
            for (Lesson.Introduced one : shown.stage().introduced()) {
                missing += one.shape().isEmpty() || texts.contains(one.name()) ? 0 : 1;
            }
        }
        // None of 4803 when this was measured; one in a hundred would still be a picture to show.
        assertThat(crossed).as("of %s", all).isLessThanOrEqualTo(all / 100);
        assertThat(missing).as("new names without words").isZero();
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void everyDocumentIsWellFormedAndEveryNewNameCanBeFoundInIt(String draft, String body) throws Exception {
        for (Shown shown : shown(draft, body)) {
            Document document = parsed(Svg.write(shown.step().scene(), StyleTable.drafting()));
            Set<String> ids = new HashSet<>();
            Set<String> names = new HashSet<>();
            NodeList elements = document.getElementsByTagName("*");
            for (int i = 0; i < elements.getLength(); i++) {
                Element element = (Element) elements.item(i);
                if (element.hasAttribute("id")) {
                    assertThat(ids.add(element.getAttribute("id")))
                            .as(element.getAttribute("id"))
                            .isTrue();
                }
                if (element.hasAttribute("data-name")) {
                    names.add(element.getAttribute("data-name"));
                }
            }
            shown.step().told().forEach(one -> assertThat(names).contains(one.name()));
        }
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aLessonIsTheSameEachTime() {
        Drawing bodice = Fitted.drawing("fitted-bodice.gusset", "Bartholo Grumthorpe");
        assertThat(Svg.lesson(bodice, LengthStyle.CM, SheetOptions.defaults()))
                .isEqualTo(Svg.lesson(
                        Fitted.drawing("fitted-bodice.gusset", "Bartholo Grumthorpe"),
                        LengthStyle.CM,
                        SheetOptions.defaults()));
    }

    @Test
    void aPictureAloneIsThatOfItsStep() {
        Drawing drawing = Fitted.drawing("smock.gusset", "Maren Oddway");
        SheetOptions options = SheetOptions.defaults();
        Lesson lesson = drawing.lesson(LengthStyle.CM);
        List<LessonStep> steps = Lessons.of(lesson, LengthStyle.CM, options);
        assertThat(steps).isNotEmpty();
        for (LessonStep step : steps) {
            assertThat(Lessons.picture(lesson, step.number(), LengthStyle.CM, options))
                    .isEqualTo(step.picture());
        }
    }
}
