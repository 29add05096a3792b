package org.gusset.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.svg.Svg;
import org.gusset.workbench.MeasureTable;

/**
 * Pictures of the shipped drafts on the cast, and of the drafts after old books on the practice measures of each book, made whenever the
 * site is built.
 */
final class Gallery {
    /** The page on which the pictures stand. */
    static final String PLACE = "docs/gallery.md";

    private static final String FOLDER = "docs/gallery/";
    private static final String DRAFTS = "examples/drafts/";
    private static final String MASTERS = "examples/old-masters/";
    private static final String FIRST = "Maren Oddway";
    private static final Pattern PRACTICE = Pattern.compile("(?m)^\\| \\[([\\w-]+)]\\(\\1\\.gusset\\) \\| ([^|]+) \\|");

    /** One draft, and one picture for each body. */
    private record Card(String place, String title, String note, Map<String, String> pictures, String sheet) {}

    private final Repository repository;
    private final SiteFiles files;
    private final List<Card> drafts = new ArrayList<>();
    private final List<Card> masters = new ArrayList<>();

    /** Draws all pictures. */
    Gallery(Repository repository, SiteFiles files) {
        this.repository = repository;
        this.files = files;
        List<Measurements> cast = bodies("examples/measures/quillhaven.csv");
        for (String place : repository.below(DRAFTS, ".gusset")) {
            if (place.indexOf('/', DRAFTS.length()) < 0) {
                drafts.add(card(place, cast));
            }
        }
        Matcher row = PRACTICE.matcher(repository.text(MASTERS + "README.md"));
        Map<String, String> rows = new LinkedHashMap<>();
        while (row.find()) {
            rows.put(row.group(1), row.group(2).strip());
        }
        List<Measurements> practice = bodies(MASTERS + "practice.csv");
        for (String place : repository.below(MASTERS, ".gusset")) {
            String name = place.substring(MASTERS.length(), place.length() - ".gusset".length());
            masters.add(card(
                    place,
                    practice.stream()
                            .filter(b -> b.body().equals(rows.get(name)))
                            .toList()));
        }
    }

    /**
     * The cards by the words of the comment that stands for them.
     *
     * @param from the page on which they stand
     * @param asks has a file of the project shown; gives its address
     */
    Map<String, String> cards(String from, UnaryOperator<String> asks) {
        return Map.of(
                "pictures: the shipped drafts", list(drafts, from, asks),
                "pictures: after old books", list(masters, from, asks));
    }

    private static String list(List<Card> cards, String from, UnaryOperator<String> asks) {
        StringBuilder out = new StringBuilder("<ul class=\"gallery\">\n");
        for (Card card : cards) {
            String first = card.pictures().containsKey(FIRST)
                    ? FIRST
                    : card.pictures().keySet().iterator().next();
            String picture =
                    Addresses.between(from, String.valueOf(card.pictures().get(first)));
            out.append("<li><a class=\"picture\" href=\"").append(picture).append("\"><img loading=\"lazy\" src=\"");
            out.append(picture).append("\" alt=\"").append(Html.escape(card.title()));
            out.append(": the pieces for ").append(Html.escape(first)).append("\"></a>\n<h3>");
            out.append(Html.escape(card.title())).append("</h3>\n<p>").append(Html.escape(card.note()));
            out.append("</p>\n<p class=\"fetch\">")
                    .append(Html.link(Addresses.between(from, asks.apply(card.place())), "The draft"))
                    .append("; ")
                    .append(Html.link(Addresses.between(from, card.sheet()), "the sheet at true size"));
            if (card.pictures().size() > 1) {
                out.append("; the pieces for ");
                List<String> links = new ArrayList<>();
                card.pictures().forEach((body, at) -> links.add(Html.link(Addresses.between(from, at), body)));
                out.append(String.join(", ", links));
            }
            out.append("</p></li>\n");
        }
        return out.append("</ul>\n").toString();
    }

    private Card card(String place, List<Measurements> bodies) {
        Draft draft = compiled(place);
        String name = place.substring(place.lastIndexOf('/') + 1).replace(".gusset", "");
        Map<String, String> pictures = new LinkedHashMap<>();
        String sheet = "";
        Optional<Drawing> last = Optional.empty();
        for (Measurements body : bodies) {
            Drawing drawing = drawn(
                    place, body, last.map(d -> whole(d, body)).orElseGet(() -> draft.evaluate(body, Choices.none())));
            String who = body.body();
            String address = FOLDER + name + "-" + who.toLowerCase(Locale.ROOT).replace(' ', '-') + ".svg";
            files.text(address, GalleryPicture.of(drawing, draft.title() + ", for " + who));
            pictures.put(who, address);
            if (sheet.isEmpty() || who.equals(FIRST)) {
                sheet = FOLDER + name + "-sheet.svg";
                last = Optional.of(drawing);
            }
        }
        if (last.isEmpty()) {
            throw new IllegalStateException("there is nobody to draw " + place + " for");
        }
        files.text(sheet, Svg.sheet(last.get()));
        return new Card(place, draft.title(), draft.note(), pictures, sheet);
    }

    private static Outcome<Drawing> whole(Drawing before, Measurements body) {
        Drawing drawing = before.with(body);
        return Outcome.of(drawing, drawing.diagnostics());
    }

    /** The drawing, which must be without errors: what the gallery shows can be cut. */
    private static Drawing drawn(String place, Measurements body, Outcome<Drawing> outcome) {
        List<Diagnostic> errors =
                outcome.diagnostics().stream().filter(Diagnostic::isError).toList();
        if (!errors.isEmpty() || outcome.value().isEmpty()) {
            throw new IllegalStateException(place + " cannot be drawn for " + body.body() + ": " + errors);
        }
        return outcome.value().get();
    }

    /** The draft of a file, which may use those beside and below it. */
    private Draft compiled(String place) {
        String folder = place.substring(0, place.lastIndexOf('/') + 1);
        Map<String, String> lent = new LinkedHashMap<>();
        for (String file : repository.below(folder, ".gusset")) {
            lent.put(file.substring(folder.length()), repository.text(file));
        }
        String name = place.substring(folder.length());
        return Gusset.compile(Source.of(name, repository.text(place)), Sources.of(lent))
                .orThrow();
    }

    private List<Measurements> bodies(String place) {
        return MeasureTable.read(place, repository.bytes(place))
                .chart()
                .orThrow()
                .sizes();
    }
}
