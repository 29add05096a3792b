package org.gusset.workbench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.jspecify.annotations.Nullable;

/** The pages of a PDF file joined as a person joins them: by their crosses and letters alone, read from the file. */
final class Assembled {
    /** The arms of a cross are 8 mm long. */
    private static final double ARMS = 8;

    private static final double NEAR = 0.01;
    private static final Pattern TILE = Pattern.compile("(\\S.*), row (\\d+) of \\d+, column (\\d+) of");
    private static final Pattern LETTER = Pattern.compile("[A-Z]{1,2}");

    private Assembled() {}

    /** A join cross and the letters beside it. */
    record Cross(Point at, List<String> letters) {}

    /** A page and how far it is moved to lie beside the first page of its piece. */
    record Laid(PdfReading.Sheet sheet, Vector by) {}

    /** The crosses of a page: an upright and a level stroke of 8 mm through one point. */
    static List<Cross> crosses(PdfReading.Sheet sheet) {
        List<Box> strokes = sheet.lines().stream()
                .filter(line -> line.dash() == 0 && Math.abs(line.length() - ARMS) < NEAR)
                .map(PdfReading.Line::bounds)
                .toList();
        List<Cross> crosses = new ArrayList<>();
        for (Box level : strokes) {
            for (Box upright : strokes) {
                Point at = middle(level);
                if (level.height() < NEAR
                        && upright.width() < NEAR
                        && middle(upright).distance(at) < NEAR) {
                    crosses.add(new Cross(at, letters(sheet, at)));
                }
            }
        }
        return crosses;
    }

    private static List<String> letters(PdfReading.Sheet sheet, Point cross) {
        return sheet.words().stream()
                .filter(word -> LETTER.matcher(word.text().strip()).matches()
                        && word.at().distance(cross) < 6.5)
                .map(word -> word.text().strip())
                .toList();
    }

    private static Point middle(Box box) {
        return new Point((box.left() + box.right()) / 2, (box.top() + box.bottom()) / 2);
    }

    /** The pages of each piece that is spread over several, in the order of the file. */
    static Map<String, List<PdfReading.Sheet>> tiles(List<PdfReading.Sheet> sheets) {
        Map<String, List<PdfReading.Sheet>> tiles = new LinkedHashMap<>();
        for (PdfReading.Sheet sheet : sheets) {
            Matcher tile = TILE.matcher(sheet.text());
            if (tile.find()) {
                tiles.computeIfAbsent(tile.group(1), name -> new ArrayList<>()).add(sheet);
            }
        }
        return tiles;
    }

    /** All pages of a piece, laid cross on cross from the first page on. */
    static List<Laid> joined(List<PdfReading.Sheet> tiles) {
        List<Laid> laid = new ArrayList<>();
        List<PdfReading.Sheet> open = new ArrayList<>(tiles);
        Deque<Laid> next = new ArrayDeque<>();
        next.add(new Laid(open.remove(0), new Vector(0, 0)));
        while (!next.isEmpty()) {
            Laid page = next.remove();
            laid.add(page);
            for (PdfReading.Sheet other : List.copyOf(open)) {
                Vector apart = apart(page.sheet(), other);
                if (apart != null) {
                    open.remove(other);
                    next.add(new Laid(other, page.by().plus(apart)));
                }
            }
        }
        if (!open.isEmpty()) {
            throw new AssertionError(open.size() + " pages share no letter with the others");
        }
        return laid;
    }

    /** How the second page is moved onto the first, null if they share no letter; all their crosses must agree. */
    private static @Nullable Vector apart(PdfReading.Sheet a, PdfReading.Sheet b) {
        Map<String, List<Point>> first = byLetter(a);
        Map<String, List<Point>> second = byLetter(b);
        for (Map.Entry<String, List<Point>> entry : first.entrySet()) {
            List<Point> others = second.get(entry.getKey());
            if (others != null) {
                if (others.size() != entry.getValue().size()) {
                    throw new AssertionError("a cross of the letter " + entry.getKey() + " is on one page only");
                }
                Vector apart = entry.getValue().get(0).minus(others.get(0));
                for (int i = 0; i < others.size(); i++) {
                    if (entry.getValue().get(i).distance(others.get(i).plus(apart)) > 0.1) {
                        throw new AssertionError("the crosses of the letter " + entry.getKey() + " do not meet");
                    }
                }
                return apart;
            }
        }
        return null;
    }

    private static Map<String, List<Point>> byLetter(PdfReading.Sheet sheet) {
        Map<String, List<Point>> byLetter = new TreeMap<>();
        for (Cross cross : crosses(sheet)) {
            byLetter.computeIfAbsent(cross.letters().get(0), letter -> new ArrayList<>())
                    .add(cross.at());
        }
        return byLetter;
    }
}
