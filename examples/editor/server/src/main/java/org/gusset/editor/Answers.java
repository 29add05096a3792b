package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.names.Use;
import org.jspecify.annotations.Nullable;

/** What the editor tells of texts and asks about them. Texts are put right at once; answers are worked out by the desk. */
final class Answers implements TextDocumentService {
    private final Workplace workplace;
    private final Desk desk;
    private final Consumer<String> check;

    Answers(Workplace workplace, Desk desk, Consumer<String> check) {
        this.workplace = workplace;
        this.desk = desk;
        this.check = check;
    }

    // ---- texts

    @Override
    public void didOpen(DidOpenTextDocumentParams params) {
        TextDocumentItem item = params.getTextDocument();
        workplace.shelf().put(Document.of(item.getUri(), item.getText(), item.getVersion()));
        checkSoon(item.getUri());
    }

    @Override
    public void didChange(DidChangeTextDocumentParams params) {
        String uri = params.getTextDocument().getUri();
        workplace.shelf().document(uri).ifPresent(before -> {
            Integer version = params.getTextDocument().getVersion();
            workplace
                    .shelf()
                    .put(before.changed(params.getContentChanges(), version == null ? before.version() + 1 : version));
            checkSoon(uri);
        });
    }

    @Override
    public void didClose(DidCloseTextDocumentParams params) {
        String uri = params.getTextDocument().getUri();
        workplace.shelf().close(uri);
        checkSoon(uri);
    }

    @Override
    public void didSave(DidSaveTextDocumentParams params) {
        workplace.changed();
        workplace.shelf().documents().forEach(d -> checkSoon(d.uri()));
    }

    private void checkSoon(String uri) {
        desk.soon(uri, workplace.options().delay(), () -> check.accept(uri));
    }

    // ---- answers

    private <T extends @Nullable Object> CompletableFuture<T> ask(
            String what, TextDocumentIdentifier text, T otherwise, Function<Analysis, T> answer) {
        String uri = text.getUri();
        return desk.ask(what, otherwise, () -> {
            Optional<Analysis> analysis = workplace.analysis(uri);
            return analysis.isPresent() ? answer.apply(analysis.get()) : otherwise;
        });
    }

    /** The protocol's answer where there is nothing to tell. */
    @SuppressWarnings("NullAway")
    private static <T extends @Nullable Object> T nothing() {
        return null;
    }

    private static int offset(Analysis analysis, Position position) {
        return analysis.document().lines().offset(position);
    }

    private static Optional<Use> use(Analysis analysis, Position position) {
        return analysis.names().at(analysis.document().name(), offset(analysis, position));
    }

    @Override
    public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(CompletionParams params) {
        return ask(
                "completion",
                params.getTextDocument(),
                Either.forRight(new CompletionList()),
                a -> Either.forRight(Completing.at(a, offset(a, params.getPosition()), workplace)));
    }

    @Override
    public CompletableFuture<@Nullable Hover> hover(HoverParams params) {
        return this.<@Nullable Hover>ask(
                "hover",
                params.getTextDocument(),
                nothing(),
                a -> Reading.hover(a, offset(a, params.getPosition()), workplace)
                        .orElse(null));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> definition(
            DefinitionParams params) {
        return ask("definition", params.getTextDocument(), Either.forLeft(List.of()), a -> {
            List<Location> places = use(a, params.getPosition()).stream()
                    .flatMap(u -> location(u.named().place(), a).stream())
                    .toList();
            return Either.forLeft(places);
        });
    }

    @Override
    public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
        boolean definitions = params.getContext() == null || params.getContext().isIncludeDeclaration();
        return ask(
                "references",
                params.getTextDocument(),
                List.of(),
                a -> use(a, params.getPosition()).stream()
                        .flatMap(u -> workplace.everywhere(a.document(), u).stream())
                        .filter(u -> definitions || !u.defines())
                        .flatMap(u -> location(u.place(), a).stream())
                        .toList());
    }

    private Optional<Location> location(Span place, Analysis analysis) {
        return new Telling(analysis, workplace).location(place);
    }

    @Override
    public CompletableFuture<@Nullable Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>> prepareRename(
            PrepareRenameParams params) {
        return this.<@Nullable Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>>ask(
                "prepare rename", params.getTextDocument(), nothing(), a -> {
                    try {
                        Use use = Changing.renamed(a, offset(a, params.getPosition()));
                        return Either3.forFirst(a.document().lines().range(use.place()));
                    } catch (Changing.Refused refused) {
                        throw refused(refused);
                    }
                });
    }

    @Override
    public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
        return ask("rename", params.getTextDocument(), new WorkspaceEdit(), a -> {
            try {
                return Changing.rename(a, offset(a, params.getPosition()), params.getNewName(), workplace);
            } catch (Changing.Refused refused) {
                throw refused(refused);
            }
        });
    }

    private static ResponseErrorException refused(Changing.Refused why) {
        return new ResponseErrorException(
                new ResponseError(ResponseErrorCode.RequestFailed, String.valueOf(why.getMessage()), null));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
        return ask("formatting", params.getTextDocument(), List.of(), a -> Changing.laidOut(a.document()));
    }

    @Override
    public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
            DocumentSymbolParams params) {
        return ask("outline", params.getTextDocument(), List.of(), a -> {
            List<Either<SymbolInformation, DocumentSymbol>> symbols = new ArrayList<>();
            Reading.outline(a).forEach(s -> symbols.add(Either.forRight(s)));
            return symbols;
        });
    }

    @Override
    public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
        return ask("code actions", params.getTextDocument(), List.of(), a -> {
            List<String> only =
                    params.getContext() == null || params.getContext().getOnly() == null
                            ? List.of()
                            : params.getContext().getOnly();
            Stream<CodeAction> actions = Mending.actions(a, params.getRange(), workplace).stream();
            return actions.filter(c -> only.isEmpty() || only.stream().anyMatch(c.getKind()::startsWith))
                    .map(c -> Either.<Command, CodeAction>forRight(c))
                    .toList();
        });
    }

    @Override
    public CompletableFuture<SemanticTokens> semanticTokensFull(SemanticTokensParams params) {
        return ask("colours", params.getTextDocument(), new SemanticTokens(List.of()), Reading::colours);
    }

    @Override
    public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
        return ask(
                "values",
                params.getTextDocument(),
                List.of(),
                a -> workplace.options().values() ? Reading.values(a, params.getRange()) : List.of());
    }
}
