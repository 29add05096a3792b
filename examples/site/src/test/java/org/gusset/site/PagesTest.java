package org.gusset.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every page of the site has, by the HTML standard and by WCAG 2.2 as far as it can be read off a page. */
class PagesTest {
    @Test
    void everyPageIsWholeAndCarriesNothingFromElsewhere() {
        BuiltSite.pages().forEach((name, page) -> {
            assertThat(page.select("html").attr("lang")).as(name).isEqualTo("en");
            assertThat(page.title()).as(name).isNotBlank();
            assertThat(page.select("h1")).as(name + " has one title").hasSize(1);
            assertThat(page.select("main")).as(name).hasSize(1);
            assertThat(page.select("nav:not([aria-label])")).as(name).isEmpty();
            assertThat(page.select("a.skip").attr("href")).as(name).isEqualTo("#content");
            assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
                    .as(name)
                    .startsWith("default-src 'none';")
                    .doesNotContain("unsafe");
            assertThat(page.select("script:not([src]), style, [style], [onclick], [onload], iframe, object"))
                    .as(name)
                    .isEmpty();
            for (Element loaded : page.select("script[src], link[href], img[src]")) {
                assertThat(loaded.attr("src") + loaded.attr("href")).as(name).doesNotContain(":");
            }
            for (Element image : page.select("img")) {
                assertThat(image.attr("alt")).as(name + " " + image).isNotBlank();
            }
            assertThat(page.select("[id]").eachAttr("id")).as(name).doesNotHaveDuplicates();
            assertThat(page.select("pre:not([tabindex]), div.wide:not([tabindex])"))
                    .as(name)
                    .isEmpty();
        });
    }

    @Test
    void titlesTellPagesOfOneSectionApart() {
        assertThat(BuiltSite.pages().entrySet().stream()
                        .filter(e -> e.getKey().startsWith("docs/"))
                        .map(e -> e.getValue().title())
                        .toList())
                .doesNotHaveDuplicates();
    }

    /** The parser of jsoup follows the HTML standard and tells where a page leaves it. */
    @Test
    void pagesAreWellFormed() throws IOException {
        for (String name : BuiltSite.pages().keySet()) {
            if (name.startsWith("docs/diagnostics/P")
                    || name.matches("(index|search|docs/(gallery|README|tutorial/.*|reference/.*))\\.html")) {
                Parser parser = Parser.htmlParser().setTrackErrors(5);
                parser.parseInput(Files.readString(BuiltSite.folder().resolve(name)), "");
                assertThat(parser.getErrors().toString()).as(name).isEqualTo("[]");
            }
        }
    }

    @Test
    void codeIsShownAsItIsWritten() {
        Pattern fence = Pattern.compile("(?ms)^```\\w*\n(.*?)^```$");
        Repository repository = new Repository(BuiltSite.ROOT);
        for (String place : List.of("docs/reference/language.md", "docs/tutorial/2-back.md", "DEVELOPERS.md")) {
            Document page = BuiltSite.page(Addresses.of(place, false));
            List<String> shown =
                    page.select("pre code").stream().map(Element::wholeText).toList();
            Matcher block = fence.matcher(repository.text(place));
            int count = 0;
            while (block.find()) {
                count++;
                assertThat(shown).as(place).contains(block.group(1));
            }
            assertThat(count).as(place).isPositive();
        }
    }

    @Test
    void whatIsSaidToTestsIsNotShown() {
        BuiltSite.pages().forEach((name, page) -> {
            if (!name.startsWith("examples/") && !name.equals("DEVELOPERS.html")) {
                assertThat(page.select("main").text()).as(name).doesNotContain("<!-- snippet:", "<!-- holds:");
            }
            assertThat(page.html()).as(name).doesNotContain("<!--");
        });
    }

    @Test
    void everyPageOfMarkdownIsInTheIndexOfTheSearch() throws IOException {
        String index = Files.readString(BuiltSite.folder().resolve("assets/search-index.js"));
        assertThat(index).startsWith("window.gussetPages = [\n").doesNotContain("\u2028", "<");
        Repository repository = new Repository(BuiltSite.ROOT);
        for (String place : repository.pages()) {
            MarkdownPage page = MarkdownPage.read(place, repository.text(place));
            assertThat(index).contains("\n[" + SearchIndex.quoted(Addresses.of(place, false)) + ",");
            for (MarkdownPage.Headline headline : page.headlines()) {
                if (headline.level() > 1) {
                    assertThat(index)
                            .contains("[" + SearchIndex.quoted(headline.anchor()) + ","
                                    + SearchIndex.quoted(headline.words()) + ",");
                }
            }
        }
    }

    /** With stand-ins for Maven and Java that only note what they were asked. */
    @Test
    void theCommandBuildsTheModuleAndThenTheSite(@TempDir Path folder) throws IOException, InterruptedException {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        for (String name : List.of("mvn", "java")) {
            Path program = Files.writeString(
                    bin.resolve(name), "#!/bin/sh\necho \"" + name + " $*\" >> '" + folder.resolve("asked") + "'\n");
            assertThat(program.toFile().setExecutable(true)).isTrue();
        }
        Path script = BuiltSite.ROOT.resolve("examples/site/build");
        ProcessBuilder run = new ProcessBuilder(
                "sh", script.toString(), folder.resolve("site").toString());
        run.environment().put("PATH", bin + ":/usr/bin:/bin");
        run.environment().remove("JAVA_HOME");
        Process process = run.redirectErrorStream(true).start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isZero();
        List<String> asked = Files.readAllLines(folder.resolve("asked"));
        assertThat(asked).hasSize(2);
        assertThat(asked.get(0)).startsWith("mvn ").contains("-pl examples/site -am", " package");
        assertThat(asked.get(1))
                .startsWith("java ")
                .contains("examples/site/target/classes:", "examples/site/target/lib/*")
                .endsWith(SiteBuild.class.getName() + " " + BuiltSite.ROOT + " " + folder.resolve("site") + " --api");
    }

    @Test
    void whatCannotBeBuiltIsToldInWords(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        String root = BuiltSite.ROOT.toString();
        assertThat(told(List.of(root))).isEqualTo("2 site: SiteBuild ROOT OUT [--api]");
        assertThat(told(List.of(root, folder.toString(), "--apii"))).startsWith("2 site: SiteBuild ROOT OUT");
        assertThat(told(List.of(folder.toString(), folder.toString())))
                .startsWith("1 site: there is no docs/README.md");
        assertThat(told(List.of(root, file.resolve("site").toString())))
                .startsWith("1 site: a file could not be read or written: ")
                .contains(file.toString());
    }

    private static String told(List<String> words) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        return SiteBuild.run(words, out, out) + " "
                + bytes.toString(StandardCharsets.UTF_8).strip();
    }

    @Test
    void aHeadingWithinAQuotationIsNoPartOfItsOwn() {
        SearchIndex index = new SearchIndex();
        index.add("a.html", "", MarkdownPage.read("a.md", "# A\n\nfirst\n\n> ## Quoted\n\n## Last\n\nlast words\n"));
        assertThat(index.script())
                .contains("[\"last\",\"Last\",\"last words\"]")
                .doesNotContain("[\"quoted\"");
    }

    /** A quotation mark behind a number stands for inches; it begins no text. */
    @Test
    void inchMarksBelongToTheirNumbers() {
        Colours colours = Colours.of("// ---- statement words\nLET: 'let';\n// ---- directions");
        assertThat(colours.block("let a = 9 1/2\" + 4½\" \"words\"", "gusset"))
                .contains("<span class=\"statement\">let</span>")
                .contains("<span class=\"number\">1/2&quot;</span>")
                .contains("<span class=\"number\">4½&quot;</span>")
                .contains("<span class=\"text\">&quot;words&quot;</span>");
    }

    @Test
    void onlyAReadmeIsTheFirstPageOfItsFolder() {
        assertThat(Addresses.of("docs/README.md", false)).isEqualTo("docs/index.html");
        assertThat(Addresses.of("docs/NOREADME.md", false)).isEqualTo("docs/NOREADME.html");
    }

    @Test
    void textsAreQuotedAsJavaScriptHasThem() {
        assertThat(SearchIndex.quoted("a \"b\" \\ c\n\td </script>\u2028e"))
                .isEqualTo("\"a \\\"b\\\" \\\\ c d \\u003c/script>\\u2028e\"");
    }

    @Test
    void waysBetweenPages() {
        Map<String, String> ways = Map.of(
                "index.html docs/a/b.html", "docs/a/b.html",
                "docs/a/b.html index.html", "../../index.html",
                "docs/a/b.html docs/a/c.html", "c.html",
                "docs/a/b.html docs/d/e.html", "../d/e.html");
        ways.forEach((pair, way) -> assertThat(Addresses.between(pair.split(" ")[0], pair.split(" ")[1]))
                .isEqualTo(way));
        assertThat(Addresses.resolved("docs/how-to/a.md", "../../examples/x.csv"))
                .isEqualTo("examples/x.csv");
    }
}
