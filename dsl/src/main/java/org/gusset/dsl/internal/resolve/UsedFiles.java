package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Statement;

/** Finds the files that a draft uses, and those that they use. */
final class UsedFiles {
    private final Loader loader;
    private final Messages messages;
    private final List<Step> chain = new ArrayList<>();
    private final int most;
    private final int characters;
    private int count;
    private boolean tooMany;

    /** A file on the way from the first to the one that is read, and the statement that asked for it. */
    private record Step(String source, Optional<Statement.Use> use) {}

    /** @param budget how many files a draft may use, each counted as often as it is used, and of how many characters */
    UsedFiles(Loader loader, Messages messages, Budget budget) {
        this.most = budget.files();
        this.characters = budget.characters();
        this.loader = loader;
        this.messages = messages;
    }

    /** The first file with all that it uses. */
    Home read(DraftTree tree, Source source) {
        chain.add(new Step(source.name(), Optional.empty()));
        return read("", tree, source);
    }

    private Home read(String prefix, DraftTree tree, Source source) {
        messages.add(source);
        Home home = new Home(prefix, tree);
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Use use
                    && !home.used().containsKey(use.alias().text())) {
                use(use, home, source);
            }
        }
        return home;
    }

    private void use(Statement.Use use, Home home, Source asking) {
        String file = use.file().plain();
        if (count >= most) {
            if (!tooMany) {
                tooMany = true;
                messages.tell(Diagnostic.of(ResolveCode.TOO_MANY_FILES, use.span(), "most", Fact.number(most))
                        .with(Hint.of(
                                "use.fewer", "Let files use fewer others, or put what they share into one of them.")));
            }
            lost(use, home);
            return;
        }
        count++;
        Loader.Answer answer = loader.find(file, asking);
        if (answer.tooLong()) {
            messages.tell(told(
                    Diagnostic.of(ResolveCode.FILES_TOO_LONG, use.file().span(), "most", Fact.number(characters))));
            lost(use, home);
            return;
        }
        if (answer.loaded().isEmpty()) {
            messages.tell(told(
                    Diagnostic.of(ResolveCode.NO_SUCH_FILE, use.file().span(), "file", file, "why", answer.why())));
            lost(use, home);
            return;
        }
        Loader.Loaded loaded = answer.loaded().get();
        String name = loaded.source().name();
        if (chain.stream().anyMatch(step -> step.source().equals(name))) {
            String round = chain.stream().map(Step::source).collect(Collectors.joining(" uses "));
            messages.tell(Diagnostic.of(
                    ResolveCode.CIRCLE, use.file().span(), "name", file, "chain", round + " uses " + name));
            lost(use, home);
            return;
        }
        chain.add(new Step(name, Optional.of(use)));
        Home used = read(home.prefix() + use.alias().text() + ".", loaded.tree(), loaded.source());
        use.with().forEach(s -> used.settings().put(s.name().text(), new Home.Setting(s.name(), s.value(), home)));
        home.used().put(use.alias().text(), used);
        chain.remove(chain.size() - 1);
    }

    /** What a file that is not there would have defined stays quiet. */
    private static void lost(Statement.Use use, Home home) {
        home.broken().add(use.alias().text());
    }

    /** With the way from the first file to this one. */
    private Diagnostic told(Diagnostic diagnostic) {
        Diagnostic chained = diagnostic;
        for (Step step : chain) {
            if (step.use().isPresent()) {
                chained = chained.with(new Related(
                        Phrase.of("use.chain", "`{file}` is used here.", "file", step.source()),
                        step.use().get().span()));
            }
        }
        return chained;
    }
}
