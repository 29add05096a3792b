package org.gusset.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.jspecify.annotations.Nullable;

/** The server of one editor. It reads drafts and tables of measures, and changes no file: edits go to the editor. */
public final class GussetServer implements LanguageServer, LanguageClientAware, AutoCloseable {
    private final Workplace workplace = new Workplace(new Shelf());
    private final Desk desk = new Desk(this::trouble);
    private final Answers answers = new Answers(workplace, desk, this::check);
    private final Runnable leave;
    private volatile @Nullable LanguageClient client;
    private volatile boolean over;

    /** @param leave what is done when the editor has said that it is over */
    public GussetServer(Runnable leave) {
        this.leave = leave;
    }

    @Override
    public void connect(LanguageClient editor) {
        client = editor;
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
        List<Path> folders = new ArrayList<>();
        if (params.getWorkspaceFolders() != null) {
            for (WorkspaceFolder folder : params.getWorkspaceFolders()) {
                SourceNames.path(folder.getUri()).ifPresent(folders::add);
            }
        }
        workplace.shelf().folders(folders);
        workplace.root(folders.stream().findFirst());
        workplace.options(Options.defaults().with(params.getInitializationOptions()));
        return CompletableFuture.completedFuture(
                new InitializeResult(capabilities(), new ServerInfo("gusset-language-server")));
    }

    private static ServerCapabilities capabilities() {
        ServerCapabilities can = new ServerCapabilities();
        TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
        sync.setOpenClose(true);
        sync.setChange(TextDocumentSyncKind.Incremental);
        can.setTextDocumentSync(sync);
        can.setCompletionProvider(new CompletionOptions(false, List.of(".", " ")));
        can.setHoverProvider(true);
        can.setDefinitionProvider(true);
        can.setReferencesProvider(true);
        RenameOptions rename = new RenameOptions();
        rename.setPrepareProvider(true);
        can.setRenameProvider(rename);
        can.setDocumentFormattingProvider(true);
        can.setDocumentSymbolProvider(true);
        can.setCodeActionProvider(new CodeActionOptions(List.of(CodeActionKind.QuickFix, CodeActionKind.Source)));
        can.setInlayHintProvider(true);
        SemanticTokensWithRegistrationOptions colours =
                new SemanticTokensWithRegistrationOptions(new SemanticTokensLegend(Reading.COLOURS, Reading.MODIFIERS));
        colours.setFull(true);
        can.setSemanticTokensProvider(colours);
        return can;
    }

    @Override
    public void initialized(InitializedParams params) {
        // Nothing waits for it.
    }

    @Override
    public void setTrace(SetTraceParams params) {
        // The server writes no trace of its own.
    }

    /** A text as the server has it. */
    Optional<Document> document(String uri) {
        return workplace.shelf().document(uri);
    }

    /** Tells the editor what is wrong with a text, in its newest state. */
    private void check(String uri) {
        workplace.shelf().document(uri).ifPresent(document -> {
            List<org.eclipse.lsp4j.Diagnostic> all = new Telling(workplace.analysis(document), workplace).all();
            LanguageClient editor = client;
            boolean newest = workplace
                    .shelf()
                    .document(uri)
                    .filter(d -> d.version() == document.version())
                    .isPresent();
            if (editor != null && newest && !over) {
                editor.publishDiagnostics(new PublishDiagnosticsParams(uri, all, document.version()));
            }
        });
    }

    private void checkAll() {
        workplace
                .shelf()
                .documents()
                .forEach(d -> desk.soon(d.uri(), workplace.options().delay(), () -> check(d.uri())));
    }

    private void trouble(String words) {
        LanguageClient editor = client;
        if (editor != null) {
            editor.logMessage(new MessageParams(MessageType.Error, words));
        }
    }

    @Override
    public TextDocumentService getTextDocumentService() {
        return answers;
    }

    @Override
    public WorkspaceService getWorkspaceService() {
        return new WorkspaceService() {
            @Override
            public void didChangeConfiguration(DidChangeConfigurationParams params) {
                workplace.options(workplace.options().with(params.getSettings()));
                checkAll();
            }

            @Override
            public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
                workplace.changed();
                checkAll();
            }

            @Override
            public void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
                List<Path> added = new ArrayList<>();
                params.getEvent()
                        .getAdded()
                        .forEach(f -> SourceNames.path(f.getUri()).ifPresent(added::add));
                workplace.shelf().folders(added);
                Optional<Path> first = added.stream().findFirst();
                first.ifPresent(f -> workplace.root(Optional.of(f)));
            }
        };
    }

    @Override
    public CompletableFuture<Object> shutdown() {
        close();
        return CompletableFuture.completedFuture(new Object());
    }

    @Override
    public void exit() {
        close();
        leave.run();
    }

    @Override
    public void close() {
        over = true;
        desk.close();
    }
}
