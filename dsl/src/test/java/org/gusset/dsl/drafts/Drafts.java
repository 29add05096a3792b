package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.Piece;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;

/** Short cuts for tests that compile and evaluate drafts. */
final class Drafts {
    private Drafts() {}

    static Outcome<Draft> compile(String text) {
        return Gusset.compile(Source.of("test.gusset", text));
    }

    /** The draft of a text that must have no message at all. */
    static Draft sound(String text) {
        Outcome<Draft> outcome = compile(text);
        assertThat(outcome.diagnostics()).as("messages about the draft").isEmpty();
        return outcome.value().orElseThrow();
    }

    /** The draft of a shipped file. */
    static Draft shipped(String name) {
        Outcome<Draft> outcome = Gusset.compile(
                shippedText(name), (file, asking) -> Sources.Answer.of(shippedText(beside(asking.name(), file))));
        assertThat(outcome.diagnostics()).as("messages about " + name).isEmpty();
        return outcome.value().orElseThrow();
    }

    private static String beside(String name, String file) {
        return name.substring(0, name.lastIndexOf('/') + 1) + file;
    }

    static Source shippedText(String name) {
        Path file = folder().resolve(name);
        try {
            return Source.of(name, Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        return Path.of(System.getProperty("gusset.root", ".."), "examples", "drafts");
    }

    /** The names of all shipped drafts. */
    static List<String> allShipped() {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(f -> String.valueOf(f.getFileName()))
                    .filter(f -> f.endsWith(".gusset"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A body from names and centimetres in turn. */
    static Measurements body(Object... namesAndCentimetres) {
        Measurements body = Measurements.of("Test");
        for (int i = 0; i < namesAndCentimetres.length; i += 2) {
            double cm = ((Number) namesAndCentimetres[i + 1]).doubleValue();
            body = body.with((String) namesAndCentimetres[i], Quantity.of(cm, Unit.CM));
        }
        return body;
    }

    static Drawing draw(Draft draft, Measurements body) {
        return draft.evaluate(body, Choices.none()).value().orElseThrow();
    }

    /** The drawing of a sound text for a body that it fits: no error at all. */
    static Drawing drawn(String text, Object... namesAndCentimetres) {
        Drawing drawing = draw(sound(text), body(namesAndCentimetres));
        assertThat(drawing.diagnostics().stream().filter(Diagnostic::isError).toList())
                .as("errors of the drawing")
                .isEmpty();
        return drawing;
    }

    static List<String> codes(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(d -> d.code().id()).toList();
    }

    /** A named amount of the file, or of a piece as {@code Piece.name}, in mm, degrees or ones. */
    static double value(Drawing drawing, String name) {
        int dot = name.indexOf('.');
        List<NamedValue> values = dot < 0
                ? drawing.values()
                : piece(drawing, name.substring(0, dot)).values();
        String own = name.substring(dot + 1);
        return values.stream()
                .filter(v -> v.name().equals(own))
                .map(v -> ((NamedValue.Amount) v).quantity().value())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no value " + name));
    }

    static PieceValues piece(Drawing drawing, String name) {
        return drawing.pieceValues().stream()
                .filter(p -> p.piece().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no piece " + name));
    }

    static Point point(Drawing drawing, String name) {
        int dot = name.indexOf('.');
        return piece(drawing, name.substring(0, dot)).points().stream()
                .filter(p -> p.name().equals(name.substring(dot + 1)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no point " + name))
                .point();
    }

    static double length(Drawing drawing, String name) {
        int dot = name.indexOf('.');
        return piece(drawing, name.substring(0, dot)).lines().stream()
                .filter(p -> p.name().equals(name.substring(dot + 1)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + name))
                .length();
    }

    static Piece made(Drawing drawing, String name) {
        return drawing.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no piece " + name + " but " + drawing.refused()));
    }
}
