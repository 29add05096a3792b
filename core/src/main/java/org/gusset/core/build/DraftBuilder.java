package org.gusset.core.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Given;
import org.gusset.core.graph.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * A draft written in Java. It is put together of the very operations to which the language's drafts are lowered, so that both give
 * the same drawing to the last bit.
 *
 * <p>Slips of the program (a name given twice, a handle of another draft, a shape of another piece) throw
 * {@link IllegalArgumentException} where they are made; what is not complete throws {@link IllegalStateException} in
 * {@link #build()}. What is wrong for a body or a choice is told by the drawing, as with any draft. Not for use by several threads;
 * the draft that is built is immutable.
 */
public final class DraftBuilder {
    /** The range of an unknown. */
    private record Range(Term low, Term high) {}

    private final String title;
    private final Names names;
    private final Names seamNames;
    private String note = "";
    private Bounds bounds = Bounds.defaults();
    private final List<MeasureBuilder<?>> measures = new ArrayList<>();
    private final List<Supplier<ChoiceBuilder.Option>> options = new ArrayList<>();
    private final List<Symbol> values = new ArrayList<>();
    private final List<Cloth> cloths = new ArrayList<>();
    private final List<PieceBuilder> pieces = new ArrayList<>();
    private final List<SeamBuilder> seams = new ArrayList<>();
    private final List<Asked.Later> asked = new ArrayList<>();
    private final Map<Symbol, Range> unknowns = new LinkedHashMap<>();
    private final List<Symbol> order = new ArrayList<>();

    private DraftBuilder(String title) {
        this.title = title;
        this.names = new Names("The draft \"" + title + "\"");
        this.seamNames = new Names("The draft \"" + title + "\"");
    }

    /** Begins a draft. */
    public static DraftBuilder of(String title) {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a draft needs a title");
        }
        return new DraftBuilder(title);
    }

    public String title() {
        return title;
    }

    /** What the draft is for, and whose method it follows. */
    public DraftBuilder note(String words) {
        this.note = words;
        return this;
    }

    /** What evaluating it may ask of the machine, if not {@link Bounds#defaults()}. */
    public DraftBuilder within(Bounds newBounds) {
        this.bounds = newBounds;
        return this;
    }

    // ---- the body, choices

    /** A length of the body; {@link MeasureBuilder#howTo} ends its description. */
    public MeasureBuilder<Len> measure(String name) {
        return measured(name, Kind.LENGTH, Len::new);
    }

    /** An angle of the body; {@link MeasureBuilder#howTo} ends its description. */
    public MeasureBuilder<Ang> angleMeasure(String name) {
        return measured(name, Kind.ANGLE, Ang::new);
    }

    private <T extends Value & Shown> MeasureBuilder<T> measured(String name, Kind kind, Function<Term, T> handle) {
        MeasureBuilder<T> measure = new MeasureBuilder<>(symbol(name, "a measure", kind), handle);
        measures.add(measure);
        return measure;
    }

    /** A length that the host may choose, with its default; {@link ChoiceBuilder#note} ends its description. */
    public ChoiceBuilder<Len> choose(String name, Len value) {
        return chosen(name, "a choice", value, false, Len::new);
    }

    /** An angle that the host may choose, with its default; {@link ChoiceBuilder#note} ends its description. */
    public ChoiceBuilder<Ang> choose(String name, Ang value) {
        return chosen(name, "a choice", value, false, Ang::new);
    }

    /** A number that the host may choose, with its default; {@link ChoiceBuilder#note} ends its description. */
    public ChoiceBuilder<Num> choose(String name, Num value) {
        return chosen(name, "a choice", value, false, Num::new);
    }

    /** A correction found at a fitting, which may stand among the body's measures too. */
    public ChoiceBuilder<Len> fit(String name, Len value) {
        return chosen(name, "a fitting correction", value, true, Len::new);
    }

    private <T extends Value & Shown> ChoiceBuilder<T> chosen(
            String name, String what, T value, boolean fit, Function<Term, T> handle) {
        own(value);
        ChoiceBuilder<T> choice =
                new ChoiceBuilder<>(symbol(name, what, value.term().kind()), value, fit, handle);
        options.add(() -> choice.option());
        return choice;
    }

    /**
     * One of several words that the host may choose.
     *
     * @param words what may be chosen, the first being the default
     */
    public Word choose(String name, List<String> words, String note) {
        if (words.isEmpty()) {
            throw new IllegalArgumentException("the choice `" + name + "` needs words to choose from");
        }
        Symbol symbol = symbol(name, "a choice", Kind.WORD);
        symbol.define(Term.Made.of(
                new Given.Choice<>(String.class), List.of(new Term.Word(words.get(0))), Kind.WORD, 3, symbol::words));
        option(symbol, Draft.Option.Kind.WORD, words, note);
        return new Word(new Term.Ref(symbol), words);
    }

    /** A yes or no that the host may choose, with its default. */
    public Truth choose(String name, boolean value, String note) {
        Symbol symbol = symbol(name, "a choice", Kind.TRUTH);
        symbol.define(Term.Made.of(
                new Given.Choice<>(Boolean.class), List.of(new Term.Answer(value)), Kind.TRUTH, 3, symbol::words));
        option(symbol, Draft.Option.Kind.ANSWER, List.of(), note);
        return new Truth(new Term.Ref(symbol));
    }

    private void option(Symbol symbol, Draft.Option.Kind kind, List<String> words, String words0) {
        ChoiceBuilder.Option option =
                new ChoiceBuilder.Option(symbol, kind, words, words0, false, true, Optional.empty());
        options.add(() -> option);
    }

    // ---- values

    /** Names a value of the draft. */
    public Len value(String name, Len value) {
        return new Len(define(name, value));
    }

    /** Names a value of the draft. */
    public Num value(String name, Num value) {
        return new Num(define(name, value));
    }

    /** Names a value of the draft. */
    public Ang value(String name, Ang value) {
        return new Ang(define(name, value));
    }

    /** Names a value of the draft. */
    public Area value(String name, Area value) {
        return new Area(define(name, value));
    }

    /** Names a yes or no of the draft. */
    public Truth value(String name, Truth value) {
        return new Truth(define(name, value));
    }

    private Term define(String name, Value value) {
        own(value);
        Symbol symbol = symbol(name, "a value", value.term().kind());
        symbol.define(value.term());
        values.add(symbol);
        return new Term.Ref(symbol);
    }

    /** A length that {@link #solve} finds within a range. */
    public Len unknown(String name, Len least, Len most) {
        own(least);
        own(most);
        Symbol symbol = symbol(name, "an unknown", Kind.LENGTH);
        unknown(symbol, least, most);
        values.add(symbol);
        return new Len(new Term.Ref(symbol));
    }

    /** Finds an unknown, of the draft or of a piece, so that an equation holds. It must hold at one place in the range. */
    public DraftBuilder solve(Shown unknown, Equation equation) {
        return solve(List.of(unknown), List.of(equation), Optional.empty());
    }

    /** Finds an unknown so that an equation holds, at the place nearest to a value. */
    public DraftBuilder solve(Shown unknown, Equation equation, Shown nearest) {
        return solve(List.of(unknown), List.of(equation), Optional.of(((Value) nearest).term()));
    }

    /** Finds several unknowns together so that as many equations hold. */
    public DraftBuilder solve(List<? extends Shown> together, List<Equation> equations) {
        return solve(together, equations, Optional.empty());
    }

    private DraftBuilder solve(List<? extends Shown> together, List<Equation> equations, Optional<Term> nearest) {
        if (together.isEmpty() || together.size() != equations.size()) {
            throw new IllegalArgumentException(
                    together.size() + " unknowns need as many equations, and there are " + equations.size());
        }
        List<Symbol> symbols = new ArrayList<>();
        List<Term> lows = new ArrayList<>();
        List<Term> highs = new ArrayList<>();
        for (Shown one : together) {
            Term term = own((Value) one).term();
            Range range = term instanceof Term.Ref ref ? unknowns.get(ref.symbol()) : null;
            if (range == null) {
                throw new IllegalArgumentException("`" + one + "` is no unknown; declare it with unknown(...)");
            }
            Symbol symbol = ((Term.Ref) term).symbol();
            if (symbol.definition() != null || symbols.contains(symbol)) {
                throw new IllegalArgumentException("the unknown `" + one + "` is solved twice");
            }
            symbols.add(symbol);
            lows.add(range.low());
            highs.add(range.high());
        }
        List<Term> misses = new ArrayList<>();
        equations.forEach(e -> misses.add(checked(e.miss())));
        nearest.ifPresent(this::checked);
        PieceBuilder inside = symbols.get(0).piece();
        String left = equations.get(0).left().term().words(inside == null ? "" : inside.name());
        Equations solved = new Equations(symbols, lows, highs, misses, nearest, left);
        for (int i = 0; i < symbols.size(); i++) {
            symbols.get(i).define(new Term.Solved(solved, i, symbols.get(i).kind(), new Home(this, null)));
        }
        return this;
    }

    // ---- cloths and pieces

    /** A cloth, by its width. */
    public Cloth cloth(String name, Len width) {
        own(width);
        Symbol symbol = symbol(name, "a cloth", Kind.LENGTH);
        symbol.define(width.term());
        Cloth cloth = new Cloth(symbol);
        cloths.add(cloth);
        return cloth;
    }

    /** Begins a piece. */
    public PieceBuilder piece(String name) {
        return piece(name, false, null);
    }

    /** Begins a piece that is left out where a condition does not hold. */
    public PieceBuilder pieceIf(Truth condition, String name) {
        return piece(name, false, own(condition));
    }

    /**
     * Begins a strip: a rectangle whose edges are {@code top}, {@code right_end}, {@code bottom} and {@code left_end}, with the warp
     * along its top unless told. A strip longer than its cloth is wide is cut in several lengths.
     */
    public PieceBuilder strip(String name, Len length, Len width) {
        PieceBuilder strip = piece(name, true, null);
        Spot topLeft = strip.point("top_left", Spot.origin());
        Spot topRight = strip.point("top_right", topLeft.right(length));
        Spot bottomRight = strip.point("bottom_right", topRight.down(width));
        Spot bottomLeft = strip.point("bottom_left", topLeft.down(width));
        Line top = strip.line("top", topLeft, topRight);
        Line right = strip.line("right_end", topRight, bottomRight);
        Line bottom = strip.line("bottom", bottomRight, bottomLeft);
        Line left = strip.line("left_end", bottomLeft, topLeft);
        return strip.outline(top, right, bottom, left).grainAlong(top);
    }

    private PieceBuilder piece(String name, boolean strip, @Nullable Truth condition) {
        names.take(name, "a piece");
        if (!Character.isUpperCase(name.codePointAt(0))) {
            throw new IllegalArgumentException("the name of a piece begins with a capital letter, and `" + name
                    + "` does not; so `Back.tip` is told from a value");
        }
        PieceBuilder piece = new PieceBuilder(this, name, strip, condition);
        pieces.add(piece);
        return piece;
    }

    // ---- what must hold

    /** Begins a seam with the edges of its first side; {@link SeamBuilder#to} tells the second. */
    public SeamBuilder seam(String name, Sewable edge, Sewable... further) {
        seamNames.take(name, "a seam");
        List<Sewable> first = new ArrayList<>(List.of(sewable(edge)));
        for (Sewable one : further) {
            first.add(sewable(one));
        }
        SeamBuilder seam = new SeamBuilder(this, name, first);
        seams.add(seam);
        asked.add(() -> new Asked(name, seam.made(), org.gusset.core.diagnostic.Place.named(name)));
        return seam;
    }

    /** Something that must hold; a message shows the condition. */
    public DraftBuilder check(Truth condition) {
        own(condition);
        asked.add(() -> Checks.check(condition, null));
        return this;
    }

    /** Something that must hold, and the words that tell of it where it does not, each {@code {}} standing for the next value. */
    public DraftBuilder check(Truth condition, String telling, Shown... values) {
        own(condition);
        Term words = checked(Says.words(telling, values));
        asked.add(() -> Checks.check(condition, words));
        return this;
    }

    /** A finished measure over one of the body, whose ease must lie in a band. */
    public DraftBuilder finished(String name, Len finished, Len over, Len leastEase, Len mostEase) {
        seamNames.take(name, "a finished measure");
        List.of(finished, over, leastEase, mostEase).forEach(this::own);
        asked.add(() -> Checks.finished(name, finished, over, leastEase, mostEase));
        return this;
    }

    /** An opening of some length round, through which a girth must pass. */
    public DraftBuilder opening(String name, Len round, Len passes) {
        return opening(name, round, passes, Amounts.mm(0), 0);
    }

    /**
     * An opening through which a girth must pass.
     *
     * @param fastening by how much a fastening opens it
     * @param stretch how much the cloth gives, as a share
     */
    public DraftBuilder opening(String name, Len round, Len passes, Len fastening, double stretch) {
        seamNames.take(name, "an opening");
        List.of(round, passes, fastening).forEach(this::own);
        Num gives = Amounts.number(stretch);
        asked.add(() -> Checks.opening(name, round, passes, fastening, gives));
        return this;
    }

    /**
     * The draft.
     *
     * @throws IllegalStateException if something was begun and not ended, with everything that is missing
     */
    public Draft build() {
        List<String> missing = missing();
        if (!missing.isEmpty()) {
            throw new IllegalStateException(
                    "the draft \"" + title + "\" is not complete: " + String.join("; ", missing));
        }
        return Lowering.lower(this);
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        measures.stream()
                .filter(m -> !m.finished())
                .forEach(m -> missing.add("the measure `" + m.symbol() + "` wants howTo(...)"));
        options().stream()
                .filter(o -> !o.finished())
                .forEach(o -> missing.add("the choice `" + o.symbol() + "` wants note(...)"));
        unknowns.keySet().stream()
                .filter(u -> u.definition() == null)
                .forEach(u -> missing.add("the unknown `" + u + "` is never solved"));
        for (PieceBuilder piece : pieces) {
            piece.curves().stream()
                    .filter(c -> !c.ended())
                    .forEach(c -> missing.add("the curve `" + c + "` wants to(...)"));
            if (piece.layout().outline.isEmpty()) {
                missing.add("the piece " + piece.name() + " wants outline(...), its edges in order");
            }
            piece.darts().keySet().stream()
                    .filter(edge -> !piece.layout().outline.containsKey(edge))
                    .forEach(edge -> missing.add(
                            "a dart of " + piece.name() + " opens `" + edge + "`, which is no edge of its outline"));
        }
        seams.stream()
                .filter(s -> !s.complete())
                .forEach(s -> missing.add("the seam `" + s.name() + "` wants to(...), its second side"));
        return missing;
    }

    // ---- for the builders of parts

    Bounds bounds() {
        return bounds;
    }

    private Symbol symbol(String name, String what, Kind kind) {
        names.take(name, what);
        Symbol symbol = new Symbol(this, null, name, kind);
        order.add(symbol);
        return symbol;
    }

    void unknown(Symbol symbol, Value least, Value most) {
        unknowns.put(symbol, new Range(least.term(), most.term()));
    }

    /** A handle that may be used in this draft. */
    <T extends Value> T own(T value) {
        checked(value.term());
        return value;
    }

    Term checked(Term term) {
        DraftBuilder other = term.home().draft();
        if (other != null && other != this) {
            throw new IllegalArgumentException("`" + term.words("") + "` belongs to the draft \"" + other.title()
                    + "\" and cannot be used in \"" + title + "\"");
        }
        return term;
    }

    Sewable sewable(Sewable edge) {
        Line line = edge instanceof AllCopies all ? all.edge() : (Line) edge;
        own(line).withEnds("cannot be sewn");
        return edge;
    }

    String note() {
        return note;
    }

    List<MeasureBuilder<?>> measures() {
        return measures;
    }

    List<ChoiceBuilder.Option> options() {
        return options.stream().map(Supplier::get).toList();
    }

    List<Symbol> values() {
        return values;
    }

    /** What the draft as a whole names, pieces left out, in the order in which it was told. */
    List<Symbol> order() {
        return order;
    }

    List<Cloth> cloths() {
        return cloths;
    }

    List<PieceBuilder> pieces() {
        return pieces;
    }

    List<SeamBuilder> seams() {
        return seams;
    }

    List<Asked> asked() {
        return asked.stream().map(Asked.Later::now).toList();
    }
}
