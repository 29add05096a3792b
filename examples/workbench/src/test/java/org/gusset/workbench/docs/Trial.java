package org.gusset.workbench.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.grade.Grade;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.workbench.MeasureTable;

/** A draft tried on every body of a table with some choices, and every message that came of it. */
record Trial(String text, List<Diagnostic> diagnostics, Optional<Drawing> drawing) {
    /** A piece that a page is still drawing has no outline yet. */
    static final String UNFINISHED = "KND010";

    private static final Pattern SETTING = Pattern.compile("--set\\s+(\\w+)=('([^']*)'|\\S+)");

    static Trial of(String text, MeasureTable bodies, Choices choices) {
        Outcome<Draft> draft = Gusset.compile(Source.of("snippet.gusset", text), Trial::shipped);
        List<Diagnostic> all = new ArrayList<>(draft.diagnostics());
        all.addAll(bodies.diagnostics());
        Optional<Drawing> drawing = Optional.empty();
        List<Drawing> sizes = new ArrayList<>();
        for (String name : bodies.names()) {
            Outcome<Measurements> body = bodies.body(name).orElseThrow();
            all.addAll(body.diagnostics());
            boolean drawable = draft.diagnostics().stream()
                    .allMatch(d -> !d.isError() || d.code().id().equals(UNFINISHED));
            if (drawable && body.value().isPresent()) {
                Outcome<Drawing> drawn =
                        draft.value().orElseThrow().evaluate(body.value().get(), choices);
                all.addAll(drawn.diagnostics());
                drawing = drawn.value();
                drawn.value().ifPresent(sizes::add);
            }
        }
        if (sizes.size() > 1) {
            Grade.over(sizes).value().ifPresent(grade -> all.addAll(grade.diagnostics()));
        }
        return new Trial(text, all, drawing);
    }

    /** The shipped drafts, which snippets may use. */
    private static Sources.Answer shipped(String file, Source asking) {
        Path path = Page.root().resolve("examples/drafts").resolve(file);
        try {
            return Files.isRegularFile(path)
                    ? Sources.Answer.of(Source.of(file, Files.readString(path)))
                    : Sources.Answer.none("there is no such file in the folder of this draft");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The choices that {@code --set name=value} in a command line make; an unreadable value is told in {@code messages}. */
    static Choices choices(String command, List<Diagnostic> messages) {
        Choices choices = Choices.none();
        Matcher matcher = SETTING.matcher(command);
        while (matcher.find()) {
            String value = matcher.group(3) == null ? matcher.group(2) : matcher.group(3);
            Outcome<Choice> choice = Choice.parse(value);
            messages.addAll(choice.diagnostics());
            if (choice.value().isPresent()) {
                choices = choices.with(matcher.group(1), choice.value().get());
            }
        }
        return choices;
    }

    List<String> codes() {
        return diagnostics.stream().map(d -> d.code().id()).toList();
    }

    List<Diagnostic> errors() {
        return diagnostics.stream().filter(Diagnostic::isError).toList();
    }
}
