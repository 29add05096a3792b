package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.check.EaseBand;
import org.gusset.core.check.InRange;
import org.gusset.core.check.Passage;
import org.gusset.core.check.Requirement;
import org.gusset.core.check.Seam;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Given;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;

/** Checks the statements at file level: measures, choices, cloths, seams and checks. */
final class FileStatements {
    private final Resolver resolver;
    private final Expressions expressions;
    private final Messages messages;
    private final Map<Symbol, Draft.Option.Kind> kinds = new LinkedHashMap<>();

    FileStatements(Resolver resolver, Expressions expressions, Messages messages) {
        this.resolver = resolver;
        this.expressions = expressions;
        this.messages = messages;
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
            Term low = expressions.term(measure.range().get().low(), throwaway());
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

    private Context throwaway() {
        return new Context(resolver.file(), new LinkedHashSet<>(), -1);
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
                    type, new Term.Made(new Given.Choice<>(String.class), List.of(word), type, "", choose.span()));
            return;
        }
        Term value = withRange(choose.value(), choose.range(), at, "The choice `" + symbol.name() + "`");
        if (value.type().equals(Type.TRUTH)) {
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

    /** A default value; a bare number is told of here if the range shows that a unit was forgotten. */
    private Term withRange(Expr expr, Optional<Statement.Range> range, Context at, String what) {
        Term value = expressions.term(expr, at);
        if (range.isEmpty() || !value.type().equals(Type.NUMBER) || !(value instanceof Term.Constant)) {
            return value;
        }
        messages.quiet();
        Type wanted = expressions.term(range.get().low(), throwaway()).type();
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

    CheckedDraft draft(DraftTree tree, List<CheckedDraft.Piece> pieces, List<PieceBody> bodies) {
        String title = "";
        String note = "";
        List<CheckedDraft.Measure> measures = new ArrayList<>();
        List<CheckedDraft.Option> options = new ArrayList<>();
        List<Symbol> values = new ArrayList<>();
        List<CheckedDraft.Cloth> cloths = new ArrayList<>();
        List<CheckedDraft.Check> checks = new ArrayList<>();
        boolean titled = false;
        for (Statement statement : tree.statements()) {
            Optional<Symbol> symbol = Definitions.name(statement)
                    .flatMap(name -> Optional.ofNullable(resolver.file().own(name.text())))
                    .filter(s -> s.statement() == statement);
            if (statement instanceof Statement.Draft draft) {
                if (titled) {
                    messages.tell(ResolveCode.SAID_TWICE, draft.span(), "piece", "The file", "what", "its title");
                }
                titled = true;
                title = draft.title().plain();
                note = draft.note().map(Words::plain).orElse("");
            } else if (statement instanceof Statement.Measure measure && symbol.isPresent()) {
                measures.add(checked(symbol.get(), measure));
            } else if (statement instanceof Statement.Choose choose && symbol.isPresent()) {
                options.add(option(symbol.get(), choose.range(), choose.note()));
            } else if (statement instanceof Statement.Fit fit && symbol.isPresent()) {
                options.add(option(symbol.get(), fit.range(), fit.note()));
            } else if ((statement instanceof Statement.Let || statement instanceof Statement.Unknown)
                    && symbol.isPresent()) {
                values.add(symbol.get());
            } else if (statement instanceof Statement.Cloth cloth && symbol.isPresent()) {
                cloths.add(new CheckedDraft.Cloth(symbol.get(), cloth.note().map(Words::plain)));
            } else {
                check(statement).ifPresent(checks::add);
            }
        }
        checks.addAll(new PartSeams(resolver, expressions).checks(tree, bodies));
        if (!titled && !tree.statements().isEmpty()) {
            Span first = tree.statements().get(0).span();
            messages.tell(ResolveCode.NO_TITLE, first);
        }
        return new CheckedDraft(title, note, List.of(), measures, options, values, cloths, pieces, checks);
    }

    private CheckedDraft.Measure checked(Symbol symbol, Statement.Measure measure) {
        String howTo = measure.howTo().map(Words::plain).orElse("");
        Optional<Term> range = measure.range().flatMap(r -> range(symbol, r, true, howTo));
        return new CheckedDraft.Measure(
                symbol, measure.also(), howTo, measure.otherwise().isPresent(), range);
    }

    private CheckedDraft.Option option(Symbol symbol, Optional<Statement.Range> range, Optional<Words> note) {
        List<String> words = symbol.type() instanceof Type.Word word ? word.options() : List.of();
        return new CheckedDraft.Option(
                symbol,
                kinds.getOrDefault(symbol, Draft.Option.Kind.AMOUNT),
                words,
                note.map(Words::plain).orElse(""),
                range.flatMap(r -> range(symbol, r, false, "")));
    }

    private Optional<Term> range(Symbol symbol, Statement.Range range, boolean body, String howTo) {
        Type type = symbol.type();
        if (type.broken()) {
            return Optional.empty();
        }
        Context at = throwaway();
        Inputs in = new Inputs(expressions.use(symbol, symbol.span(), at));
        Formula low = in.formula(expressions.wanted(range.low(), type, at, "The least of `" + symbol.name() + "`"));
        Formula high = in.formula(expressions.wanted(range.high(), type, at, "The most of `" + symbol.name() + "`"));
        InRange check = new InRange(
                symbol.name(), body, howTo, type.dimension(), Optional.of(low), Optional.of(high), symbol.span());
        Term made = expressions.made(check, in, Type.TRUTH, symbol.span());
        return made.broken() ? Optional.empty() : Optional.of(made);
    }

    private Optional<CheckedDraft.Check> check(Statement statement) {
        if (statement instanceof Statement.Seam seam) {
            return Optional.of(seam(seam));
        } else if (statement instanceof Statement.Check check) {
            return Optional.of(requirement(check));
        } else if (statement instanceof Statement.Finished finished) {
            return Optional.of(finished(finished));
        } else if (statement instanceof Statement.Opening opening) {
            return Optional.of(opening(opening));
        }
        return Optional.empty();
    }

    private CheckedDraft.Check requirement(Statement.Check check) {
        Context at = throwaway();
        Inputs in = new Inputs(expressions.truth(check.condition(), at, "What stands after `check`"));
        int telling = -1;
        if (check.telling().isPresent()) {
            telling = in.add(expressions.words(check.telling().get(), at));
        }
        String source = messages.text(check.condition().span());
        Requirement requirement = new Requirement(new Condition.Input(0), source, telling, check.span());
        return new CheckedDraft.Check(
                source, expressions.made(requirement, in, Type.TRUTH, check.span()), check.span());
    }

    private Term sum(List<Expr> paths, Context at) {
        Term sum = null;
        for (Expr path : paths) {
            Term length = expressions.functions().length(path, true, at);
            if (length.broken()) {
                return length;
            }
            sum = sum == null ? length : new Term.Arithmetic(Formula.Sign.PLUS, sum, length, Type.LENGTH, path.span());
        }
        return sum == null ? new Term.Broken(paths.get(0).span()) : sum;
    }

    private String words(List<Expr> paths) {
        return paths.stream().map(p -> messages.text(p.span())).collect(Collectors.joining(" + "));
    }

    private CheckedDraft.Check seam(Statement.Seam seam) {
        Context at = throwaway();
        Inputs in = new Inputs(sum(seam.first(), at), sum(seam.second(), at));
        Span span = seam.span();
        Term low = new Term.Constant(Quantity.length(0), span);
        Term high = low;
        if (seam.ease().isPresent()) {
            low = lengthOrShare(seam.ease().get().low(), at, "The least ease");
            high = lengthOrShare(seam.ease().get().high(), at, "The most ease");
        }
        Term within = seam.within()
                .map(w -> expressions.length(w, at, "A tolerance"))
                .orElse(new Term.Constant(Quantity.length(Seam.TOLERANCE), span));
        if (!seam.matching().isEmpty()) {
            messages.tell(ResolveCode.NOT_CHECKED, seam.matching().get(0).span(), "form", "matching");
        }
        if (!seam.meeting().isEmpty()) {
            messages.tell(ResolveCode.NOT_CHECKED, seam.meeting().get(0).span(), "form", "meeting");
        }
        Seam operation = new Seam(
                seam.name().text(),
                words(seam.first()),
                words(seam.second()),
                in.formula(low),
                in.formula(high),
                low.type().equals(Type.NUMBER),
                high.type().equals(Type.NUMBER),
                in.formula(within),
                span);
        return new CheckedDraft.Check(seam.name().text(), expressions.made(operation, in, Type.TRUTH, span), span);
    }

    private Term lengthOrShare(Expr expr, Context at, String what) {
        Term term = expressions.amount(expr, at, what);
        // A share has its sign of percent; a bare number is a length whose unit was forgotten.
        boolean share =
                term.type().equals(Type.NUMBER) && messages.text(expr.span()).endsWith("%");
        return share || term.broken() || term.type().equals(Type.LENGTH) ? term : expressions.length(expr, at, what);
    }

    private CheckedDraft.Check finished(Statement.Finished finished) {
        Context at = throwaway();
        Inputs in = new Inputs(
                expressions.length(finished.value(), at, "A finished measure"),
                expressions.length(finished.over(), at, "What stands after `over`"),
                expressions.length(finished.ease().low(), at, "The least ease"),
                expressions.length(finished.ease().high(), at, "The most ease"));
        EaseBand band = new EaseBand(
                finished.name().text(), messages.text(finished.over().span()), finished.span());
        return new CheckedDraft.Check(
                finished.name().text(), expressions.made(band, in, Type.TRUTH, finished.span()), finished.span());
    }

    private CheckedDraft.Check opening(Statement.Opening opening) {
        Context at = throwaway();
        Span span = opening.span();
        Inputs in = new Inputs(
                sum(opening.paths(), at),
                expressions.length(opening.passes(), at, "What stands after `passes`"),
                opening.fastening()
                        .map(f -> expressions.length(f, at, "A fastening"))
                        .orElse(new Term.Constant(Quantity.length(0), span)),
                opening.stretch()
                        .map(s -> expressions.wanted(s, Type.NUMBER, at, "A stretch"))
                        .orElse(new Term.Constant(Quantity.number(0), span)));
        Passage passage = new Passage(
                opening.name().text(), messages.text(opening.passes().span()), span);
        return new CheckedDraft.Check(opening.name().text(), expressions.made(passage, in, Type.TRUTH, span), span);
    }
}
