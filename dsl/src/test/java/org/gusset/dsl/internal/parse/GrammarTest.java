package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Recognizer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNConfigSet;
import org.antlr.v4.runtime.atn.DecisionState;
import org.antlr.v4.runtime.atn.LL1Analyzer;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.dfa.DFA;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every decision of the grammar looks at one token, so no sentence has two meanings. */
class GrammarTest {
    private static final ATN NETWORK = new GussetParser(new CommonTokenStream(new ListTokenSource(List.of()))).getATN();
    private static final long SEED = 20_260_101;
    private static final int COUNT = 4000;

    @Test
    void noTwoAlternativesOfADecisionBeginWithTheSameToken() {
        LL1Analyzer analyzer = new LL1Analyzer(NETWORK);
        List<String> clashes = new ArrayList<>();
        for (DecisionState decision : NETWORK.decisionToState) {
            IntervalSet[] first = analyzer.getDecisionLookahead(decision);
            IntervalSet seen = new IntervalSet();
            for (IntervalSet tokens : first) {
                assertThat(tokens)
                        .as("look-ahead of decision %d", decision.decision)
                        .isNotNull();
                IntervalSet both = seen.and(tokens);
                if (both != null && !both.isNil()) {
                    clashes.add(GussetParser.ruleNames[decision.ruleIndex] + ", decision " + decision.decision + ": "
                            + both.toString(GussetParser.VOCABULARY));
                }
                seen.addAll(tokens);
            }
        }
        System.out.printf(
                "decisions of the grammar: %d, unclear at one token: %d%n",
                NETWORK.decisionToState.size(), clashes.size());
        assertThat(NETWORK.decisionToState).hasSizeGreaterThan(90);
        assertThat(clashes).isEmpty();
    }

    @Test
    void noRandomSentenceHasTwoMeanings() {
        Sentences sentences = new Sentences(NETWORK, new Random(SEED), 60);
        Doubts doubts = new Doubts();
        Set<Integer> used = new LinkedHashSet<>();
        int tokens = 0;
        for (int i = 0; i < COUNT; i++) {
            int rule = i % 4 == 0 ? GussetParser.RULE_file : GussetParser.RULE_single;
            List<Integer> sentence = sentences.next(rule);
            tokens += sentence.size();
            used.addAll(sentence);
            GussetParser parser = new GussetParser(new CommonTokenStream(new ListTokenSource(asTokens(sentence))));
            parser.removeErrorListeners();
            parser.addErrorListener(doubts);
            parser.getInterpreter().setPredictionMode(PredictionMode.LL_EXACT_AMBIG_DETECTION);
            if (rule == GussetParser.RULE_file) {
                parser.file();
            } else {
                parser.single();
            }
        }
        System.out.printf(
                "%d random sentences, %d tokens, seed %d: %d doubts%n", COUNT, tokens, SEED, doubts.told.size());
        assertThat(doubts.told).isEmpty();
        assertThat(used).as("kinds of tokens that came up").hasSizeGreaterThan(150);
    }

    private static List<Token> asTokens(List<Integer> types) {
        List<Token> tokens = new ArrayList<>();
        for (int type : types) {
            tokens.add(new CommonToken(type, type == Token.EOF ? "" : "t"));
        }
        return tokens;
    }

    /** Everything that a parser can have doubts about. */
    private static final class Doubts extends BaseErrorListener {
        private final List<String> told = new ArrayList<>();

        @Override
        public void syntaxError(
                Recognizer<?, ?> recognizer,
                @Nullable Object symbol,
                int line,
                int column,
                String message,
                @Nullable RecognitionException e) {
            told.add("not read: " + message);
        }

        @Override
        public void reportAmbiguity(
                Parser parser,
                DFA dfa,
                int startIndex,
                int stopIndex,
                boolean exact,
                @Nullable BitSet alternatives,
                ATNConfigSet configs) {
            told.add("two meanings in " + GussetParser.ruleNames[dfa.atnStartState.ruleIndex] + ": "
                    + parser.getTokenStream()
                            .getText(
                                    parser.getTokenStream().get(startIndex),
                                    parser.getTokenStream().get(stopIndex)));
        }
    }
}
