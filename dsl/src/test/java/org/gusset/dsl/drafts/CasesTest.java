package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.draft.Drawing;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Way;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The case folder: every form of the language, each with its figure from school geometry in a check of the case itself. */
class CasesTest {
    private static final Path FOLDER =
            Path.of(System.getProperty("gusset.root", "..")).resolve("dsl/src/test/resources/cases");

    /** Those that stand for what could not be read, and texts, which no place takes as a value. */
    private static final Set<Class<?>> NOT_IN_CASES =
            Set.of(Statement.Broken.class, Expr.Broken.class, Expr.Text.class);

    static List<String> cases() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> String.valueOf(f.getFileName())).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Source source(String name) {
        try {
            return Source.of(name, Files.readString(FOLDER.resolve(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyCheckOfTheCaseHolds(String name) {
        var outcome = Gusset.compile(source(name), (file, asking) -> Sources.Answer.of(source(file)));
        assertThat(Drafts.codes(outcome.diagnostics())).isEmpty();
        Drawing drawing = Drafts.draw(outcome.value().orElseThrow(), Drafts.body("girth", 60));
        assertThat(drawing.diagnostics())
                .filteredOn(d -> d.severity() != Severity.NOTE)
                .isEmpty();
        assertThat(drawing.findings())
                .allSatisfy(f -> assertThat(f.verdict()).as(f.name()).isEqualTo(Finding.Verdict.PASSED));
        assertThat(drawing.refused()).isEmpty();
    }

    @Test
    void everyFormOfTheLanguageOccursInACase() {
        Set<Class<?>> found = new LinkedHashSet<>();
        cases().forEach(name -> collect(Parsing.parse(source(name)).value().orElseThrow(), found));
        List<Class<?>> forms = new ArrayList<>();
        for (Class<?> kind : List.of(
                Statement.class,
                Statement.RuleBody.class,
                Statement.Origin.class,
                Expr.class,
                Move.class,
                Way.class,
                PlaceOn.class,
                PlaceOn.From.class,
                Move.Side.class)) {
            forms(kind, forms);
        }
        assertThat(forms).hasSizeGreaterThan(80);
        forms.removeAll(NOT_IN_CASES);
        assertThat(found).containsAll(forms);
    }

    private static void forms(Class<?> kind, List<Class<?>> forms) {
        if (kind.isRecord()) {
            forms.add(kind);
        } else if (kind.isSealed()) {
            for (Class<?> permitted : kind.getPermittedSubclasses()) {
                forms(permitted, forms);
            }
        }
    }

    private static void collect(Object part, Set<Class<?>> found) {
        if (part instanceof Collection<?> parts) {
            parts.forEach(p -> collect(p, found));
        } else if (part instanceof Optional<?> maybe) {
            maybe.ifPresent(p -> collect(p, found));
        } else if (part instanceof Record) {
            found.add(part.getClass());
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                try {
                    collect(component.getAccessor().invoke(part), found);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
    }
}
