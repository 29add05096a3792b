package org.gusset.benchmarks;

import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.gusset.benchmarks.text.LongDraft;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Source;
import org.gusset.dsl.internal.parse.GussetLexer;
import org.gusset.dsl.internal.parse.GussetParser;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A long text to a draft, against the generated lexer and parser alone. */
@State(Scope.Thread)
public class CompileBenchmark {
    private static final long SEED = 35;

    /** How many lines. */
    @Param({"1000", "10000", "20000", "100000"})
    public int lines = 20_000;

    private Settings settings = Settings.defaults()
            .withBudget(Budget.defaults()
                    .withCharacters(10_000_000)
                    .withPieces(1_000)
                    .withChecks(10_000)
                    .withNodes(5_000_000)
                    .withNames(1_000_000));
    private String text = "";

    /** Both read the whole text without a mistake, and the draft has all its pieces and seams. */
    @Setup
    public void same() {
        text = LongDraft.of(SEED, lines);
        Same.bits("lines", (long) lines, text.lines().count());
        GussetParser.FileContext file = grammarAlone();
        Draft draft = compile().orThrow();
        Same.bits("pieces", file.piece().size(), draft.pieces().size());
        long checks = file.fileStatement().stream()
                        .filter(s -> s.seam() != null)
                        .count()
                + file.sharedStatement().stream().filter(s -> s.check() != null).count();
        Same.bits("seams and checks", checks, (long) draft.checks().size());
    }

    /** All that a host waits for: tokens, tree, names and dimensions, the graph. */
    @Benchmark
    public Outcome<Draft> compile() {
        return Gusset.compile(Source.of("long.gusset", text), settings);
    }

    /** The lexer and the parser that ANTLR makes of the grammar, in the mode in which it is fastest, with its own tree. */
    @Benchmark
    public GussetParser.FileContext grammarAlone() {
        GussetLexer lexer = new GussetLexer(CharStreams.fromString(text));
        GussetParser parser = new GussetParser(new CommonTokenStream(lexer));
        parser.setErrorHandler(new BailErrorStrategy());
        parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
        return parser.file();
    }
}
