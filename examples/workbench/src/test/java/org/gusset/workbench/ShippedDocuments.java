package org.gusset.workbench;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.chalk.ChalkList;
import org.gusset.core.chalk.Tape;
import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Needs;
import org.gusset.core.draft.Toile;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.svg.Svg;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Paper;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.FormPages;
import org.gusset.svg.sheet.MeasuringCard;
import org.gusset.svg.sheet.SewingSheet;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.style.StyleTable;
import org.gusset.workbench.lesson.LessonPage;

/** All that is drawn and written of a shipped draft for one body, by the name of the document. */
final class ShippedDocuments {
    private static final LengthStyle STYLE = LengthStyle.CM;
    private static final SheetOptions OPTIONS = SheetOptions.defaults().withLengths(STYLE);

    private ShippedDocuments() {}

    /**
     * The SVG documents of a drawing: {@code sheet}, {@code piece Back} and so on, {@code seams}, {@code page 1-1} and so on on A4, and
     * {@code sewing 1}, {@code toile}, {@code lesson 1} and so on, and {@code lay shell} and so on for each cloth.
     */
    static Map<String, String> pictures(Drawing drawing) {
        return pictures(drawing, lays(drawing));
    }

    private static Map<String, String> pictures(Drawing drawing, List<LayPlan> lays) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("sheet", Svg.sheet(drawing));
        Svg.pieces(drawing, OPTIONS).forEach((name, svg) -> all.put("piece " + name, svg));
        all.put("seams", Svg.seams(drawing, OPTIONS));
        Svg.pages(drawing, OPTIONS, PageOptions.of(Paper.parse("A4").orThrow()))
                .orThrow()
                .forEach((name, svg) -> all.put("page " + name, svg));
        all.putAll(form("sewing", FormPages.of(SewingSheet.of(drawing, OPTIONS))));
        all.put("toile", Svg.sheet(SheetContent.toile(drawing, Toile.ALLOWANCE), OPTIONS));
        List<String> lesson = Svg.lesson(drawing, STYLE, OPTIONS);
        for (int i = 0; i < lesson.size(); i++) {
            all.put("lesson " + (i + 1), lesson.get(i));
        }
        for (LayPlan plan : lays) {
            Optional<HaveAnswer> none = Optional.empty();
            all.put("lay " + plan.cloth().name(), Svg.lay(drawing, plan, none, OPTIONS));
        }
        return all;
    }

    /** Plans as they are made at once, on the cloths as the draft describes them; none where a piece is wider than its cloth. */
    private static List<LayPlan> lays(Drawing drawing) {
        return new LayPlanner(LayOptions.defaults(), LaySearch.none())
                .plan(drawing, LayPlanner.cloths(drawing))
                .value()
                .orElseThrow();
    }

    /** What the command line says of the plans. */
    private static String lay(Drawing drawing, List<LayPlan> lays) {
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        LayText told = new LayText(lines, STYLE);
        told.heading(drawing);
        lays.forEach(plan -> told.print(plan, Optional.empty()));
        lines.flush();
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    /** The measuring card of a draft, which is the same for all bodies: {@code card 1}. */
    static Map<String, String> card(Draft draft) {
        return form("card", FormPages.of(MeasuringCard.of(Needs.of(draft, Choices.none()), STYLE)));
    }

    /** All bodies of the cast on one sheet. */
    static String nest(Draft draft) {
        List<Drawing> sizes = Fitted.cast().stream()
                .map(body -> draft.evaluate(Fitted.body(body), Choices.none()).orThrow())
                .toList();
        return Svg.nest(sizes, OPTIONS);
    }

    private static Map<String, String> form(String name, List<Scene> pages) {
        Map<String, String> all = new LinkedHashMap<>();
        for (int i = 0; i < pages.size(); i++) {
            all.put(name + " " + (i + 1), Svg.write(pages.get(i), StyleTable.drafting()));
        }
        return all;
    }

    /** The chalk list as text. */
    static String chalk(Drawing drawing) {
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        new ChalkText(lines, ChalkList.of(drawing, ChalkLine.CUTTING, Tape.of(STYLE.unit())), STYLE).print(drawing);
        lines.flush();
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    /** Every value with all its digits. */
    static String values(Drawing drawing) {
        try {
            return JSON.std.asString(ValuesJson.of(drawing));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The documents of one body in few parts, each with all that belongs to it in a row. */
    static Map<String, String> parts(Draft draft, Measurements body) {
        Drawing drawing = draft.evaluate(body, Choices.none()).orThrow();
        Map<String, StringBuilder> texts = new LinkedHashMap<>();
        List<LayPlan> lays = lays(drawing);
        pictures(drawing, lays)
                .forEach((name, svg) -> texts.computeIfAbsent(part(name), n -> new StringBuilder())
                        .append(svg));
        Map<String, String> all = new LinkedHashMap<>();
        texts.forEach((name, text) -> all.put(name, text.toString()));
        all.put("chalk", chalk(drawing));
        all.put("lay text", lay(drawing, lays));
        all.put("values", values(drawing));
        all.put("lesson page", LessonPage.of(LessonPages.content(drawing, STYLE, OPTIONS)));
        return all;
    }

    private static String part(String document) {
        return switch (document.split(" ", 2)[0]) {
            case "piece" -> "pieces";
            case "page" -> "pages";
            default -> document.split(" ", 2)[0];
        };
    }

    /** Writes the sums of all shipped drafts to the standard output, so that another JDK can be asked for them. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Sums.ofAll(name -> args.length == 0 ? Fitted.cast() : List.of(Fitted.turn(name)))
                .forEach(out::println);
    }
}
