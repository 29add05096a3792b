package org.gusset.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A shipped draft with some of its words and lines changed. */
final class MutatedDraft {
    private static final Pattern TOKEN = Pattern.compile("[\\p{L}_][\\p{L}\\p{Nd}_]*|[0-9.]+|\"[^\"]*\"|\\s+|.");
    private static final List<List<String>> SHIPPED =
            Seeds.SHIPPED.values().stream().map(MutatedDraft::tokens).toList();

    private MutatedDraft() {}

    private static List<String> tokens(String text) {
        List<String> all = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            all.add(matcher.group());
        }
        return List.copyOf(all);
    }

    static String text(Bytes in) {
        List<String> tokens = new ArrayList<>(in.of(SHIPPED));
        for (int i = 1 + in.below(6); i > 0 && tokens.size() > 2; i--) {
            change(tokens, in);
        }
        return String.join("", tokens);
    }

    private static void change(List<String> tokens, Bytes in) {
        int at = place(tokens, in, in.below(4));
        switch (in.below(8)) {
            case 0, 1, 2 -> tokens.set(at, Nasty.written(in));
            case 3 -> tokens.set(at, tokens.get(place(tokens, in, 3)));
            case 4 -> tokens.remove(at);
            case 5 -> tokens.add(at, tokens.get(place(tokens, in, 3)) + " ");
            case 6 -> {
                int other = place(tokens, in, 3);
                String kept = tokens.get(at);
                tokens.set(at, tokens.get(other));
                tokens.set(other, kept);
            }
            default -> {
                int end = at;
                while (end < tokens.size() && !tokens.get(end).contains("\n")) {
                    end++;
                }
                List<String> line = List.copyOf(tokens.subList(at, end));
                if (in.flip()) {
                    tokens.subList(at, end).clear();
                } else {
                    tokens.addAll(end, line);
                }
            }
        }
    }

    /** The next number for kinds 0 to 2, the next word else, from somewhere on. */
    private static int place(List<String> tokens, Bytes in, int kind) {
        int from = (in.below(256) * 256 + in.below(256)) % tokens.size();
        for (int i = 0; i < tokens.size(); i++) {
            int at = (from + i) % tokens.size();
            char first = tokens.get(at).charAt(0);
            if (kind < 3 ? Character.isDigit(first) : !Character.isWhitespace(first)) {
                return at;
            }
        }
        return from;
    }
}
