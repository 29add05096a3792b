package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.RuleStopState;
import org.antlr.v4.runtime.atn.RuleTransition;
import org.antlr.v4.runtime.atn.Transition;

/** Random sentences of the grammar, as token types, made by walking its network; past a length the shortest way out is taken. */
final class Sentences {
    private static final int FAR = 1_000_000;
    private static final int DEEPEST = 60;

    private final ATN network;
    private final Random random;
    private final int[] shortest;
    private final int wanted;

    /**
     * @param wanted about how many tokens a sentence may have
     */
    Sentences(ATN network, Random random, int wanted) {
        this.network = network;
        this.random = random;
        this.wanted = wanted;
        this.shortest = shortest(network);
    }

    /** The least count of tokens from each state to the end of its rule. */
    private static int[] shortest(ATN network) {
        int[] cost = new int[network.states.size()];
        Arrays.fill(cost, FAR);
        boolean better = true;
        while (better) {
            better = false;
            for (ATNState state : network.states) {
                int least = state instanceof RuleStopState ? 0 : FAR;
                if (!(state instanceof RuleStopState)) {
                    for (Transition transition : state.getTransitions()) {
                        least = Math.min(least, cost(transition, cost));
                    }
                }
                if (least < cost[state.stateNumber]) {
                    cost[state.stateNumber] = least;
                    better = true;
                }
            }
        }
        return cost;
    }

    private static int cost(Transition transition, int[] cost) {
        if (transition instanceof RuleTransition rule) {
            return Math.min(FAR, 1 + cost[rule.target.stateNumber] + cost[rule.followState.stateNumber]);
        }
        return Math.min(FAR, (transition.isEpsilon() ? 0 : 1) + cost[transition.target.stateNumber]);
    }

    List<Integer> next(int rule) {
        List<Integer> tokens = new ArrayList<>();
        walk(rule, tokens, 0);
        return tokens;
    }

    private void walk(int rule, List<Integer> tokens, int depth) {
        ATNState state = network.ruleToStartState[rule];
        while (!(state instanceof RuleStopState)) {
            Transition way = way(state, tokens.size() > wanted || depth > DEEPEST);
            if (way instanceof RuleTransition inner) {
                walk(inner.ruleIndex, tokens, depth + 1);
                state = inner.followState;
            } else {
                if (!way.isEpsilon()) {
                    List<Integer> choice = way.label().toList();
                    tokens.add(choice.get(random.nextInt(choice.size())));
                }
                state = way.target;
            }
        }
    }

    private Transition way(ATNState state, boolean out) {
        Transition[] ways = state.getTransitions();
        if (!out) {
            return ways[random.nextInt(ways.length)];
        }
        Transition best = ways[0];
        for (Transition way : ways) {
            if (cost(way, shortest) < cost(best, shortest)) {
                best = way;
            }
        }
        return best;
    }
}
