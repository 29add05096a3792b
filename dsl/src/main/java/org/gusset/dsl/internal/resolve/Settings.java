package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.InRange;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Statement;

/** What a draft sets the choices of the files that it uses to: {@code use "block.gusset" as block with ease = 6 cm}. */
final class Settings {
    private final Expressions expressions;
    private final Messages messages;
    private final Set<Symbol> uses;

    /** @param uses gathers the symbols that the checks need */
    Settings(Expressions expressions, Messages messages, Set<Symbol> uses) {
        this.expressions = expressions;
        this.messages = messages;
        this.uses = uses;
    }

    /** A choice of words: what it is set to, or else the file's own. */
    Term word(Symbol choice, Type.Word type, Term own) {
        Home.Setting setting = choice.home().settings().get(choice.name());
        if (setting == null) {
            return own;
        }
        Term word = expressions.conditions().word(setting.value(), type, choice.name(), at(setting, choice));
        boolean fits = word.type() instanceof Type.Word given && type.options().containsAll(given.options());
        return fits || word.broken() ? word : unlike(word, type);
    }

    private Term unlike(Term given, Type wanted) {
        messages.tell(
                ResolveCode.WRONG_KIND,
                given.span(),
                "what",
                "What the choice is set to",
                "wanted",
                wanted.words(),
                "given",
                given.type().words());
        return new Term.Broken(given.span());
    }

    /** An amount or a yes or no: what it is set to, or else the file's own. */
    Term value(Symbol choice, Term own) {
        Home.Setting setting = choice.home().settings().get(choice.name());
        return setting == null || own.broken()
                ? own
                : expressions.wanted(
                        setting.value(), own.type(), at(setting, choice), "The choice `" + choice.name() + "`");
    }

    private static Context at(Home.Setting setting, Symbol choice) {
        return new Context(setting.home().scope(), choice.uses(), -1);
    }

    /** The checks that what is set lies in the choices' ranges; what is set and is no choice is told. */
    List<CheckedDraft.Check> checks(Home home) {
        List<CheckedDraft.Check> checks = new ArrayList<>();
        for (Map.Entry<String, Home.Setting> entry : home.settings().entrySet()) {
            Symbol choice = home.scope().own(entry.getKey());
            if (choice != null && choice.statement() instanceof Statement.Choose choose) {
                range(choice, choose, entry.getValue()).ifPresent(checks::add);
            } else if (!Lookup.isBroken(entry.getKey(), home)) {
                noChoice(home, entry.getValue());
            }
        }
        return checks;
    }

    private void noChoice(Home home, Home.Setting setting) {
        List<String> choices = home.scope().symbols().stream()
                .filter(s -> s.role() == Symbol.Role.CHOICE)
                .map(Symbol::name)
                .toList();
        Span span = setting.name().span();
        String name = setting.name().text();
        Diagnostic none = Diagnostic.of(
                ResolveCode.NO_SUCH_SETTING,
                span,
                "name",
                name,
                "file",
                home.tree().source());
        messages.tell(Names.suggesting(none, name, choices, span));
    }

    private Optional<CheckedDraft.Check> range(Symbol choice, Statement.Choose choose, Home.Setting setting) {
        if (choose.range().isEmpty() || !choice.type().amount()) {
            return Optional.empty();
        }
        Span span = setting.value().span();
        Context at = new Context(choice.scope(), uses, -1);
        Inputs in = new Inputs(expressions.use(choice, span, at));
        Type type = choice.type();
        Formula low = in.formula(
                expressions.wanted(choose.range().get().low(), type, at, "The least of `" + choice.name() + "`"));
        Formula high = in.formula(
                expressions.wanted(choose.range().get().high(), type, at, "The most of `" + choice.name() + "`"));
        InRange check =
                new InRange(choice.fullName(), false, "", type.dimension(), Optional.of(low), Optional.of(high), span);
        Term made = expressions.made(check, in, Type.TRUTH, span);
        return made.broken() ? Optional.empty() : Optional.of(new CheckedDraft.Check(choice.fullName(), made, span));
    }
}
