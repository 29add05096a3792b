package org.gusset.workbench.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;
import org.junit.jupiter.api.Test;

/** A page is one document that fetches nothing, holds every step, and takes no orders from a draft. */
class LessonPageTest {
    private static final Pattern TAG = Pattern.compile("<([a-zA-Z][\\w:-]*)((?:\\s+[^\\s=>]+(?:=\"[^\"]*\")?)*)\\s*>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([^\\s=]+)(?:=\"([^\"]*)\")?");
    private static final String PLAIN =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"><title>t</title></svg>";

    private static LessonFrame frame(int number, String title, String says, String told, String svg) {
        return new LessonFrame(number, "Back", title, List.of(says), List.of(new LessonFrame.Told("nape", told)), svg);
    }

    private static LessonContent lesson(LessonFrame... frames) {
        return new LessonContent("Smock", "Maren Oddway", "", "f00d", List.of(frames));
    }

    /** Everything of the page but the text of its script and style. */
    private static String markup(String page) {
        return page.replaceAll("(?s)<(script|style)>.*?</\\1>", "<$1></$1>");
    }

    private record Tag(String name, List<String[]> attributes) {}

    private static List<Tag> tags(String page) {
        List<Tag> tags = new ArrayList<>();
        Matcher tag = TAG.matcher(markup(page));
        while (tag.find()) {
            List<String[]> attributes = new ArrayList<>();
            Matcher attribute = ATTRIBUTE.matcher(tag.group(2));
            while (attribute.find()) {
                attributes.add(new String[] {attribute.group(1), attribute.group(2) == null ? "" : attribute.group(2)});
            }
            tags.add(new Tag(tag.group(1), attributes));
        }
        return tags;
    }

    private static List<String> values(String page, String... names) {
        Set<String> wanted = Set.of(names);
        List<String> values = new ArrayList<>();
        for (Tag tag : tags(page)) {
            for (String[] attribute : tag.attributes()) {
                if (wanted.contains(attribute[0])) {
                    values.add(attribute[1]);
                }
            }
        }
        return values;
    }

    private static Drawing drawing(String draft) {
        return Gusset.compile(Source.of("hostile.gusset", draft))
                .orThrow()
                .evaluate(
                        Measurements.of("\"><img src=x onerror=alert(7)>").with("chest", Quantity.length(900)),
                        Choices.none())
                .orThrow();
    }

    private static final String HOSTILE = """
            gusset 1
            draft "</title></script><script>alert(1)</script>"  "<img src=x onerror=alert(2)>"
            measure chest from 60 cm to 170 cm "' onmouseover='alert(3)"
            piece Back {
              step "<!-- <script>alert('4')</script> \\" onclick=\\"alert(4)" {
                point nape = origin
                point a = nape right chest / 4
                point b = a down 10 cm
                line top = nape to a
                line side = a to b
                line slope = b to nape
                say "</p></section></main></body></html><script>alert(5)</script> &lt;b&gt; {chest}"
              }
              step "</style><svg onload=alert(6)>" {
                point c = b down 5 cm
                say "<a href=\\"javascript:alert(8)\\">press me</a>"
              }
              outline top, side, slope
              allow 1 cm
              cut 1
              grain along side
            }
            """;

    @Test
    void whatADraftSaysIsTextAndNothingElse() {
        LessonContent lesson = PlainFrames.lesson(drawing(HOSTILE));
        String page = LessonPage.of(lesson);
        assertThat(tags(page))
                .extracting(Tag::name)
                .doesNotContain("img", "b", "iframe", "object", "link")
                .filteredOn(n -> n.equals("script"))
                .hasSize(1);
        List<String> attributeNames = tags(page).stream()
                .flatMap(t -> t.attributes().stream())
                .map(a -> a[0])
                .toList();
        assertThat(attributeNames)
                .noneMatch(n -> n.toLowerCase(java.util.Locale.ROOT).startsWith("on"));
        assertThat(values(page, "href", "src", "action")).allMatch(v -> v.startsWith("#"));
        assertThat(page)
                .contains("&lt;script&gt;alert(5)&lt;/script&gt; &amp;lt;b&amp;gt; 90 cm")
                .contains("&lt;a href=&quot;javascript:alert(8)&quot;&gt;press me&lt;/a&gt;")
                .contains("&lt;!-- &lt;script&gt;alert(&#39;4&#39;)&lt;/script&gt; &quot; onclick=&quot;alert(4)")
                .contains("for &quot;&gt;&lt;img src=x onerror=alert(7)&gt;");
        // What a parser of HTML would take for the end of an element or of a comment.
        assertThat(markup(page)).doesNotContain("<!--").doesNotContain("<script>alert");
    }

    @Test
    void theSheetsOfTheProjectMayStandInAPage() {
        Drawing drawing = drawing(HOSTILE);
        String svg = Svg.piece(drawing, drawing.pieces().get(0), SheetOptions.defaults());
        String page = LessonPage.of(lesson(frame(1, "One", "", "", svg), frame(2, "Two", "", "", svg)));
        List<String> ids = values(page, "id");
        assertThat(ids).doesNotHaveDuplicates().contains("step-1-sheet-title", "step-2-sheet-title");
        assertThat(page).contains("aria-labelledby=\"step-2-sheet-title\"", "<desc id=\"step-2-sheet-description\">");
    }

    @Test
    void idsAreUniqueAndEveryReferenceMeetsOne() {
        String page = LessonPage.of(PlainFrames.lesson(drawing(HOSTILE)));
        List<String> ids = values(page, "id");
        assertThat(ids).doesNotHaveDuplicates();
        Set<String> known = new LinkedHashSet<>(ids);
        Set<String> meant = new LinkedHashSet<>();
        values(page, "aria-labelledby", "aria-describedby", "aria-controls", "for")
                .forEach(v -> meant.addAll(List.of(v.split(" "))));
        values(page, "href").forEach(v -> meant.add(v.substring(1)));
        assertThat(meant).isNotEmpty();
        assertThat(known).containsAll(meant);
        // A gradient of one picture must not be taken for that of another.
        assertThat(page)
                .contains(".look-1 #step-1-frame { stroke: url(#step-1-shade) }")
                .contains(".look-2 #step-2-frame { stroke: url(#step-2-shade) }");
    }

    @Test
    void sharedStylesAreWrittenOnce() {
        String svg =
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><style>.new, .old > path { stroke: #123456 }</style></svg>";
        String other = svg.replace("#123456", "#654321");
        String page = LessonPage.of(
                lesson(frame(1, "One", "", "", svg), frame(2, "Two", "", "", svg), frame(3, "Three", "", "", other)));
        assertThat(page)
                .containsOnlyOnce(".look-1 .new, .look-1 .old > path { stroke: #123456 }")
                .containsOnlyOnce(".look-2 .new, .look-2 .old > path { stroke: #654321 }");
        assertThat(tags(page)).extracting(Tag::name).filteredOn("style"::equals).hasSize(1);
    }

    @Test
    void everyStepIsThereAndInTheList() {
        LessonContent lesson = PlainFrames.lesson(drawing(HOSTILE));
        String page = LessonPage.of(lesson);
        assertThat(lesson.frames()).hasSize(2);
        for (int i = 1; i <= lesson.frames().size(); i++) {
            assertThat(page).containsOnlyOnce("<section class=\"step\" id=\"step-" + i + "\"");
            assertThat(page).containsOnlyOnce("<a href=\"#step-" + i + "\">");
        }
        for (LessonFrame frame : lesson.frames()) {
            assertThat(page).contains(Html.escape(frame.title()));
            frame.says().forEach(words -> assertThat(page).contains(Html.escape(words)));
            frame.told().forEach(told -> assertThat(page).contains(Html.escape(told.sentence())));
        }
    }

    @Test
    void aPageOfNoStepsSaysSo() {
        assertThat(LessonPage.of(lesson())).contains("This draft has no steps to teach.");
    }

    @Test
    void thePageAsksNobodyForAnything() {
        String page = LessonPage.of(PlainFrames.lesson(drawing(HOSTILE)));
        assertThat(values(page, "src", "srcset", "data", "poster", "background", "formaction"))
                .isEmpty();
        assertThat(page)
                .doesNotContainPattern("@import|url\\((?!#)|<link|importScripts|XMLHttpRequest|WebSocket|sendBeacon")
                // The namespace of SVG is left to the parser, so that not even that address stands here.
                .doesNotContainPattern("https?:");
        assertThat(page)
                .doesNotContain("<form")
                .contains("form-action &#39;none&#39;")
                .doesNotContain("connect-src");
    }

    /** The hashes computed afresh, as the specification of content security policies has it: SHA-256 of the text in base64. */
    @Test
    void thePolicyLetsInTheStyleAndTheScriptByTheirHashes() throws NoSuchAlgorithmException {
        String page = LessonPage.of(PlainFrames.lesson(drawing(HOSTILE)));
        Matcher policy = Pattern.compile("Content-Security-Policy\" content=\"([^\"]*)\"")
                .matcher(page);
        assertThat(policy.find()).isTrue();
        assertThat(policy.group(1)).startsWith("default-src &#39;none&#39;;").doesNotContain("unsafe");
        for (String element : List.of("style", "script")) {
            List<MatchResult> inline = Pattern.compile("(?s)<" + element + ">(.*?)</" + element + ">")
                    .matcher(page)
                    .results()
                    .toList();
            assertThat(inline).hasSize(1);
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(inline.get(0).group(1).getBytes(StandardCharsets.UTF_8));
            assertThat(policy.group(1))
                    .contains(
                            element + "-src &#39;sha256-" + Base64.getEncoder().encodeToString(hash) + "&#39;");
        }
    }

    @Test
    void aPictureThatDoesMoreThanDrawIsRefused() {
        String open = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">";
        for (String inner : List.of(
                "<script>alert(1)</script>",
                "<foreignObject/>",
                "<image href=\"a.png\"/>",
                "<a href=\"#x\"/>",
                "<path onclick=\"alert(1)\"/>",
                "<path ONLOAD=\"alert(1)\"/>",
                "<use href=\"other.svg#x\"/>",
                "<use xlink:href=\"data:image/svg+xml,x\"/>",
                "<path fill=\"url(other.svg#x)\"/>",
                "<path style=\"fill: URL( 'x' )\"/>",
                "<style>@import 'x';</style>",
                "<style>a { background: url(x) }</style>",
                "<animate attributeName=\"href\"/>")) {
            assertThatThrownBy(() -> LessonPage.of(lesson(frame(1, "One", "", "", open + inner + "</svg>"))))
                    .as(inner)
                    .isInstanceOf(IllegalArgumentException.class);
        }
        for (String svg : List.of(
                "<svg", "<html/>", "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><svg>&x;</svg>")) {
            assertThatThrownBy(() -> LessonPage.of(lesson(frame(1, "One", "", "", svg))))
                    .as(svg)
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void stylesOnElementsBecomeAttributesSinceThePolicyLetsNoneIn() {
        String page = LessonPage.of(
                lesson(
                        frame(
                                1,
                                "One",
                                "",
                                "",
                                "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0\" style=\"fill:none; stroke : #abcdef;\"/></svg>")));
        assertThat(page).contains("<path d=\"M0 0\" fill=\"none\" stroke=\"#abcdef\"></path>");
        assertThat(values(page, "style")).isEmpty();
    }

    @Test
    void namesLeadToTheirPlacesInTheirOwnPicture() {
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"><g class=\"name\" data-name=\"nape\"/>"
                + "<g class=\"name\" id=\"h\" data-name=\"hem_fold\"/></svg>";
        String page = LessonPage.of(lesson(frame(1, "One", "", "", svg), frame(2, "Two", "", "", svg)));
        assertThat(page)
                .contains("<a class=\"key\" href=\"#step-2-at-1\" data-name=\"nape\">nape</a>")
                .contains("<a class=\"key\" href=\"#step-2-h\" data-name=\"hem_fold\">hem_fold</a>")
                .contains("<g class=\"name\" data-name=\"nape\" id=\"step-2-at-1\">");
        // A name without a place in the picture leads nowhere.
        assertThat(LessonPage.of(lesson(frame(1, "One", "", "", PLAIN)))).contains("<dt>nape</dt>");
    }

    @Test
    void charactersThatNoPageMayHoldAreReplaced() {
        assertThat(Html.escape("a\u0000b\u000bc\ud800d\uffffe\u0085f"))
                .isEqualTo("a\ufffdb\ufffdc\ufffdd\ufffde\ufffdf");
        assertThat(Html.escape("\ud83e\udea1 9½ \"in\"")).isEqualTo("\ud83e\udea1 9½ &quot;in&quot;");
    }

    @Test
    void theSameLessonGivesTheSamePage() {
        LessonContent lesson = PlainFrames.lesson(drawing(HOSTILE));
        assertThat(LessonPage.of(lesson)).isEqualTo(LessonPage.of(lesson));
    }
}
