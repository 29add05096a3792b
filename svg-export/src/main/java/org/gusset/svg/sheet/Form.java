package org.gusset.svg.sheet;

import java.util.Arrays;
import java.util.List;

/**
 * A page of words in tables, with blank boxes to write into where it asks for something: the content of a printed card or sheet,
 * before it is laid out or told as text.
 *
 * @param title the title
 * @param notes lines below it
 * @param sections the tables, in order
 * @param foot the last line; may be empty
 */
public record Form(String title, List<String> notes, List<Section> sections, String foot) {
    /**
     * A table.
     *
     * @param title its title
     * @param heads the heads of its columns; empty for a table without
     * @param rows the rows, each with as many cells as the others
     */
    public record Section(String title, List<String> heads, List<Row> rows) {
        public Section {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /** A row of cells. */
    public record Row(List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public static Row of(Cell... cells) {
            return new Row(List.of(cells));
        }

        /** A row of words alone. */
        public static Row of(String... words) {
            return new Row(
                    Arrays.stream(words).map(w -> (Cell) new Words(w, "")).toList());
        }
    }

    /** What stands in a cell. */
    public sealed interface Cell {}

    /**
     * Words.
     *
     * @param text the words
     * @param small what is said below them in smaller type; may be empty
     */
    public record Words(String text, String small) implements Cell {}

    /**
     * A box to write into.
     *
     * @param width its least width in mm
     * @param height its least height in mm
     */
    public record Blank(double width, double height) implements Cell {}

    public Form {
        notes = List.copyOf(notes);
        sections = List.copyOf(sections);
    }
}
