package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Given;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;

/** Checks the statements at file level: measures, choices, cloths, and all that belongs to the draft as a whole. */
final class FileStatements {
    private final Resolver resolver;
    private final Expressions expressions;
    private final Messages messages;
    private final Settings settings;

    /** What the checks of the first file need. */
    private final Set<Symbol> uses = new LinkedHashSet<>();

    /** What the ranges of measures need, which counts only if the measure is needed. */
    private final Map<Symbol, Set<Symbol>> ranges = new LinkedHashMap<>();

    private final Map<Symbol, Draft.Option.Kind> kinds = new LinkedHashMap<>();

    private final int mostChecks;

    FileStatements(Resolver resolver, Expressions expressions, Messages messages, int mostChecks) {
        this.mostChecks = mostChecks;
        this.resolver = resolver;
        this.expressions = expressions;
        this.messages = messages;
        this.settings = new Settings(expressions, messages, uses);
    }

    void define(Symbol symbol, Statement statement, Context at) {
        if (statement instanceof Statement.Measure measure) {
            measure(symbol, measure, at);
        } else if (statement instanceof Statement.Choose choose) {
            choose(symbol, choose, at);
        } else if (statement instanceof Statement.Fit fit) {
            Term value = withRange(fit.value(), fit.range(), at, "A fitting correction");
            kinds.put(symbol, Draft.Option.Kind.AMOUNT);
            given(symbol, value, Double.class);
        } else if (statement instanceof Statement.Cloth cloth) {
            symbol.define(Type.CLOTH, expressions.length(cloth.wide(), at, "The width of a cloth"));
        } else {
            symbol.define(symbol.type(), null);
        }
    }

    private void measure(Symbol symbol, Statement.Measure measure, Context at) {
        Type type = Type.LENGTH;
        if (measure.range().isPresent()) {
            // The range is read again for its check; here it only tells lengths from angles.
            messages.quiet();
            Term low = expressions.term(measure.range().get().low(), throwaway(at.home()));
            messages.loud();
            type = low.type().equals(Type.ANGLE) ? Type.ANGLE : Type.LENGTH;
        }
        Inputs in = new Inputs();
        if (measure.otherwise().isPresent()) {
            Term rule = expressions.wanted(
                    measure.otherwise().get(), type, at, "The rule for a missing `" + symbol.name() + "`");
            in.add(rule);
        }
        Given.Measure given = new Given.Measure(
                symbol.name(),
                measure.howTo().map(Words::plain).orElse(""),
                measure.otherwise().isPresent());
        symbol.define(
                type,
                in.broken()
                        ? new Term.Broken(measure.span())
                        : new Term.Made(
                                given, in.terms(), type, "", measure.name().span()));
    }

    /** What the checks of the first file need. */
    Set<Symbol> uses() {
        return uses;
    }

    /** What the range of a measure needs. */
    Set<Symbol> rangeUses(Symbol measure) {
        return ranges.getOrDefault(measure, Set.of());
    }

    /** Where the checks of the first file stand. */
    private Context checking() {
        return new Context(resolver.first().scope(), uses, -1);
    }

    private static Context throwaway(Home home) {
        return new Context(home.scope(), new LinkedHashSet<>(), -1);
    }

    private void choose(Symbol symbol, Statement.Choose choose, Context at) {
        if (!choose.options().isEmpty()) {
            List<String> options = choose.options().stream().map(Name::text).toList();
            Type.Word type = new Type.Word(options);
            String value = choose.value() instanceof Expr.Reference reference ? reference.text() : "";
            kinds.put(symbol, Draft.Option.Kind.WORD);
            if (!options.contains(value) && !(choose.value() instanceof Expr.Broken)) {
                Diagnostic unknown = Diagnostic.of(
                        ResolveCode.NO_SUCH_WORD,
                        choose.value().span(),
                        "word",
                        messages.text(choose.value().span()),
                        "choice",
                        symbol.name(),
                        "words",
                        String.join(", ", options));
                messages.tell(
                        Names.suggesting(unknown, value, options, choose.value().span()));
                symbol.define(type, new Term.Broken(choose.value().span()));
                return;
            }
            Term word = new Term.Word(value, type, choose.value().span());
            symbol.define(
                    type,
                    lent(symbol)
                            ? settings.word(symbol, type, word)
                            : new Term.Made(new Given.Choice<>(String.class), List.of(word), type, "", choose.span()));
            return;
        }
        Term value = withRange(choose.value(), choose.range(), at, "The choice `" + symbol.name() + "`");
        if (lent(symbol) && (value.type().equals(Type.TRUTH) || value.type().amount())) {
            symbol.define(value.type(), settings.value(symbol, value));
        } else if (value.type().equals(Type.TRUTH)) {
            kinds.put(symbol, Draft.Option.Kind.ANSWER);
            given(symbol, value, Boolean.class);
        } else if (value.type().amount()) {
            kinds.put(symbol, Draft.Option.Kind.AMOUNT);
            given(symbol, value, Double.class);
        } else {
            if (!value.broken()) {
                messages.tell(
                        ResolveCode.WRONG_KIND,
                        value.span(),
                        "what",
                        "A choice",
                        "wanted",
                        "an amount, yes or no, or one `out of` several words",
                        "given",
                        value.type().words());
            }
            kinds.put(symbol, Draft.Option.Kind.AMOUNT);
            symbol.define(Type.BROKEN, null);
        }
    }

    /** True for what a file that is used defines: the file that uses it chooses, not the host. */
    private static boolean lent(Symbol symbol) {
        return !symbol.home().prefix().isEmpty();
    }

    /** A default value; a bare number is told of here if the range shows that a unit was forgotten. */
    private Term withRange(Expr expr, Optional<Statement.Range> range, Context at, String what) {
        Term value = expressions.term(expr, at);
        if (range.isEmpty() || !value.type().equals(Type.NUMBER) || !(value instanceof Term.Constant)) {
            return value;
        }
        messages.quiet();
        Type wanted = expressions.term(range.get().low(), throwaway(at.home())).type();
        messages.loud();
        return wanted.equals(Type.LENGTH) || wanted.equals(Type.ANGLE)
                ? expressions.wanted(expr, wanted, at, what)
                : value;
    }

    private static <T> void given(Symbol symbol, Term value, Class<T> type) {
        symbol.define(
                value.type(),
                value.broken()
                        ? value
                        : new Term.Made(new Given.Choice<>(type), List.of(value), value.type(), "", symbol.span()));
    }

    CheckedDraft draft(Home first, List<CheckedDraft.Piece> pieces, List<CheckedDraft.Piece> lent) {
        DraftTree tree = first.tree();
        SeamStatements seams = new SeamStatements(expressions, resolver, messages, checking());
        CheckStatements stated = new CheckStatements(expressions, seams, messages, checking());
        String title = "";
        String note = "";
        List<CheckedDraft.Measure> measures = new ArrayList<>();
        List<CheckedDraft.Option> options = new ArrayList<>();
        List<Symbol> values = new ArrayList<>();
        List<CheckedDraft.Cloth> cloths = new ArrayList<>();
        List<CheckedDraft.Check> checks = new ArrayList<>();
        boolean titled = false;
        for (Statement statement : tree.statements()) {
            Optional<Symbol> symbol = symbol(statement, first);
            if (statement instanceof Statement.Draft draft) {
                if (titled) {
                    messages.tell(ResolveCode.SAID_TWICE, draft.span(), "piece", "The file", "what", "its title");
                }
                titled = true;
                title = draft.title().plain();
                note = draft.note().map(Words::plain).orElse("");
            } else if (statement instanceof Statement.Choose choose && symbol.isPresent()) {
                options.add(option(symbol.get(), choose.range(), choose.note()));
            } else if ((statement instanceof Statement.Let || statement instanceof Statement.Unknown)
                    && symbol.isPresent()) {
                values.add(symbol.get());
            } else if (!ofTheBodyOrCloth(statement, symbol, measures, options, cloths)) {
                stated.check(statement).ifPresent(checks::add);
            }
        }
        List<Home> homes = first.all();
        for (Home home : homes.subList(1, homes.size())) {
            for (Statement statement : home.tree().statements()) {
                if (!(statement instanceof Statement.Cloth cloth) || isCut(cloth, first)) {
                    ofTheBodyOrCloth(statement, symbol(statement, home), measures, options, cloths);
                }
            }
            checks.addAll(settings.checks(home));
        }
        checks.addAll(new PartSeams(seams).checks(first));
        if (checks.size() > mostChecks) {
            messages.tell(Diagnostic.of(
                            ResolveCode.TOO_MANY_CHECKS, checks.get(mostChecks).span(), "most", Fact.number(mostChecks))
                    .with(Hint.of("checks.fewer", "Make several drafts of it.")));
            checks.subList(mostChecks, checks.size()).clear();
        }
        if (!titled && !tree.statements().isEmpty()) {
            Span span = tree.statements().get(0).span();
            messages.tell(ResolveCode.NO_TITLE, span);
        }
        return new CheckedDraft(title, note, List.of(), measures, options, values, cloths, pieces, lent, checks);
    }

    /** True if a piece of the first file is cut from a cloth. */
    private static boolean isCut(Statement.Cloth cloth, Home first) {
        return first.bodies().values().stream()
                .flatMap(body -> body.entries().stream())
                .anyMatch(e -> e.statement() instanceof Statement.Cut cut
                        && cut.cloth()
                                .filter(c -> c.text().equals(cloth.name().text()))
                                .isPresent());
    }

    /** What a statement defines, if it was the first to define it. */
    private static Optional<Symbol> symbol(Statement statement, Home home) {
        return Definitions.name(statement)
                .flatMap(name -> Optional.ofNullable(home.scope().own(name.text())))
                .filter(s -> s.statement() == statement);
    }

    /** Takes a statement that counts also in a file that is used; false if it is none. */
    private boolean ofTheBodyOrCloth(
            Statement statement,
            Optional<Symbol> symbol,
            List<CheckedDraft.Measure> measures,
            List<CheckedDraft.Option> options,
            List<CheckedDraft.Cloth> cloths) {
        if (statement instanceof Statement.Measure measure) {
            symbol.ifPresent(s -> measures.add(checked(s, measure)));
        } else if (statement instanceof Statement.Fit fit) {
            symbol.ifPresent(s -> options.add(option(s, fit.range(), fit.note())));
        } else if (statement instanceof Statement.Cloth cloth) {
            boolean known = symbol.isEmpty()
                    || cloths.stream()
                            .anyMatch(c -> c.symbol().name().equals(symbol.get().name()));
            if (!known) {
                Context at = new Context(symbol.get().scope(), uses, -1);
                Optional<Term> length = cloth.length().map(l -> expressions.length(l, at, "The length of a cloth"));
                cloths.add(new CheckedDraft.Cloth(
                        symbol.get(),
                        length,
                        new ClothStatements(expressions, messages, at).ways(cloth),
                        cloth.note().map(Words::plain)));
            }
        } else {
            return false;
        }
        return true;
    }

    private CheckedDraft.Measure checked(Symbol symbol, Statement.Measure measure) {
        String howTo = measure.howTo().map(Words::plain).orElse("");
        List<SharedRanges.Told> told = new ArrayList<>();
        measure.range().ifPresent(r -> told.add(new SharedRanges.Told(r, symbol.home(), symbol.span())));
        for (Declarations.Shared other : resolver.declarations().shared(symbol)) {
            Statement.Measure also = (Statement.Measure) other.statement();
            also.range()
                    .ifPresent(r -> told.add(
                            new SharedRanges.Told(r, other.home(), also.name().span())));
        }
        Optional<Term> range = new SharedRanges(
                        expressions, messages, ranges.computeIfAbsent(symbol, k -> new LinkedHashSet<>()))
                .check(symbol, told, true, howTo);
        return new CheckedDraft.Measure(
                symbol, measure.also(), howTo, measure.otherwise().isPresent(), range);
    }

    private CheckedDraft.Option option(Symbol symbol, Optional<Statement.Range> range, Optional<Words> note) {
        List<String> words = symbol.type() instanceof Type.Word word ? word.options() : List.of();
        List<SharedRanges.Told> told = new ArrayList<>();
        range.ifPresent(r -> told.add(new SharedRanges.Told(r, symbol.home(), symbol.span())));
        return new CheckedDraft.Option(
                symbol,
                kinds.getOrDefault(symbol, Draft.Option.Kind.AMOUNT),
                words,
                note.map(Words::plain).orElse(""),
                new SharedRanges(expressions, messages, uses).check(symbol, told, false, ""));
    }
}
