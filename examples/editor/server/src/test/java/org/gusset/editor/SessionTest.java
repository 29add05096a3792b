package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;
import org.gusset.dsl.Source;
import org.gusset.dsl.format.Formatter;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An editor's sessions with the server, through its own messages, on drafts of the wardrobe's aprons. */
class SessionTest {
    private static final String BLOCK = """
            draft "Apron block"
            measure waist from 50 cm to 150 cm "round the waist"
            choose bib = square_bib out of square_bib, round_bib "shape of the bib"
            let quarter = waist / 4
            let depth = 60 cm if bib is square_bib else 50 cm
            piece Base {
              point top = origin
              point side = top right quarter
              point low = side down depth
              point foot = top down depth
              line waistline = top to side
              line edge = side to low
              line hem = low to foot
              line fold_edge = foot to top
              outline waistline, edge, hem, fold_edge
              allow 1 cm
              cut 1 on fold fold_edge
              grain along fold_edge
            }
            """;
    private static final String APRON = """
            draft "Kitchen apron"
            measure waist from 50 cm to 150 cm "round the waist"
            use "block.gusset" as block
            let half = waist / 2 + block.quarter
            piece Front traced from block.Base {
              let drop = length(waistline) / 2
              change line hem = low to foot
            }
            check half + Front.drop > 10 cm "The apron is too narrow."
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private Editor editor;

    @BeforeEach
    void start() {
        try {
            java.nio.file.Files.writeString(
                    folder.resolve("cast.csv"), "measure, Ottilie Fenn, Barnaby Crake\nwaist, 72 cm, 98 cm\n");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        editor = new Editor(folder, Map.of("measures", "cast.csv", "body", "Ottilie Fenn", "delay", 1));
        editor.save("block.gusset", BLOCK);
        editor.save("apron.gusset", APRON);
    }

    @AfterEach
    void end() {
        assertThat(editor.trouble).as("what the server had to log").isEmpty();
        editor.close();
    }

    private Hover hover(String name, Position at) {
        return Editor.get(editor.remote().getTextDocumentService().hover(new HoverParams(editor.id(name), at)));
    }

    private String told(String name, Position at) {
        return hover(name, at).getContents().getRight().getValue();
    }

    private List<CompletionItem> complete(String name, int offset) {
        return Editor.get(editor.remote()
                        .getTextDocumentService()
                        .completion(new CompletionParams(editor.id(name), Editor.position(editor.text(name), offset))))
                .getRight()
                .getItems();
    }

    /** The names that are offered first. */
    private List<String> first(List<CompletionItem> items) {
        return items.stream()
                .filter(i -> i.getSortText().startsWith("0"))
                .map(CompletionItem::getLabel)
                .toList();
    }

    /** Types words at the end of a piece of the block and tells what is offered behind them. */
    private List<CompletionItem> offered(String words) {
        String text = BLOCK.replace("  allow 1 cm\n", "  allow 1 cm\n  " + words + "\n");
        editor.replace("block.gusset", text);
        return complete("block.gusset", text.indexOf(words) + words.length());
    }

    private List<? extends Location> references(String name, Position at) {
        return Editor.get(editor.remote()
                .getTextDocumentService()
                .references(new ReferenceParams(editor.id(name), at, new ReferenceContext(true))));
    }

    private List<CodeAction> actions(String name, Range range) {
        return Editor.get(editor.remote()
                        .getTextDocumentService()
                        .codeAction(new CodeActionParams(editor.id(name), range, new CodeActionContext(List.of()))))
                .stream()
                .map(a -> a.getRight())
                .toList();
    }

    @Test
    void aMistakeIsToldWhileItIsTypedAndItsHintMendsIt() {
        editor.open("block.gusset", BLOCK);
        assertThat(editor.messages("block.gusset")).isEmpty();
        int at = BLOCK.indexOf("side down") + 3;
        editor.type("block.gusset", at, at + 1, "");
        List<org.eclipse.lsp4j.Diagnostic> told = editor.messages("block.gusset");
        assertThat(told).hasSize(1);
        assertThat(told.get(0).getCode().getLeft()).isEqualTo("NAM001");
        assertThat(told.get(0).getMessage().getLeft()).contains("sid").contains("Did you mean `side`?");
        assertThat(told.get(0).getRange()).isEqualTo(new Range(new Position(8, 14), new Position(8, 17)));
        CodeAction fix = actions("block.gusset", told.get(0).getRange()).get(0);
        assertThat(fix.getTitle()).isEqualTo("Did you mean `side`?");
        editor.apply(fix.getEdit());
        assertThat(editor.text("block.gusset")).isEqualTo(BLOCK);
        assertThat(editor.messages("block.gusset")).isEmpty();
    }

    /** By hand: 72 cm / 4 = 18 cm. */
    @Test
    void hoveringTellsTheValueForTheChosenBodyAndItsSum() {
        editor.open("block.gusset", BLOCK);
        String quarter = told("block.gusset", editor.at("block.gusset", "quarter", 2));
        assertThat(quarter)
                .contains("**quarter**: value, a length")
                .contains("18 cm for Ottilie Fenn")
                .contains("72 cm / 4");
        assertThat(told("block.gusset", editor.at("block.gusset", "waist /", 1)))
                .contains("measure", "round the waist", "72 cm for Ottilie Fenn");
        assertThat(told("block.gusset", editor.at("block.gusset", "low to", 1))).contains("18 cm right, 60 cm down");
        assertThat(told("block.gusset", editor.at("block.gusset", "waistline,", 1)))
                .contains("18 cm long");
        assertThat(hover("block.gusset", editor.at("block.gusset", "cut 1", 1))).isNull();
        editor.remote()
                .getWorkspaceService()
                .didChangeConfiguration(new org.eclipse.lsp4j.DidChangeConfigurationParams(
                        Map.of("gusset", Map.of("body", "Barnaby Crake", "unit", "mm"))));
        assertThat(told("block.gusset", editor.at("block.gusset", "quarter", 1)))
                .contains("245 mm for Barnaby Crake");
    }

    @Test
    void completionOffersWhatFitsInKindAndDimensionFirst() {
        editor.open("block.gusset", BLOCK);
        assertThat(first(offered("point knee = top toward ")))
                .contains("side", "low", "foot", "top")
                .doesNotContain("waistline", "quarter", "Base");
        assertThat(first(offered("point knee = "))).contains("side", "low").doesNotContain("quarter", "hem");
        assertThat(first(offered("join whole = "))).contains("edge", "hem").doesNotContain("top", "quarter");
        assertThat(first(offered("let knee = "))).contains("quarter", "waist").doesNotContain("side", "hem");
        assertThat(first(offered("point knee = top right ")))
                .contains("quarter", "waist")
                .doesNotContain("side", "hem");
        assertThat(first(offered("let knee = quarter + ")))
                .contains("waist", "quarter")
                .doesNotContain("top", "hem");
        assertThat(first(offered("join whole = hem, ")))
                .contains("edge", "waistline")
                .doesNotContain("top", "quarter");
        assertThat(first(offered("let knee = 3 cm if bib is "))).containsExactlyInAnyOrder("square_bib", "round_bib");
        assertThat(first(offered("let knee = distance(")))
                .contains("top", "side")
                .doesNotContain("hem", "waist");
        assertThat(first(offered("let knee = length(Base.")))
                .contains("hem", "edge")
                .doesNotContain("top");
        assertThat(first(offered("not"))).contains("notch", "point", "let").doesNotContain("measure", "seam");
        assertThat(offered("# a note about qu")).isEmpty();
        assertThat(offered("label \"a word")).isEmpty();
        assertThat(offered("label \"a length of {"))
                .extracting(CompletionItem::getLabel)
                .contains("quarter");
    }

    @Test
    void definitionsAndReferencesGoThroughBothFiles() {
        editor.open("apron.gusset", APRON);
        Position quarter = editor.at("apron.gusset", "quarter", 1);
        List<? extends Location> places = Editor.get(editor.remote()
                        .getTextDocumentService()
                        .definition(new DefinitionParams(editor.id("apron.gusset"), quarter)))
                .getLeft();
        assertThat(places).hasSize(1);
        assertThat(places.get(0).getUri()).isEqualTo(editor.uri("block.gusset"));
        assertThat(places.get(0).getRange().getStart()).isEqualTo(new Position(3, 4));
        assertThat(references("apron.gusset", quarter)).hasSize(3);
        editor.open("block.gusset", BLOCK);
        assertThat(references("block.gusset", editor.at("block.gusset", "quarter", 1)))
                .as("asked from the file that knows nothing of the other")
                .hasSize(3);
    }

    /** By the Language Server Protocol 3.17, a server that wants to hear of changed folders says so, and so does one of saved texts. */
    @Test
    void foldersOfTheEditorComeAndGo(@TempDir Path other) {
        assertThat(editor.initialized
                        .getCapabilities()
                        .getWorkspace()
                        .getWorkspaceFolders()
                        .getChangeNotifications()
                        .getRight())
                .isTrue();
        assertThat(editor.initialized
                        .getCapabilities()
                        .getTextDocumentSync()
                        .getRight()
                        .getSave()
                        .getLeft())
                .isTrue();
        editor.open("block.gusset", BLOCK);
        Position quarter = editor.at("block.gusset", "quarter", 1);
        assertThat(references("block.gusset", quarter)).hasSize(3);
        WorkspaceFolder first = new WorkspaceFolder(SourceNames.uri(folder), "drafts");
        WorkspaceFolder second = new WorkspaceFolder(SourceNames.uri(other), "other");
        foldersChange(List.of(second), List.of());
        assertThat(references("block.gusset", quarter)).as("both folders").hasSize(3);
        assertThat(told("block.gusset", quarter)).contains("18 cm for Ottilie Fenn");
        foldersChange(List.of(), List.of(first));
        assertThat(references("block.gusset", quarter)).as("the other alone").hasSize(2);
    }

    private void foldersChange(List<WorkspaceFolder> added, List<WorkspaceFolder> removed) {
        editor.remote()
                .getWorkspaceService()
                .didChangeWorkspaceFolders(
                        new DidChangeWorkspaceFoldersParams(new WorkspaceFoldersChangeEvent(added, removed)));
    }

    @Test
    void aTextThatIsClosedLeavesNoMessagesBehind() {
        editor.open("block.gusset", BLOCK.replace("waist / 4", "wiast / 4"));
        assertThat(editor.messages("block.gusset")).hasSize(1);
        assertThat(editor.close("block.gusset")).isEmpty();
    }

    /** By the Language Server Protocol 3.17: 0 if the end was announced, else 1. */
    @Test
    void theServerEndsWellOnlyIfTheEndWasAnnounced() {
        List<Integer> codes = new ArrayList<>();
        new GussetServer(codes::add).exit();
        GussetServer announced = new GussetServer(codes::add);
        Editor.get(announced.shutdown());
        announced.exit();
        assertThat(codes).containsExactly(1, 0);
    }

    @Test
    void aNameIsWrittenAnewInBothFilesAndTheDraftsStaySound() {
        editor.open("block.gusset", BLOCK);
        editor.open("apron.gusset", APRON);
        assertThat(editor.messages("apron.gusset")).isEmpty();
        for (String name : List.of("quarter", "waist", "Base", "hem", "waistline")) {
            String anew = name + "_anew";
            int edits = editor.apply(Editor.get(editor.remote()
                    .getTextDocumentService()
                    .rename(new RenameParams(editor.id("block.gusset"), editor.at("block.gusset", name, 1), anew))));
            assertThat(edits).as(name).isGreaterThanOrEqualTo(2);
            assertThat(editor.text("apron.gusset")).contains(anew);
            assertThat(editor.text("block.gusset")).contains(anew);
            if (name.equals("waist")) {
                // The table of the body has the old name, and a message says so.
                assertThat(editor.messages("block.gusset")).isNotEmpty();
                editor.save("cast.csv", "measure, Ottilie Fenn\nwaist_anew, 72 cm\n");
                editor.remote()
                        .getWorkspaceService()
                        .didChangeWatchedFiles(new org.eclipse.lsp4j.DidChangeWatchedFilesParams(List.of()));
                editor.type("block.gusset", 0, 0, " ");
                editor.type("apron.gusset", 0, 0, " ");
            }
        }
        editor.type("apron.gusset", 0, 0, " ");
        assertThat(editor.messages("apron.gusset")).isEmpty();
        assertThat(editor.messages("block.gusset")).isEmpty();
    }

    @Test
    void aNameIsRefusedIfTheDraftWouldNotBeSoundWithIt() {
        editor.open("apron.gusset", APRON + "strip Band long half wide 6 cm { cut 1 }\nlet over = length(Band.top)\n");
        for (String bad : List.of("waist", "notch", "2nd", "a b", "")) {
            assertThatThrownBy(() -> Editor.get(editor.remote()
                            .getTextDocumentService()
                            .rename(new RenameParams(
                                    editor.id("apron.gusset"), editor.at("apron.gusset", "half", 1), bad))))
                    .as("half becomes `" + bad + "`")
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining(
                            bad.equals("waist") || bad.equals("notch") ? "would not be sound" : "is no name");
        }
        assertThatThrownBy(() -> Editor.get(editor.remote()
                        .getTextDocumentService()
                        .prepareRename(new PrepareRenameParams(
                                editor.id("apron.gusset"), editor.at("apron.gusset", "top", 1)))))
                .hasMessageContaining("a name that the language gives");
    }

    @Test
    void aDraftIsLaidOutInOneEditAndAgainInNone() {
        String tidy = Formatter.format(Source.of("block.gusset", BLOCK)).value().orElseThrow();
        String untidy = tidy.replace("  point side", "     point side").replace("\n", "\r\n");
        editor.open("block.gusset", untidy);
        DocumentFormattingParams ask =
                new DocumentFormattingParams(editor.id("block.gusset"), new FormattingOptions(2, true));
        List<? extends TextEdit> edits =
                Editor.get(editor.remote().getTextDocumentService().formatting(ask));
        assertThat(edits).hasSize(1);
        assertThat(edits.get(0).getNewText().length()).as("only what differs").isLessThan(20);
        editor.apply("block.gusset", edits);
        assertThat(editor.text("block.gusset")).isEqualTo(tidy.replace("\n", "\r\n"));
        assertThat(Editor.get(editor.remote().getTextDocumentService().formatting(ask)))
                .isEmpty();
    }

    @Test
    void theOutlineHasPiecesWithWhatLiesInThem() {
        editor.open("block.gusset", BLOCK);
        List<DocumentSymbol> outline = Editor.get(editor.remote()
                        .getTextDocumentService()
                        .documentSymbol(new DocumentSymbolParams(editor.id("block.gusset"))))
                .stream()
                .map(s -> s.getRight())
                .toList();
        assertThat(outline)
                .extracting(DocumentSymbol::getName)
                .containsExactly("waist", "bib", "quarter", "depth", "Base");
        assertThat(outline.get(4).getChildren())
                .extracting(DocumentSymbol::getName)
                .containsExactly("top", "side", "low", "foot", "waistline", "edge", "hem", "fold_edge");
        assertThat(outline.get(2).getDetail()).isEqualTo("value, 18 cm");
    }

    @Test
    void theOutlineHasTheStepsOfAPiece() {
        String stepped = BLOCK.replace(
                "  outline waistline",
                "  step \"At the side {quarter}\" {\n    point pin = side\n  }\n  outline waistline");
        editor.open("block.gusset", stepped);
        List<DocumentSymbol> base = Editor.get(editor.remote()
                        .getTextDocumentService()
                        .documentSymbol(new DocumentSymbolParams(editor.id("block.gusset"))))
                .get(4)
                .getRight()
                .getChildren();
        assertThat(base).extracting(DocumentSymbol::getName).endsWith("fold_edge", "At the side …");
        DocumentSymbol step = base.get(base.size() - 1);
        assertThat(step.getChildren()).extracting(DocumentSymbol::getName).containsExactly("pin");
    }

    /** Lines and columns of the protocol count UTF-16 units: a reel of thread (U+1F9F5) is two of them. */
    @Test
    void lettersBeyondTheFirstPlaneCountTwo() {
        String reel = new String(Character.toChars(0x1F9F5));
        String text = BLOCK.replace(
                "  allow 1 cm\n", "  allow 1 cm\n  say \"" + reel + reel + " {quarter} wide\" # " + reel + "\n");
        editor.open("block.gusset", text);
        Position at = editor.at("block.gusset", "quarter} wide", 1);
        assertThat(at.getCharacter()).isEqualTo("  say \"".length() + 4 + " {".length());
        assertThat(hover("block.gusset", at).getRange())
                .isEqualTo(new Range(at, new Position(at.getLine(), at.getCharacter() + "quarter".length())));
        editor.apply(Editor.get(editor.remote()
                .getTextDocumentService()
                .rename(new RenameParams(editor.id("block.gusset"), at, "fourth"))));
        assertThat(editor.text("block.gusset")).isEqualTo(text.replace("quarter", "fourth"));
        int reels = editor.text("block.gusset").indexOf(reel);
        editor.type("block.gusset", reels, reels + 2, "");
        assertThat(editor.messages("block.gusset")).isEmpty();
        assertThat(editor.server()
                        .document(editor.uri("block.gusset"))
                        .orElseThrow()
                        .text())
                .isEqualTo(editor.text("block.gusset"));
    }

    @Test
    void namesAreColouredByWhatTheyMean() {
        editor.open("block.gusset", BLOCK);
        List<Integer> data = Editor.get(editor.remote()
                        .getTextDocumentService()
                        .semanticTokensFull(new SemanticTokensParams(editor.id("block.gusset"))))
                .getData();
        List<String> lines = BLOCK.lines().toList();
        List<String> seen = new ArrayList<>();
        int line = 0;
        int column = 0;
        for (int i = 0; i < data.size(); i += 5) {
            column = data.get(i) == 0 ? column + data.get(i + 1) : data.get(i + 1);
            line += data.get(i);
            String word = lines.get(line).substring(column, column + data.get(i + 2));
            seen.add(word + " " + Reading.COLOURS.get(data.get(i + 3)) + " " + data.get(i + 4));
        }
        assertThat(seen)
                .startsWith(
                        "waist parameter 3",
                        "bib variable 1",
                        "square_bib enumMember 2",
                        "square_bib enumMember 3",
                        "round_bib enumMember 3",
                        "quarter variable 1",
                        "waist parameter 2",
                        "depth variable 1",
                        "bib variable 0",
                        "square_bib enumMember 2",
                        "Base class 1",
                        "top variable 1")
                .contains("waistline property 1", "waistline property 0");
    }

    @Test
    void valuesStandBesideDefinitions() {
        editor.open("block.gusset", BLOCK);
        List<InlayHint> hints = Editor.get(editor.remote()
                .getTextDocumentService()
                .inlayHint(new InlayHintParams(
                        editor.id("block.gusset"), new Range(new Position(0, 0), new Position(99, 0)))));
        assertThat(hints)
                .extracting(h -> h.getLabel().getLeft())
                .containsExactly(
                        "= 72 cm",
                        "= 18 cm",
                        "= 60 cm",
                        "= 18 cm long",
                        "= 60 cm long",
                        "= 18 cm long",
                        "= 60 cm long");
        assertThat(hints.get(1).getPosition()).isEqualTo(new Position(3, "let quarter".length()));
    }

    @Test
    void aBodyThatIsNotThereIsToldAndTakesNothingElseAway() {
        editor.remote()
                .getWorkspaceService()
                .didChangeConfiguration(
                        new org.eclipse.lsp4j.DidChangeConfigurationParams(Map.of("gusset", Map.of("body", "Nobody"))));
        editor.open("block.gusset", BLOCK);
        assertThat(editor.messages("block.gusset"))
                .extracting(d -> d.getMessage().getLeft())
                .singleElement()
                .asString()
                .contains("There is no body `Nobody`", "Ottilie Fenn", "Barnaby Crake");
        assertThat(told("block.gusset", editor.at("block.gusset", "quarter", 1)))
                .contains("a length");
    }

    @Test
    void whatIsWrongInAFileThatIsUsedIsToldWhereItIsUsed() {
        editor.open("apron.gusset", APRON);
        assertThat(editor.messages("apron.gusset")).isEmpty();
        editor.open("block.gusset", BLOCK.replace("waist / 4", "wiast / 4"));
        assertThat(editor.messages("block.gusset")).hasSize(1);
        editor.type("apron.gusset", 0, 0, " ");
        assertThat(editor.messages("apron.gusset")).singleElement().satisfies(d -> {
            assertThat(d.getMessage().getLeft()).startsWith("In block.gusset, line 4: ");
            assertThat(d.getRange().getStart().getLine()).isEqualTo(2);
            CodeAction fix = actions("apron.gusset", d.getRange()).get(0);
            assertThat(fix.getTitle()).isEqualTo("Did you mean `waist`?");
            editor.apply(fix.getEdit());
            assertThat(editor.text("block.gusset"))
                    .as("mended where it is wrong")
                    .isEqualTo(BLOCK);
        });
        assertThat(editor.messages("block.gusset")).isEmpty();
    }

    /** Advice that one edit cannot carry out, and choices of which only the drafter knows the right one. */
    @Test
    void hintsThatNeedMoreThanOneEditAreCarriedOutToo() {
        editor.open("apron.gusset", APRON.replace("half", "Half"));
        assertThat(editor.messages("apron.gusset")).singleElement().satisfies(d -> {
            CodeAction fix = actions("apron.gusset", d.getRange()).get(0);
            assertThat(fix.getTitle()).isEqualTo("Call it `half`, here and wherever it is used.");
            assertThat(fix.getIsPreferred()).isTrue();
            editor.apply(fix.getEdit());
        });
        assertThat(editor.text("apron.gusset")).isEqualTo(APRON);
        String twin = BLOCK + "piece Twin traced from Base {\n}\nlet low_edge = length(hem)\n";
        editor.open("block.gusset", twin);
        List<CodeAction> which = editor.messages("block.gusset").stream()
                .filter(d -> d.getMessage().getLeft().contains("Say which"))
                .flatMap(d -> actions("block.gusset", d.getRange()).stream())
                .filter(a -> a.getTitle().startsWith("Write"))
                .toList();
        assertThat(which).extracting(CodeAction::getTitle).containsExactly("Write `Base.hem`.", "Write `Twin.hem`.");
        assertThat(which).extracting(CodeAction::getIsPreferred).containsOnly(false);
        editor.apply(which.get(1).getEdit());
        assertThat(editor.text("block.gusset")).endsWith("length(Twin.hem)\n");
        editor.replace(
                "block.gusset",
                Formatter.format(Source.of("b", BLOCK)).value().orElseThrow().replace("  allow", "\tallow"));
        CodeAction blanks = editor.messages("block.gusset").stream()
                .filter(d -> d.getCode().getLeft().equals("LNT011"))
                .flatMap(d -> actions("block.gusset", d.getRange()).stream())
                .findFirst()
                .orElseThrow();
        assertThat(blanks.getKind()).isEqualTo("quickfix");
        editor.apply(blanks.getEdit());
        assertThat(editor.text("block.gusset")).doesNotContain("\t");
    }

    @Test
    void whatChangesInOneTextIsToldInTheOthersThatUseIt() {
        editor.open("apron.gusset", APRON);
        assertThat(editor.messages("apron.gusset")).isEmpty();
        editor.open("block.gusset", BLOCK);
        assertThat(editor.messages("block.gusset")).isEmpty();
        int at = BLOCK.indexOf("quarter");
        // Nobody touches the apron.
        editor.type("block.gusset", at, at + 7, "fourth");
        editor.until(
                "apron.gusset",
                told -> told.stream().anyMatch(d -> d.getMessage().getLeft().contains("quarter")));
        editor.type("block.gusset", at, at + 6, "quarter");
        editor.until("apron.gusset", List::isEmpty);
        int quarter = BLOCK.indexOf("waist / 4") + 8;
        editor.type("block.gusset", quarter, quarter + 1, "x");
        editor.until("apron.gusset", told -> told.size() == 1);
        assertThat(editor.messages("block.gusset")).hasSize(1);
        // What was not saved is gone with the text.
        assertThat(editor.close("block.gusset")).isEmpty();
        editor.until("apron.gusset", List::isEmpty);
    }

    /** By hand: 72 cm / 3 = 24 cm, 80 cm / 3 = 26.67 cm. */
    @Test
    void whatAnotherProgramWritesIsSeen() throws java.io.IOException {
        editor.open("apron.gusset", APRON);
        Position quarter = editor.at("apron.gusset", "quarter", 1);
        assertThat(told("apron.gusset", quarter)).contains("18 cm for Ottilie Fenn, as block.gusset has it");
        editor.save("block.gusset", BLOCK.replace("waist / 4", "waist / 3"));
        assertThat(told("apron.gusset", quarter)).contains("24 cm for Ottilie Fenn");
        editor.save("cast.csv", "measure, Ottilie Fenn, Barnaby Crake, Nobody Else\nwaist, 80 cm, 98 cm, 70 cm\n");
        assertThat(told("apron.gusset", quarter)).contains("26.67 cm for Ottilie Fenn");
        assertThat(editor.registered)
                .as("by the Language Server Protocol 3.17 an editor watches files if it is asked to")
                .singleElement()
                .satisfies(r -> assertThat(r.getMethod()).isEqualTo("workspace/didChangeWatchedFiles"));
        editor.save("block.gusset", BLOCK.replace("let quarter", "let fourth"));
        editor.remote()
                .getWorkspaceService()
                .didChangeWatchedFiles(new org.eclipse.lsp4j.DidChangeWatchedFilesParams(List.of()));
        editor.until("apron.gusset", told -> !told.isEmpty());
    }

    @Test
    void hoveringTellsWhatAFunctionAndARuleGive() {
        String text = BLOCK
                + "rule half(around length) = around / 2 \"by hand\"\nlet middle = half(waist) + length(Base.hem)\n";
        editor.open("block.gusset", text);
        assertThat(told("block.gusset", editor.at("block.gusset", "length(Base", 1)))
                .startsWith("**length(path, ...)**: function, gives length")
                .contains("how long the paths are as drawn");
        assertThat(told("block.gusset", editor.at("block.gusset", "half(waist", 1)))
                .contains("rule half(around length) = around / 2");
        editor.type("block.gusset", 0, 0, "# length(x)\n");
        assertThat(hover("block.gusset", new Position(0, 4))).as("in a comment").isNull();
    }

    /** RFC 3986 has blanks written as %20; some editors leave them, and some name the machine. */
    @Test
    void aFileIsKnownHoweverTheEditorWritesItsName() {
        Path file = Path.of("/drafts/act one/apron é.gusset");
        for (String uri : List.of(
                "file:///drafts/act%20one/apron%20%C3%A9.gusset",
                "file:///drafts/act%20one/apron%20%c3%a9.gusset",
                "file:///drafts/act one/apron é.gusset",
                "file://localhost/drafts/act%20one/apron%20%C3%A9.gusset",
                "file:/drafts/act%20one/apron%20%C3%A9.gusset")) {
            assertThat(SourceNames.path(uri)).as(uri).contains(file);
        }
        assertThat(SourceNames.path("untitled:Untitled-1")).isEmpty();
        assertThat(SourceNames.path("file://elsewhere/drafts/a.gusset")).isEmpty();
        assertThat(SourceNames.path("%%% no name")).isEmpty();
    }
}
