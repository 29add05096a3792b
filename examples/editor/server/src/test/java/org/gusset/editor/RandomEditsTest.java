package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever stands in a text, the server goes on: random edits of the shipped drafts, with a random question after each. There are 300,
 * or as many as {@code -Dgusset.editor.edits} says.
 */
class RandomEditsTest {
    private static final int EDITS = Integer.getInteger("gusset.editor.edits", 300);
    private static final long SEED = Long.getLong("gusset.editor.seed", 20261129);
    private static final Path DRAFTS = Path.of(System.getProperty("gusset.root", "../../.."), "examples", "drafts");
    private static final List<String> SCRAPS = List.of(
            "{",
            "}",
            "\"",
            "(",
            ")",
            ".",
            "=",
            ",",
            "\n",
            "\r",
            "\r\n",
            "\t",
            " ",
            "#",
            "\\",
            "½",
            "3 cm",
            "1/0",
            "-",
            "%",
            "piece ",
            "point ",
            "change ",
            "seam s = ",
            "all ",
            "if ",
            "else ",
            "rule f(x length) = f(x)",
            "let x = x\n",
            "use \"../..\" as u\n",
            "step \"",
            "from ",
            "\uD83E\uDDF5",
            "\u0301",
            "\uFEFF",
            "\u2028",
            "\u0000",
            "Ω",
            "“",
            "”",
            "outline ",
            "solve u so that u = u",
            "999999999999999999999999 m",
            "{{{{{{{{",
            "((((((((((");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Test
    void noEditStopsTheServerAndItsTextIsAlwaysTheEditors() throws IOException {
        List<String> names = copyDrafts();
        Random random = new Random(SEED);
        Map<String, Object> options = Map.of("measures", "cast.csv", "delay", 5);
        Files.copy(DRAFTS.resolveSibling("measures").resolve("quillhaven.csv"), folder.resolve("cast.csv"));
        try (Editor editor = new Editor(folder, options)) {
            int each = Math.max(1, EDITS / names.size() + 1);
            int done = 0;
            for (String name : names) {
                String sound = Files.readString(folder.resolve(name));
                editor.open(name, sound);
                for (int i = 0; i < each && done < EDITS; i++, done++) {
                    if (i % 100 == 99) {
                        editor.replace(name, sound);
                    }
                    edit(editor, name, sound, random);
                    ask(editor, name, random);
                }
                assertThat(editor.server()
                                .document(editor.uri(name))
                                .orElseThrow()
                                .text())
                        .as(name + " after " + done + " edits, seed " + SEED)
                        .isEqualTo(editor.text(name));
                editor.messages(name);
                editor.replace(name, sound);
                assertThat(editor.messages(name))
                        .as(name + " is sound again")
                        .noneMatch(d ->
                                d.getCode() != null && d.getCode().getLeft().startsWith("SYN"));
            }
            assertThat(done).isEqualTo(EDITS);
            assertThat(editor.trouble).as("seed " + SEED).isEmpty();
        }
    }

    private List<String> copyDrafts() throws IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.walk(DRAFTS)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".gusset")).sorted().toList()) {
                Path relative = DRAFTS.relativize(file);
                Path copy = folder.resolve(relative.toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
                names.add(relative.toString());
            }
        }
        assertThat(names).hasSizeGreaterThan(10);
        return names;
    }

    private static void edit(Editor editor, String name, String sound, Random random) {
        String text = editor.text(name);
        int from = between(text, random.nextInt(text.length() + 1));
        int to = between(text, Math.min(text.length(), from + (random.nextInt(3) == 0 ? random.nextInt(60) : 0)));
        String put;
        switch (random.nextInt(4)) {
            case 0 -> put = "";
            case 1 -> {
                int start = random.nextInt(sound.length());
                put = sound.substring(start, Math.min(sound.length(), start + random.nextInt(200)));
            }
            default -> put = SCRAPS.get(random.nextInt(SCRAPS.size()));
        }
        editor.type(name, Math.min(from, to), Math.max(from, to), put);
    }

    /** Editors put no cursor between the two signs of a line break. */
    private static int between(String text, int offset) {
        boolean splits =
                offset > 0 && offset < text.length() && text.charAt(offset - 1) == '\r' && text.charAt(offset) == '\n';
        return splits ? offset + 1 : offset;
    }

    private static void ask(Editor editor, String name, Random random) {
        TextDocumentService server = editor.remote().getTextDocumentService();
        String text = editor.text(name);
        Position at = Editor.position(text, between(text, random.nextInt(text.length() + 1)));
        Range range = new Range(at, new Position(at.getLine() + 5, 0));
        CompletableFuture<?> answer = switch (random.nextInt(10)) {
            case 0 -> server.hover(new HoverParams(editor.id(name), at));
            case 1 -> server.completion(new CompletionParams(editor.id(name), at));
            case 2 -> server.definition(new DefinitionParams(editor.id(name), at));
            case 3 -> server.references(new ReferenceParams(editor.id(name), at, new ReferenceContext(true)));
            case 4 -> server.formatting(new DocumentFormattingParams(editor.id(name), new FormattingOptions(2, true)));
            case 5 -> server.documentSymbol(new DocumentSymbolParams(editor.id(name)));
            case 6 -> server.codeAction(new CodeActionParams(editor.id(name), range, new CodeActionContext(List.of())));
            case 7 -> server.semanticTokensFull(new SemanticTokensParams(editor.id(name)));
            case 8 -> server.inlayHint(new InlayHintParams(editor.id(name), range));
            default ->
                // It may be refused, with words; everything else has to be answered.
                server.rename(new RenameParams(editor.id(name), at, "another_" + random.nextInt(99)))
                        .exceptionally(e -> {
                            assertThat(e).isInstanceOf(org.eclipse.lsp4j.jsonrpc.ResponseErrorException.class);
                            return null;
                        });
        };
        Editor.get(answer);
    }
}
