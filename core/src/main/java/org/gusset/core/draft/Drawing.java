package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.WalkedSeams;

/**
 * What a draft gives for one body and one set of choices. Immutable; holds sound pieces only, the rest is in
 * {@link #refused()} with the reasons.
 */
public final class Drawing {
    private final Draft draft;
    private final Evaluation evaluation;
    private final Content content;

    /** All that a drawing holds. */
    record Content(
            String title,
            String note,
            Measurements measurements,
            Choices choices,
            List<Cloth> cloths,
            List<Piece> pieces,
            List<StripPlan> strips,
            List<RefusedPiece> refused,
            List<String> leftOut,
            List<NamedValue> values,
            List<PieceValues> pieceValues,
            List<Step> steps,
            List<Finding> findings,
            WalkedSeams seams,
            List<Diagnostic> diagnostics,
            boolean untaught,
            long walked) {}

    Drawing(Draft draft, Evaluation evaluation, Content content) {
        this.draft = draft;
        this.evaluation = evaluation;
        this.content = content;
    }

    Evaluation evaluation() {
        return evaluation;
    }

    /** The steps that walking the seams took, or would have taken if none had been walked before. */
    long walked() {
        return content.walked();
    }

    WalkedSeams seams() {
        return content.seams();
    }

    /** The draft that this is a drawing of. */
    public Draft draft() {
        return draft;
    }

    /** The same draft and choices for other measures; only what depends on a changed one is computed anew. */
    public Drawing with(Measurements measurements) {
        return new Drafting(draft).draw(measurements, content.choices(), this);
    }

    /** The same draft and body with other choices; only what depends on a changed one is computed anew. */
    public Drawing with(Choices choices) {
        return new Drafting(draft).draw(content.measurements(), choices, this);
    }

    /** The draft's title. */
    public String title() {
        return content.title();
    }

    /** The draft's note; empty if it has none. */
    public String note() {
        return content.note();
    }

    public Measurements measurements() {
        return content.measurements();
    }

    /** What the host chose; the values of all choices are among {@link #values()}. */
    public Choices choices() {
        return content.choices();
    }

    /** How each strip is cut: in one length, or in several that are joined. */
    public List<StripPlan> strips() {
        return content.strips();
    }

    public List<Cloth> cloths() {
        return content.cloths();
    }

    /** The sound pieces in file order. */
    public List<Piece> pieces() {
        return content.pieces();
    }

    /** The pieces that could not be made. */
    public List<RefusedPiece> refused() {
        return content.refused();
    }

    /** The names of pieces that the choices leave out. */
    public List<String> leftOut() {
        return content.leftOut();
    }

    /** Measures, choices and values of the file, in file order. */
    public List<NamedValue> values() {
        return content.values();
    }

    /** What each piece names, in file order; pieces that are left out are not there. */
    public List<PieceValues> pieceValues() {
        return content.pieceValues();
    }

    /**
     * What darts, gathers and pleats take up of the edges of a piece, by edge, in the order in which the draft says so; empty for a
     * piece that is left out or that the draft lacks.
     */
    public Map<String, List<TakenUp>> takenUp(String piece) {
        Map<String, List<TakenUp>> all = new LinkedHashMap<>();
        for (Draft.PieceNodes nodes : draft.pieces()) {
            if (nodes.name().equals(piece)) {
                for (String edge : nodes.outline()) {
                    List<TakenUp> taken = new ArrayList<>();
                    for (Handle<? extends TakenUp> one :
                            nodes.takenUp().getOrDefault(edge, List.<Handle<? extends TakenUp>>of())) {
                        evaluation.value(one).ifPresent(taken::add);
                    }
                    if (!taken.isEmpty()) {
                        all.put(edge, List.copyOf(taken));
                    }
                }
            }
        }
        return Collections.unmodifiableMap(all);
    }

    /**
     * How everything that the draft names came about, with the sums shown, in file order: worked out on request from the graph and
     * its values.
     */
    public List<TraceLine> trace(LengthStyle style) {
        return new Trace(draft, evaluation, style).lines();
    }

    /**
     * How the drawing is taught, step by step, each with the shapes that it draws and the stretches that are set off for them: worked
     * out on request. It has no stages if it would show too much, which LIM302 tells.
     */
    public Lesson lesson(LengthStyle style) {
        if (content.untaught()) {
            return new Lesson(
                    List.of(),
                    content.refused().stream().map(RefusedPiece::name).toList());
        }
        return new Teaching(this, evaluation, style).lesson();
    }

    public List<Step> steps() {
        return content.steps();
    }

    /** What the checks and seams found, in file order. */
    public List<Finding> findings() {
        return content.findings();
    }

    /** How the pieces are sewn together: every seam walked from end to end, and in which order. */
    public Sewing sewing() {
        return content.seams().sewing();
    }

    /**
     * What would settle a finding that failed: values and choices, each with the change that was tried and makes it pass without
     * making anything else worse; those with the least change first, three at most. They are sought within five times
     * the steps that an evaluation may take; what would take more is not found.
     */
    public List<Remedy> remedies(Finding finding) {
        return new Settling(this, evaluation).of(finding);
    }

    /**
     * Every message as in {@link #diagnostics()}, those of failed checks with the steps that led to their figures and what would
     * settle them: worked out on request, since it takes many evaluations. All of them together may take as many steps as
     * {@link #remedies} of one finding; where they are used up, the rest is told without remedies, and LIM207 says so.
     */
    public List<Diagnostic> explained(LengthStyle style) {
        return new Explaining(this, evaluation, style).diagnostics();
    }

    /**
     * The pieces as a trial garment is cut of them, worked out on request.
     *
     * @param allowance what every sewn edge and hem is to have at least, in mm; see {@link Toile#ALLOWANCE}
     */
    public Toile toile(double allowance) {
        return Toile.of(this, evaluation, allowance);
    }

    /** The drawing without the fitting corrections that are set, and the lines that they moved; nothing if none is set. */
    public Optional<Unfitted> unfitted() {
        return Unfitted.of(this);
    }

    /** How many errors there are. */
    long errors() {
        return content.diagnostics().stream().filter(Diagnostic::isError).count();
    }

    /** Every message, those of failed checks among them, in file order. */
    public List<Diagnostic> diagnostics() {
        return content.diagnostics();
    }

    /** True if nothing is wrong: no error, no refused piece, no failed check. */
    public boolean proved() {
        return content.refused().isEmpty() && content.diagnostics().stream().noneMatch(Diagnostic::isError);
    }

    /** The names of the measures that the body's table lacks and that rules estimated. */
    public List<String> estimated() {
        return values().stream()
                .filter(v -> v instanceof NamedValue.Amount a && a.estimated())
                .map(NamedValue::name)
                .toList();
    }

    /**
     * Twelve hexadecimal digits that stand for the draft's text, the choices and the version of the library. A draft built in Java has
     * no text; there they stand for everything that it is put together of, so that another rule, name or word gives others.
     */
    public String fingerprint() {
        return Drafting.fingerprint(draft, content.choices());
    }
}
