package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Point;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.GradeWords;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;

/**
 * The grade rules as a sheet, true to scale: each piece once with its stitching lines in the first and the last size, an arrow at every
 * corner, and a list of the rules that are not the same from size to size.
 */
public final class GradeSheet {
    /** How wide the list of rules may be, in mm. */
    private static final double LIST = 170;

    /** A list of more rules than this stands in two columns. */
    private static final int LONG_LIST = 12;

    /** So many reasons why something is not proved are told. */
    private static final int MOST_REASONS = 6;

    private final Grade grade;
    private final SheetOptions options;
    private final Words words;
    private final Ids ids = new Ids();

    private GradeSheet(Grade grade, SheetOptions options) {
        this.grade = grade;
        this.options = options;
        this.words = new Words(options.wording());
    }

    /** The sheet. */
    public static Scene of(Grade grade, SheetOptions options) {
        return new GradeSheet(grade, options).scene();
    }

    private Scene scene() {
        List<CornerRule> marked = marked();
        Map<String, List<CornerRule>> byPiece = new LinkedHashMap<>();
        grade.rules()
                .corners()
                .forEach(rule -> byPiece.computeIfAbsent(rule.piece(), piece -> new ArrayList<>())
                        .add(rule));
        List<PieceFigure> figures = new ArrayList<>();
        byPiece.forEach(
                (piece, rules) -> figures.add(new GradeFigure(grade, piece, rules, marked, options, ids).draw()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(title());
        if (!figures.isEmpty()) {
            blocks.add(new LineKey(words, options.styles()).of(rows(), figures, notes(), ids));
        }
        if (!marked.isEmpty()) {
            blocks.add(list(marked));
        }
        blocks.add(TestSquares.of(words, options.styles(), ids));
        String title = words.say(
                "grade-title",
                "Grade rules: {title}",
                "title",
                grade.sizes().get(0).drawing().title());
        String description = words.say(
                "grade-description",
                "How {corners} corners move over the sizes {sizes}, true to scale.",
                "corners",
                grade.rules().corners().size(),
                "sizes",
                sizes());
        return Sheets.scene(title, description, blocks, figures, Sheets.width(figures));
    }

    private String sizes() {
        return String.join(", ", grade.rules().sizes());
    }

    /** The rules that break or bend, or lack sizes; their numbers in the list count from 1. */
    private List<CornerRule> marked() {
        return grade.rules().corners().stream()
                .filter(rule -> rule.course() == Course.WITH_CHART
                        || rule.course() == Course.BENDS
                        || !rule.lacks().isEmpty())
                .toList();
    }

    private Block title() {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(
                Role.SHEET_TITLE,
                words.say(
                        "grade-title",
                        "Grade rules: {title}",
                        "title",
                        grade.sizes().get(0).drawing().title())));
        reasons().forEach(reason -> lines.add(new LabelLine(Role.WARNING, reason)));
        lines.add(new LabelLine(Role.LABEL, words.say("grade-sizes", "sizes {sizes}", "sizes", sizes())));
        lines.add(new LabelLine(
                Role.LABEL,
                words.say(
                        "grade-count",
                        "{all} corners: {constant} move alike from size to size, {chart} break with the chart, {bends} bend",
                        "all",
                        grade.rules().corners().size(),
                        "constant",
                        grade.rules().count(Course.CONSTANT),
                        "chart",
                        grade.rules().count(Course.WITH_CHART),
                        "bends",
                        grade.rules().count(Course.BENDS))));
        lines.add(new LabelLine(
                Role.SMALL_PRINT,
                words.fingerprint(grade.sizes().get(0).drawing().fingerprint())));
        return block("title-block", lines, 150, 1);
    }

    /** What is wrong, each reason once with the sizes that it holds for. */
    private List<String> reasons() {
        Map<Phrase, Set<String>> reasons = new LinkedHashMap<>();
        for (Grade.Sized size : grade.sizes()) {
            size.drawing().diagnostics().stream()
                    .filter(Diagnostic::isError)
                    .forEach(d -> reasons.computeIfAbsent(d.phrase(), p -> new LinkedHashSet<>())
                            .add(size.name()));
        }
        List<String> told = new ArrayList<>();
        reasons.forEach((reason, whose) -> {
            if (told.size() < MOST_REASONS) {
                told.add(words.notProved(words.say(
                        "size-reason",
                        "size {size}: {reason}",
                        "size",
                        String.join(", ", whose),
                        "reason",
                        words.say(reason))));
            }
        });
        if (reasons.size() > told.size()) {
            told.add(words.moreReasons(reasons.size() - told.size()));
        }
        return told;
    }

    private List<LineKey.Row> rows() {
        Set<Role> used = EnumSet.noneOf(Role.class);
        grade.rules().corners().forEach(rule -> used.add(GradeFigure.role(rule)));
        List<LineKey.Row> rows = new ArrayList<>();
        List<String> sizes = grade.rules().sizes();
        rows.add(new LineKey.Row(
                Role.GRADE_FIRST, words.say("grade-first", "stitching line, size {size}", "size", sizes.get(0))));
        if (sizes.size() > 1) {
            rows.add(new LineKey.Row(
                    Role.GRADE_LAST,
                    words.say("grade-last", "stitching line, size {size}", "size", sizes.get(sizes.size() - 1))));
            rows.add(new LineKey.Row(
                    Role.GRADE_TRAVEL, words.say("grade-travel", "way of a corner, a dot for each size")));
        }
        row(rows, used, Role.GRADE_EVEN, words.say("grade-even", "moves so from each size to the next"));
        row(rows, used, Role.GRADE_BREAKS, words.say("grade-breaks", "moves differ where the chart's steps do"));
        row(rows, used, Role.GRADE_BENDS, words.say("grade-bends", "moves differ though the chart's steps do not"));
        row(rows, used, Role.GRADE_STAYS, words.say("grade-stays", "stays in all sizes"));
        return rows;
    }

    private static void row(List<LineKey.Row> rows, Set<Role> used, Role role, String meaning) {
        if (used.contains(role)) {
            rows.add(new LineKey.Row(role, meaning));
        }
    }

    private List<LabelLine> notes() {
        return List.of(new LabelLine(
                Role.LABEL,
                words.say(
                        "grade-note",
                        "Drawn is the stitching line, true to scale. Arrows show which way a corner moves, all of one length;"
                                + " how far it moves from a size to the next stands beside it. Moves are counted from the cross"
                                + " of the piece.")));
    }

    private Block list(List<CornerRule> marked) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(
                Role.WARNING, words.say("grade-list", "Corners that do not move alike from size to size")));
        for (int i = 0; i < marked.size(); i++) {
            CornerRule rule = marked.get(i);
            lines.add(new LabelLine(
                    Role.LABEL,
                    words.say(
                            "grade-listed",
                            "({number}) {piece}, {corner} {rule}",
                            "number",
                            i + 1,
                            "piece",
                            Words.spoken(rule.piece()),
                            "corner",
                            Words.spoken(rule.corner()),
                            "rule",
                            words.say(GradeWords.rule(rule, grade.rules().sizes())))));
            if (!rule.lacks().isEmpty()) {
                lines.add(new LabelLine(
                        Role.LABEL,
                        words.say(
                                "grade-lacks",
                                "({number}) is not there in size {sizes}",
                                "number",
                                i + 1,
                                "sizes",
                                String.join(
                                        ", ",
                                        rule.lacks().stream()
                                                .map(lack ->
                                                        grade.rules().sizes().get(lack.size()))
                                                .toList()))));
            }
        }
        return block("rule-list", lines, LIST, marked.size() > LONG_LIST ? 2 : 1);
    }

    private Block block(String id, List<LabelLine> lines, double wrap, int columns) {
        TextBlock block = TextBlock.of(lines, wrap, columns, 1, options.styles());
        return new Block(ids.of(id), "words", "", block.width(), block.height(), block.placed(Point.ORIGIN, 0));
    }

    /** The first or the last size that has a piece. */
    static Piece piece(Grade grade, String name, boolean last) {
        return grade.sizes().stream()
                .flatMap(size -> size.drawing().pieces().stream())
                .filter(piece -> piece.name().equals(name))
                .reduce((a, b) -> last ? b : a)
                .orElseThrow();
    }
}
