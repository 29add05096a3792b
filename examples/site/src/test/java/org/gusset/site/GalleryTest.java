package org.gusset.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** Every shipped draft has its pictures, and they show its pieces. */
class GalleryTest {
    private static final Pattern PIECE = Pattern.compile("(?m)^(piece|strip) (\\w+)");

    private static List<Path> drafts(String folder) throws IOException {
        try (Stream<Path> files = Files.list(BuiltSite.ROOT.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(".gusset")).sorted().toList();
        }
    }

    private static Document svg(Path file) throws IOException {
        return Jsoup.parse(Files.readString(file), "", Parser.xmlParser());
    }

    @Test
    void everyShippedDraftHasAPictureForEachOfTheCast() throws IOException {
        Document page = BuiltSite.page("docs/gallery.html");
        List<Path> drafts = drafts("examples/drafts");
        assertThat(drafts).hasSizeGreaterThan(10);
        List<Path> all = new ArrayList<>(drafts);
        all.addAll(drafts("examples/old-masters"));
        assertThat(page.select(".gallery li")).hasSameSizeAs(all);
        for (Path draft : all) {
            String name = String.valueOf(draft.getFileName()).replace(".gusset", "");
            List<Element> cards = page.select(".gallery li:has(a[href$=\"/" + name + ".gusset.html\"])");
            assertThat(cards).as(name).hasSize(1);
            Element card = cards.get(0);
            List<String> pictures = card.select("a[href$=.svg]").eachAttr("href");
            assertThat(pictures.stream().distinct().count()).as(name).isEqualTo(drafts.contains(draft) ? 4 : 2);
            assertThat(card.select("img").attr("src"))
                    .isEqualTo(card.select("a.picture").attr("href"));
        }
    }

    @Test
    void everyPictureShowsThePiecesOfItsDraftWithoutWordsRunningOut() throws IOException {
        for (Path draft : drafts("examples/drafts")) {
            String name = String.valueOf(draft.getFileName()).replace(".gusset", "");
            Document picture = svg(BuiltSite.folder().resolve("docs/gallery/" + name + "-maren-oddway.svg"));
            List<String> shown = picture.select("g.piece > title").eachText();
            assertThat(shown).as(name).isNotEmpty();
            assertThat(picture.select("g.piece"))
                    .allSatisfy(p -> assertThat(p.select("path, line")).as(name).isNotEmpty());
            assertThat(picture.select("text").eachText()).as(name).containsExactlyElementsOf(shown);
            Matcher piece = PIECE.matcher(Files.readString(draft));
            List<String> written = new ArrayList<>();
            while (piece.find()) {
                written.add(piece.group(2).replace("_", "").toLowerCase(Locale.ROOT));
            }
            assertThat(written)
                    .as(name)
                    .containsAll(shown.stream()
                            .map(s -> s.replace(" ", "").toLowerCase(Locale.ROOT))
                            .toList());
        }
    }
}
