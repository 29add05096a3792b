package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.style.StyleTable;

/** All joins of a piece that is spread over pages, lettered in reading order. */
final class Joins {
    /** Without I and O, which look like figures. */
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final Tiling tiling;
    private final List<Placed> placed = new ArrayList<>();

    /** The join of the page at a place with the one at its right or below it. */
    private record Placed(int row, int column, boolean right, Join join) {}

    private Joins(Tiling tiling) {
        this.tiling = tiling;
    }

    static Joins of(Item item, Tiling tiling) {
        Joins joins = new Joins(tiling);
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                joins.add(item, new Tile(item, tiling, row, column), true);
                joins.add(item, new Tile(item, tiling, row, column), false);
            }
        }
        return joins;
    }

    private void add(Item item, Tile tile, boolean right) {
        if (tiling.used(tile.row(), tile.column()) && tile.goesOn(right)) {
            Join join = Join.of(letter(placed.size()), tiling.cell(tile.row(), tile.column()), right, item.lines());
            placed.add(new Placed(tile.row(), tile.column(), right, join));
        }
    }

    /** A to Z, then AA, AB ... */
    static String letter(int number) {
        int count = LETTERS.length();
        String last = String.valueOf(LETTERS.charAt(number % count));
        return number < count ? last : letter(number / count - 1) + last;
    }

    /** The letters of the joins of a page, in order. */
    List<String> letters(int row, int column) {
        return placed.stream()
                .filter(p -> side(p, row, column).isPresent())
                .map(p -> p.join().letter())
                .toList();
    }

    /** The joins that a page shows. */
    List<Ink> ink(int row, int column, StyleTable styles) {
        List<Ink> ink = new ArrayList<>();
        for (Placed one : placed) {
            side(one, row, column).ifPresent(first -> ink.addAll(one.join().ink(first, tiling.overlap(), styles)));
        }
        return ink;
    }

    /** True if a page is the first of the two that are joined, false if the second; empty if it is neither. */
    private static Optional<Boolean> side(Placed join, int row, int column) {
        if (join.row() == row && join.column() == column) {
            return Optional.of(true);
        }
        boolean second = join.right()
                ? join.row() == row && join.column() + 1 == column
                : join.row() + 1 == row && join.column() == column;
        return second ? Optional.of(false) : Optional.empty();
    }
}
