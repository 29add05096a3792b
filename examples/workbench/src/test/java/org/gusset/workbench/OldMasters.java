package org.gusset.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Source;

/** The drafts after books of 1911 to 1922, each with the row of practice measures that belongs to it, and what came of them in inches. */
final class OldMasters {
    static final Path FOLDER = Fitted.EXAMPLES.resolve("old-masters");
    static final double INCH = 25.4;

    private static final Map<String, String> PRACTICE = Map.of(
            "circle-skirt-1911", "Circle skirt 1911",
            "flounce-circular-1916", "Flounce 1916",
            "gored-skirt-five-1914", "Five gores 1914",
            "gored-skirt-nine-1911", "Nine gores 1911",
            "kimono-nightgown-1916", "Kimono 1916",
            "pleated-skirt-1922", "Pleats 1922",
            "sleeve-one-piece-1916", "Sleeve 1916",
            "standing-collar-1911", "Collar 1911",
            "turned-cuff-1918", "Cuff 1918",
            "underskirt-five-gores-1911", "Underskirt 1911");

    private OldMasters() {}

    static List<String> drafts() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> String.valueOf(f.getFileName()))
                    .filter(f -> f.endsWith(".gusset"))
                    .map(f -> f.replace(".gusset", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String file(String draft) {
        return FOLDER.resolve(draft + ".gusset").toString();
    }

    static String text(String draft) {
        try {
            return Files.readString(Path.of(file(draft)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Draft draft(String draft) {
        return compiled(draft, text(draft));
    }

    /** A draft whose text was altered. */
    static Draft compiled(String draft, String text) {
        Source source = Source.of(draft + ".gusset", text);
        return Bench.standard().compile(source, new FolderSources(source)).orThrow();
    }

    static String practice(String draft) {
        String body = PRACTICE.get(draft);
        if (body == null) {
            throw new AssertionError("no practice measures are named for " + draft);
        }
        return FOLDER.resolve("practice.csv") + "#" + body;
    }

    static Measurements body(String draft) {
        String[] parts = practice(draft).split("#", 2);
        return MeasureTable.read("practice", FileBytes.read(parts[0], "table"))
                .body(parts[1])
                .orElseThrow()
                .orThrow();
    }

    static Measurements inches(Measurements body, String measure, double inches) {
        return body.with(measure, Quantity.length(inches * INCH));
    }

    static Drawing drawing(String draft) {
        return draft(draft).evaluate(body(draft), Choices.none()).orThrow();
    }

    /**
     * What a drawing says of a figure, lengths in inches, angles in degrees: {@code name} or {@code Piece.name} for a value,
     * {@code length Piece.line}, {@code across Piece.point} and {@code down Piece.point} from the origin of its frame, {@code apart Piece.point point}.
     */
    static double figure(Drawing drawing, String asked) {
        String[] words = asked.split(" ");
        return switch (words[0]) {
            case "length" -> line(drawing, words[1]).length() / INCH;
            case "across" -> point(drawing, words[1]).x() / INCH;
            case "down" -> point(drawing, words[1]).y() / INCH;
            case "apart" -> {
                Point a = point(drawing, words[1]);
                Point b = point(drawing, words[1].replaceAll("\\..*", ".") + words[2]);
                yield Math.hypot(a.x() - b.x(), a.y() - b.y()) / INCH;
            }
            default -> value(drawing, asked);
        };
    }

    private static double value(Drawing drawing, String name) {
        int dot = name.indexOf('.');
        List<NamedValue> values =
                dot < 0 ? drawing.values() : piece(drawing, name).values();
        Quantity quantity = values.stream()
                .filter(v -> v.name().equals(name.substring(dot + 1)))
                .map(v -> ((NamedValue.Amount) v).quantity())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no value " + name));
        return quantity.equals(Quantity.length(quantity.value())) ? quantity.value() / INCH : quantity.value();
    }

    private static PieceValues piece(Drawing drawing, String name) {
        String piece = name.substring(0, name.indexOf('.'));
        return drawing.pieceValues().stream()
                .filter(p -> p.piece().equals(piece))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no piece " + piece));
    }

    private static PieceValues.NamedLine line(Drawing drawing, String name) {
        return piece(drawing, name).lines().stream()
                .filter(l -> name.endsWith("." + l.name()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + name));
    }

    private static Point point(Drawing drawing, String name) {
        return piece(drawing, name).points().stream()
                .filter(p -> name.endsWith("." + p.name()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no point " + name))
                .point();
    }
}
