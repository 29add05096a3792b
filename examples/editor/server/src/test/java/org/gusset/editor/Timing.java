package org.gusset.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokensParams;

/** Prints how long answers about a draft of 5,000 lines take. Times are told and never tested. */
final class Timing {
    private static final int LINES = 5000;
    private static final int ROUNDS = 15;

    private Timing() {}

    /** Pieces of a coat of many panels, until there are so many lines. */
    static String draft(int lines) {
        StringBuilder text = new StringBuilder("draft \"Coat of many panels\"\n");
        text.append("measure chest from 60 cm to 170 cm \"round the fullest part of the chest\"\n");
        int count = 2;
        for (int piece = 1; count < lines; piece++) {
            text.append("let share_")
                    .append(piece)
                    .append(" = chest / ")
                    .append(piece + 3)
                    .append('\n');
            text.append("piece Panel").append(piece).append(" {\n  point p0 = origin\n");
            int points = 40;
            for (int i = 1; i <= points; i++) {
                text.append("  point p")
                        .append(i)
                        .append(" = p")
                        .append(i - 1)
                        .append(i % 2 == 0 ? " down 1 cm" : " right share_" + piece + " / 40")
                        .append('\n');
            }
            text.append("  point foot = p0 down to p").append(points).append('\n');
            text.append("  line step_edge = p0");
            for (int i = 1; i <= points; i++) {
                text.append(" to p").append(i);
            }
            text.append("\n  line hem = p").append(points).append(" to foot\n  line back = foot to p0\n");
            text.append("  outline step_edge, hem, back\n  allow 1 cm\n  cut 1\n  grain along back\n}\n");
            count += points + 11;
        }
        return text.toString();
    }

    /** Prints the times. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("timing");
        Files.writeString(folder.resolve("cast.csv"), "measure, Ottilie Fenn\nchest, 96 cm\n");
        String text = draft(LINES);
        System.out.println(text.lines().count() + " lines, " + text.length() + " characters");
        try (Editor editor = new Editor(folder, Map.of("measures", "cast.csv", "delay", 0))) {
            long open = System.nanoTime();
            editor.open("coat.gusset", text);
            int messages = editor.messages("coat.gusset").size();
            print("opened, cold, until its " + messages + " messages", List.of(System.nanoTime() - open));
            int at = text.indexOf("point p20") + 6;
            Position place = Editor.position(text, at);
            Position said = Editor.position(text, text.indexOf("point p20 = ") + "point p20 = ".length());
            Range screen = new Range(place, new Position(place.getLine() + 60, 0));
            List<Long> told = new ArrayList<>();
            List<Long> hoverAnew = new ArrayList<>();
            List<Long> hover = new ArrayList<>();
            List<Long> complete = new ArrayList<>();
            List<Long> colours = new ArrayList<>();
            List<Long> values = new ArrayList<>();
            List<Long> rename = new ArrayList<>();
            var server = editor.remote().getTextDocumentService();
            for (int i = 0; i < ROUNDS; i++) {
                long start = System.nanoTime();
                editor.type("coat.gusset", text.length(), text.length(), "#");
                hoverAnew.add(time(() -> Editor.get(server.hover(new HoverParams(editor.id("coat.gusset"), place)))));
                editor.messages("coat.gusset");
                told.add(System.nanoTime() - start);
                hover.add(time(() -> Editor.get(server.hover(new HoverParams(editor.id("coat.gusset"), place)))));
                complete.add(time(
                        () -> Editor.get(server.completion(new CompletionParams(editor.id("coat.gusset"), said)))));
                colours.add(time(() ->
                        Editor.get(server.semanticTokensFull(new SemanticTokensParams(editor.id("coat.gusset"))))));
                values.add(time(
                        () -> Editor.get(server.inlayHint(new InlayHintParams(editor.id("coat.gusset"), screen)))));
                rename.add(time(() ->
                        Editor.get(server.rename(new RenameParams(editor.id("coat.gusset"), place, "knee_point")))));
            }
            print("a key, until the messages are told", told);
            print("hover right after a key", hoverAnew);
            print("hover", hover);
            print("completion", complete);
            print("colours of all names", colours);
            print("values on a screen", values);
            print("rename", rename);
        }
    }

    private static long time(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return System.nanoTime() - start;
    }

    private static void print(String what, List<Long> nanos) {
        List<Long> sorted = new ArrayList<>(nanos);
        Collections.sort(sorted);
        System.out.printf(
                "%-45s median %.1f ms, best %.1f, worst %.1f%n",
                what, sorted.get(sorted.size() / 2) / 1e6, sorted.get(0) / 1e6, sorted.get(sorted.size() - 1) / 1e6);
    }
}
