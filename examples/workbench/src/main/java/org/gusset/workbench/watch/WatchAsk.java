package org.gusset.workbench.watch;

import java.util.List;
import java.util.Map;

/**
 * What a page wants to see.
 *
 * @param body whose card it has, and whose steps it walks through; empty for the first
 * @param beside who is drawn beside
 * @param step the step whose picture is wanted, from 1; 0 for the whole of each piece
 */
record WatchAsk(String body, List<String> beside, int step) {
    private static final int LONGEST = 4000;

    WatchAsk {
        beside = List.copyOf(beside);
    }

    /** What the fields of a form or an address ask for; what they do not say, or say wrongly, is as at first. */
    static WatchAsk of(Map<String, String> fields) {
        String beside = fields.getOrDefault("beside", "");
        String step = fields.getOrDefault("step", "");
        return new WatchAsk(
                fields.getOrDefault("body", ""),
                beside.isEmpty() || beside.length() > LONGEST ? List.of() : List.of(beside.split("\n", -1)),
                step.matches("[0-9]{1,6}") ? Integer.parseInt(step) : 0);
    }
}
