package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is offered while the shipped smock is written: the forms are those of the reference of the language. */
class CompletionTest {
    private static final Path DRAFTS = Path.of(System.getProperty("gusset.root", "../../.."), "examples", "drafts");
    private static final String SMOCK = "smock.gusset";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private Editor editor;
    private String smock;

    @BeforeEach
    void start() throws IOException {
        Files.createDirectories(folder.resolve("rules"));
        for (String name : List.of(SMOCK, "rules/bands.gusset", "rules/necks.gusset")) {
            Files.copy(DRAFTS.resolve(name), folder.resolve(name));
        }
        smock = Files.readString(folder.resolve(SMOCK));
        editor = new Editor(folder, Map.of("delay", 1));
        editor.open(SMOCK, smock);
    }

    @AfterEach
    void end() {
        assertThat(editor.trouble).as("what the server had to log").isEmpty();
        editor.close();
    }

    private List<CompletionItem> complete(String text, int offset) {
        if (!text.equals(editor.text(SMOCK))) {
            editor.replace(SMOCK, text);
        }
        return Editor.get(editor.remote()
                        .getTextDocumentService()
                        .completion(new CompletionParams(editor.id(SMOCK), Editor.position(text, offset))))
                .getRight()
                .getItems();
    }

    /** What is offered behind words that are written in front of others, in the order in which it is shown. */
    private List<String> offered(String words, String before) {
        int at = smock.indexOf(before);
        return complete(smock.substring(0, at) + words + "\n" + smock.substring(at), at + words.length()).stream()
                .sorted(java.util.Comparator.comparing(CompletionItem::getSortText))
                .map(CompletionItem::getLabel)
                .toList();
    }

    private List<String> inPocket(String words) {
        return offered(words, "  outline mouth");
    }

    private List<String> inFile(String words) {
        return offered(words, "finished chest_round");
    }

    @Test
    void behindAPointStandMovesAndNoNames() {
        assertThat(inPocket("  point x = top_in "))
                .contains("right", "down", "toward", "past", "swept", "angled", "square", "mirrored", "turned")
                .doesNotContain("mouth", "chest", "length", "cm", "heading");
        assertThat(inPocket("  grain ")).containsExactly("along", "bias", "from");
        assertThat(inPocket("  cut 1 on ")).containsExactly("fold");
        assertThat(inPocket("  cut 2 "))
                .contains("pair", "layers", "from", "on")
                .doesNotContain("cm", "shell");
        assertThat(inPocket("  notch mouth ")).containsExactly("at", "halfway", "nearest");
        assertThat(inFile("cloth lining wide 1 m folded ")).containsExactly("lengthwise", "twice");
        assertThat(inFile("seam x = Front.side to Back.side "))
                .containsExactly("ease", "matching", "meeting", "pressed", "within");
    }

    @Test
    void whereANameIsGivenNoneIsOffered() {
        for (String words : List.of("measure ", "let ", "choose ", "seam ", "finished ", "use ", "strip ")) {
            assertThat(inFile(words)).as(words).isEmpty();
        }
        assertThat(inFile("rule ")).containsExactly("arc", "curve", "line");
        assertThat(inFile("rule half(around "))
                .contains("length", "angle", "number", "point")
                .doesNotContain("chest");
        assertThat(inPocket("  let y = 3")).as("a number").isEmpty();
    }

    @Test
    void whatCannotBeMeantIsNotOffered() {
        assertThat(inPocket("  outline mouth, "))
                .startsWith("base", "mouth", "side_in_edge", "side_out")
                .doesNotContain("chest", "top_in", "shell", "length");
        assertThat(inPocket("  cut 1 from ")).containsExactly("shell");
        assertThat(inPocket("  let y = 3 cm if neckline is ")).containsExactly("round", "vee", "not");
        assertThat(inFile("piece Yoke traced from ")).startsWith("Back", "Band").doesNotContain("Yoke", "chest");
        assertThat(inFile("finished f = quarter over "))
                .startsWith("arm_length")
                .doesNotContain("mouth", "shell");
        assertThat(inFile("seam x = Front.side to Back.side matching Front.")).startsWith("edge_low", "edge_top");
        assertThat(inPocket("  let y = y + ")).as("made of itself").doesNotContain("y");
        assertThat(offered("  change curve ", "  change line hem"))
                .contains("armhole", "neck_edge")
                .doesNotContain("tip");
        assertThat(inPocket("  point x = top_in right 3 "))
                .startsWith("cm", "ft", "in")
                .doesNotContain("deg");
        assertThat(inPocket("  point x = top_in angled 3 ")).contains("deg").doesNotContain("cm");
    }

    /** The rule neck_width of the smock takes a length; the reference of functions says what the others take. */
    @Test
    void argumentsAreOfTheKindThatIsTaken() {
        List<String> lengths = inPocket("  let y = neck_width(");
        assertThat(lengths).contains("chest", "neck").doesNotContain("mouth", "top_in", "origin");
        assertThat(inPocket("  let y = area(")).containsExactly("Back", "Band", "Front", "Pocket", "Sleeve", "to");
        assertThat(inPocket("  let y = distance(top_in, ")).startsWith("low_in").doesNotContain("chest");
    }

    @Test
    void aFileThatIsUsedIsOfferedInItsQuotesAndItsChoicesBehindWith() throws IOException {
        assertThat(inFile("use \"")).containsExactly("rules/bands.gusset", "rules/necks.gusset");
        List<CompletionItem> items = complete("use \"rules/ba", 13);
        CompletionItem bands = items.get(0);
        assertThat(bands.getTextEdit().getLeft().getRange().getStart().getCharacter())
                .isEqualTo(5);
        Files.writeString(
                folder.resolve("block.gusset"),
                "draft \"Block\"\nchoose collar = flat out of flat, stand \"which\"\nlet a = 1 cm\n");
        assertThat(inFile("use \"block.gusset\" as block with ")).containsExactly("collar");
        assertThat(inFile("use \"block.gusset\" as block with collar = ")).startsWith("flat", "stand");
    }

    @Test
    void whatIsTakenReplacesTheWordThatWasBegun() {
        String words = "  let y = length(Back.arm";
        int at = smock.indexOf("  outline mouth");
        String text = smock.substring(0, at) + words + "\n" + smock.substring(at);
        CompletionItem armhole = complete(text, at + words.length()).stream()
                .filter(i -> i.getLabel().equals("armhole"))
                .findFirst()
                .orElseThrow();
        TextEdit edit = armhole.getTextEdit().getLeft();
        editor.apply(SMOCK, List.of(edit));
        assertThat(editor.text(SMOCK)).contains("  let y = length(Back.armhole\n");
    }

    /** Whatever stands in the shipped drafts is offered where it stands, but for numbers and for names that are only being given. */
    @Test
    void everyWordOfTheSmockIsOfferedWhereItStands() {
        String bare = smock.replaceAll("\"[^\"\n]*\"", "\"\"");
        Matcher giving = Pattern.compile(
                        "(?:measure|choose|fit|let|rule|cloth|piece|point|guide|line|curve|unknown|seam"
                                + "|finished)\\s+(\\w+)|= (vee)|out of (\\w+), (\\w+)|\\((girth) length|^(gusset)|turned (up)")
                .matcher(bare);
        Set<Integer> given = new HashSet<>();
        while (giving.find()) {
            for (int group = 1; group <= giving.groupCount(); group++) {
                given.add(giving.start(group));
            }
        }
        int checked = 0;
        int first = 0;
        Matcher found =
                Pattern.compile("(?<![\\p{L}\\p{N}_])[a-zA-Z_][a-zA-Z_0-9]*").matcher(bare);
        while (found.find()) {
            // "turned up" is offered as one.
            if (given.contains(found.start()) || found.group().equals("turned")) {
                continue;
            }
            List<CompletionItem> items = complete(bare, found.start());
            assertThat(items)
                    .as(bare.substring(Math.max(0, found.start() - 60), found.end()))
                    .extracting(CompletionItem::getLabel)
                    .contains(found.group());
            checked++;
            first += items.stream()
                                    .filter(i -> i.getLabel().equals(found.group())
                                            && !i.getSortText().startsWith("5"))
                                    .count()
                            > 0
                    ? 1
                    : 0;
        }
        assertThat(checked).isGreaterThan(400);
        assertThat(first).as("not among the last").isGreaterThan(checked * 99 / 100);
    }
}
