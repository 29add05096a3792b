package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.RuleStopState;
import org.antlr.v4.runtime.atn.RuleTransition;
import org.antlr.v4.runtime.atn.Transition;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.gusset.dsl.names.Continuation;
import org.gusset.dsl.names.Continuation.NameForm;
import org.jspecify.annotations.Nullable;

/** What can stand behind the words of a statement: the grammar is walked along them, and the words of the ways that go on are told. */
public final class Continuing {
    private static final ATN GRAMMAR = GussetParser._ATN;
    private static final IntervalSet NAMES = GRAMMAR.nextTokens(GRAMMAR.ruleToStartState[GussetParser.RULE_name]);

    private static final List<Integer> BEGINNINGS = List.of(
            GussetParser.RULE_statement,
            GussetParser.RULE_pieceHead,
            GussetParser.RULE_stripHead,
            GussetParser.RULE_stepHead);

    /** Behind some token the ways are at most a few; more is a text that nobody writes. */
    private static final int MOST = 20_000;

    /** Where the grammar goes on when a rule ends. */
    private static final class Frame {
        final ATNState follow;
        final @Nullable Frame outer;

        Frame(ATNState follow, @Nullable Frame outer) {
            this.follow = follow;
            this.outer = outer;
        }
    }

    private record Way(ATNState state, @Nullable Frame outer) {}

    /** A token that can stand next, and where the way goes on behind it. */
    private record Step(IntervalSet tokens, boolean name, int rule, Way next) {}

    private final List<Step> steps = new ArrayList<>();
    private boolean whole;
    private int left = MOST;

    private Continuing() {}

    /**
     * What can stand at the end of a text, of which the last statement counts.
     *
     * @param hole true if it is the expression of a hole in a string, and no statement
     * @return empty if the grammar has no way through its words
     */
    public static Optional<Continuation> of(String text, boolean hole) {
        List<CommonToken> tokens = new Tokens(new Spans("", text), new Faults(0), text, 0).read();
        int last = tokens.size() - 1;
        if (last >= 0 && isFirst(tokens, last) && tokens.get(last).getText().equals("drop")) {
            // A name, as long as nothing stands behind it that can be dropped.
            tokens.get(last).setType(GussetLexer.DROP);
        }
        int start = hole ? 0 : start(tokens);
        List<Way> ways = (hole ? List.of(GussetParser.RULE_expr) : BEGINNINGS)
                .stream()
                        .map(rule -> new Way(GRAMMAR.ruleToStartState[rule], null))
                        .toList();
        for (CommonToken token : tokens.subList(start, tokens.size())) {
            Continuing reached = from(ways);
            ways = reached.steps.stream()
                    .filter(s -> s.tokens().contains(token.getType()))
                    .map(Step::next)
                    .toList();
            boolean half = token == tokens.get(last)
                    && token.getType() == GussetLexer.TURNED
                    && reached.steps.stream().anyMatch(s -> s.tokens().contains(GussetLexer.TURNED_UP));
            if (half) {
                return Optional.of(new Continuation(List.of("up"), NameForm.NONE, false));
            }
            if (ways.isEmpty()) {
                return Optional.empty();
            }
        }
        return Optional.of(from(ways).told());
    }

    /** The number of the token that begins the last statement: one behind a brace, or a statement word that stands first on its line. */
    private static int start(List<CommonToken> tokens) {
        for (int i = tokens.size() - 1; i >= 0; i--) {
            int type = tokens.get(i).getType();
            if (type == GussetLexer.LBRACE || type == GussetLexer.RBRACE) {
                return i + 1;
            }
            boolean first =
                    i == 0 || tokens.get(i).getLine() > tokens.get(i - 1).getLine();
            if (first && type >= GussetLexer.DRAFT && type <= GussetLexer.DROP) {
                return i;
            }
        }
        return 0;
    }

    private static boolean isFirst(List<CommonToken> tokens, int i) {
        return i == 0 || tokens.get(i).getLine() > tokens.get(i - 1).getLine();
    }

    private static Continuing from(List<Way> ways) {
        Continuing continuing = new Continuing();
        for (Way way : ways) {
            continuing.follow(way.state(), way.outer(), new HashSet<>());
        }
        return continuing;
    }

    private void follow(ATNState state, @Nullable Frame outer, Set<Way> seen) {
        if (left-- <= 0 || !seen.add(new Way(state, outer))) {
            return;
        }
        if (state instanceof RuleStopState) {
            if (outer == null) {
                whole = true;
            } else {
                follow(outer.follow, outer.outer, seen);
            }
            return;
        }
        for (Transition transition : state.getTransitions()) {
            if (transition instanceof RuleTransition rule) {
                if (rule.ruleIndex == GussetParser.RULE_name) {
                    steps.add(new Step(NAMES, true, state.ruleIndex, new Way(rule.followState, outer)));
                } else {
                    follow(rule.target, new Frame(rule.followState, outer), seen);
                }
            } else if (transition.isEpsilon()) {
                follow(transition.target, outer, seen);
            } else if (transition.label() != null) {
                steps.add(new Step(transition.label(), false, state.ruleIndex, new Way(transition.target, outer)));
            }
        }
    }

    private Continuation told() {
        Set<String> words = new TreeSet<>();
        NameForm name = NameForm.NONE;
        for (Step step : steps) {
            if (step.name()) {
                name = known(step.rule()) ? NameForm.KNOWN : name == NameForm.NONE ? NameForm.NEW : name;
            } else {
                for (int type : step.tokens().toList()) {
                    String word = type == GussetLexer.TURNED_UP ? "turned up" : Tokens.word(type);
                    if (!word.isEmpty() && Character.isLetter(word.charAt(0))) {
                        words.add(word);
                    }
                }
            }
        }
        return new Continuation(List.copyOf(words), name, whole);
    }

    /** False in the rules that have a name of their own to give. */
    private static boolean known(int rule) {
        return switch (rule) {
            case GussetParser.RULE_reference,
                    GussetParser.RULE_part,
                    GussetParser.RULE_solve,
                    GussetParser.RULE_setting,
                    GussetParser.RULE_cut,
                    GussetParser.RULE_mark -> true;
            default -> false;
        };
    }
}
