package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.StyleTable;

/**
 * Lines of words broken to a width and set in columns, from (0, 0) to the right and down.
 *
 * @param lines the lines, each starting at a point on its baseline
 * @param width the width in mm that the words take up at the most
 * @param height the height in mm
 */
public record TextBlock(List<Ink.TextLine> lines, double width, double height) {
    private static final double COLUMN_GAP = 6;

    /** One broken line. */
    private record Row(Role role, String text, double size, double indent, double width) {
        double height() {
            return size * TextMeasure.LEADING;
        }
    }

    public TextBlock {
        lines = List.copyOf(lines);
    }

    /** Sets lines in one column, in the sizes of the style table. */
    public static TextBlock of(List<LabelLine> lines, double wrap, StyleTable styles) {
        return of(lines, wrap, 1, 1, styles);
    }

    /**
     * Sets lines in columns.
     *
     * @param wrap how wide a column may be in mm; one that holds shorter lines only comes out narrower
     * @param columns how many columns, at most
     * @param scale what the sizes of the style table are multiplied by
     */
    public static TextBlock of(List<LabelLine> lines, double wrap, int columns, double scale, StyleTable styles) {
        List<List<Row>> paragraphs = new ArrayList<>();
        for (LabelLine line : lines) {
            if (line.text().isBlank()) {
                continue;
            }
            Lettering lettering = styles.lettering(line.role());
            double size = lettering.size() * scale;
            double hang = line.role() == Role.TEST_WORDS ? 0 : size * 0.6;
            List<Row> rows = new ArrayList<>();
            for (String text : LineBreaks.broken(line.text(), wrap, hang, size, lettering.bold())) {
                double indent = rows.isEmpty() ? 0 : hang;
                double width = indent + TextMeasure.width(text, size, lettering.bold());
                rows.add(new Row(line.role(), text, size, indent, width));
            }
            paragraphs.add(rows);
        }
        return set(split(paragraphs, columns));
    }

    /** The lines with their corner at a point, turned about it by degrees anticlockwise as seen. */
    public List<Ink> placed(Point topLeft, double turn) {
        Vector along = Vector.atAngle(turn);
        Vector down = along.right();
        List<Ink> placed = new ArrayList<>();
        for (Ink.TextLine line : lines) {
            Point at = topLeft.plus(along.times(line.at().x()))
                    .plus(down.times(line.at().y()));
            placed.add(new Ink.TextLine(line.role(), at, line.anchor(), turn, line.size(), line.text()));
        }
        return placed;
    }

    private static TextBlock set(List<List<Row>> columns) {
        List<Ink.TextLine> lines = new ArrayList<>();
        double left = 0;
        double right = 0;
        double bottom = 0;
        for (List<Row> column : columns) {
            double y = 0;
            for (Row row : column) {
                Point at = new Point(left + row.indent(), y + row.size() * TextMeasure.ASCENT);
                lines.add(Ink.TextLine.upright(row.role(), at, row.size(), row.text()));
                right = Math.max(right, left + row.width());
                y += row.height();
            }
            left = right + COLUMN_GAP;
            bottom = Math.max(bottom, y);
        }
        return new TextBlock(lines, right, bottom);
    }

    /** Parts paragraphs into columns as level as they go, without changing their order or breaking one. */
    private static List<List<Row>> split(List<List<Row>> paragraphs, int columns) {
        double[] heights = paragraphs.stream().mapToDouble(TextBlock::height).toArray();
        double all = 0;
        for (double height : heights) {
            all += height;
        }
        double limit = all / columns;
        int[] starts = starts(heights, limit);
        while (starts.length > columns) {
            limit += 0.5;
            starts = starts(heights, limit);
        }
        List<List<Row>> split = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            int end = i + 1 < starts.length ? starts[i + 1] : heights.length;
            split.add(paragraphs.subList(starts[i], end).stream()
                    .flatMap(List::stream)
                    .toList());
        }
        return split;
    }

    /** The paragraphs with which columns begin that are filled up to a height, the first always. */
    private static int[] starts(double[] heights, double limit) {
        int[] starts = new int[Math.max(1, heights.length)];
        int count = 1;
        double filled = 0;
        for (int i = 0; i < heights.length; i++) {
            if (i > starts[count - 1] && filled + heights[i] > limit + 1e-9) {
                starts[count++] = i;
                filled = 0;
            }
            filled += heights[i];
        }
        return Arrays.copyOf(starts, count);
    }

    private static double height(List<Row> rows) {
        double height = 0;
        for (Row row : rows) {
            height += row.height();
        }
        return height;
    }
}
