package org.gusset.workbench;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Function;
import org.gusset.core.draft.Draft;

/** SHA-256 sums of the shipped drafts' documents, a line each: the sum, the draft, the body, the document. */
final class Sums {
    private Sums() {}

    /** The sums of every shipped draft on every body of the cast. */
    static List<String> ofAll() {
        return ofAll(name -> Fitted.cast());
    }

    /** @param bodies those on whom a draft is drawn, by its name */
    static List<String> ofAll(Function<String, List<String>> bodies) {
        List<String> lines = new ArrayList<>();
        for (String name : Fitted.drafts()) {
            Draft draft = Fitted.draft(name);
            bodies.apply(name).forEach(body -> lines.addAll(of(name, draft, body)));
            StringBuilder card = new StringBuilder();
            ShippedDocuments.card(draft).values().forEach(card::append);
            lines.add(line(card.toString(), name, "every body", "card"));
            lines.add(line(ShippedDocuments.nest(draft), name, "every body", "nest"));
        }
        return lines;
    }

    /** The sums of one draft on one body. */
    static List<String> of(String name, Draft draft, String body) {
        List<String> lines = new ArrayList<>();
        ShippedDocuments.parts(draft, Fitted.body(body))
                .forEach((document, text) -> lines.add(line(text, name, body, document)));
        return lines;
    }

    private static String line(String text, String draft, String body, String document) {
        return sum(text) + "  " + draft.replace(".gusset", "") + ", " + body + ", " + document;
    }

    private static String sum(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
