package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.OutputCode;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Bounds;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;

/**
 * Several sizes of one draft, to be drawn on one sheet: each piece once, its sizes laid on one another at their nesting points.
 * Sizes keep the order in which they are given.
 *
 * @param sizes the sizes, {@link #MOST} at most
 * @param line which line of each size is drawn
 */
public record Nest(List<Size> sizes, Line line) {
    /** As many sizes as can be told apart in black and white. */
    public static final int MOST = Role.SIZES;

    /** The most lines, marks and words of all sizes together: as many as one drawing may have. */
    private static final long MOST_DRAWN = Bounds.defaults().output();

    /** Names up to this long are written at the corners as they are; longer ones are numbered. */
    private static final int SHORT = 4;

    /** Which line of the pieces is drawn. */
    public enum Line {
        /** Where the cloth is cut, allowances within it. */
        CUTTING,
        /** Where the seams are sewn; allowances are added by hand. */
        STITCHING
    }

    /**
     * One size.
     *
     * @param mark what stands at its corners: its name if that is short, else its number
     * @param content what a sheet shows of it
     */
    public record Size(String mark, SheetContent content) {}

    /**
     * A piece in one of the sizes.
     *
     * @param number the size, counted from 0
     * @param piece the piece in its own frame
     * @param shift from its own frame to that of the nest, which is the frame of the largest size
     */
    public record SizedPiece(int number, Piece piece, Vector shift) {}

    public Nest {
        sizes = List.copyOf(sizes);
        objection(sizes.stream().map(Size::content).toList()).ifPresent(wrong -> {
            throw new IllegalArgumentException(wrong.message());
        });
        if (sizes.isEmpty() || sizes.size() > MOST) {
            throw new IllegalArgumentException("A nest has 1 to " + MOST + " sizes, not " + sizes.size() + ".");
        }
    }

    /**
     * Why contents cannot be laid on one another, though each can be drawn by itself: they hold too much together, which LIM305 tells.
     * Empty if they can.
     */
    public static Optional<Diagnostic> objection(List<SheetContent> contents) {
        long size = 0;
        for (SheetContent content : contents) {
            for (Piece piece : content.pieces()) {
                size += piece.size();
            }
        }
        return size <= MOST_DRAWN
                ? Optional.empty()
                : Optional.of(Diagnostic.of(
                                OutputCode.NEST_TOO_LARGE,
                                Place.nowhere(),
                                "count",
                                contents.size(),
                                "size",
                                Fact.number(size),
                                "most",
                                Fact.number(MOST_DRAWN))
                        .with(Hint.of("nest.fewer", "Nest fewer sizes, or draw each by itself.")));
    }

    /**
     * The nest of some drawings, at the cutting line.
     *
     * @throws IllegalArgumentException if there are no drawings, or more than {@link #MOST}, or if there is an {@link #objection}
     */
    public static Nest of(List<Drawing> drawings) {
        return ofContents(drawings.stream().map(SheetContent::of).toList(), Line.CUTTING, true);
    }

    /**
     * The nest of contents put together by hand.
     *
     * @param named false to number the sizes even if their names are short
     * @throws IllegalArgumentException if there are none, or more than {@link #MOST}, or if there is an {@link #objection}
     */
    public static Nest ofContents(List<SheetContent> contents, Line line, boolean named) {
        Set<String> names = new LinkedHashSet<>();
        contents.forEach(content -> names.add(content.body().strip()));
        boolean tellApart = named
                && names.size() == contents.size()
                && names.stream().allMatch(name -> !name.isEmpty() && name.length() <= SHORT);
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) {
            SheetContent content = contents.get(i);
            sizes.add(new Size(tellApart ? content.body().strip() : String.valueOf(i + 1), content));
        }
        return new Nest(sizes, line);
    }

    /** This nest with another line drawn. */
    public Nest withLine(Line newLine) {
        return new Nest(sizes, newLine);
    }

    /** The names of all pieces that some size has, in file order. */
    public List<String> pieces() {
        List<String> names = new ArrayList<>();
        for (Size size : sizes) {
            int at = 0;
            for (Piece piece : size.content().pieces()) {
                int known = names.indexOf(piece.name());
                if (known < 0) {
                    names.add(at, piece.name());
                    known = at;
                }
                at = known + 1;
            }
        }
        return names;
    }

    /** A piece in all sizes that have it; nothing if none has it. */
    public List<SizedPiece> sized(String name) {
        List<Optional<Piece>> found = sizes.stream()
                .map(size -> size.content().pieces().stream()
                        .filter(piece -> piece.name().equals(name))
                        .findFirst())
                .toList();
        Optional<Piece> largest =
                found.stream().flatMap(Optional::stream).reduce((a, b) -> b.area() > a.area() ? b : a);
        List<SizedPiece> sized = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).isPresent() && largest.isPresent()) {
                Piece piece = found.get(i).get();
                sized.add(new SizedPiece(i, piece, largest.get().nest().minus(piece.nest())));
            }
        }
        return sized;
    }
}
