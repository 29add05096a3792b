package org.gusset.editor;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersOptions;
import org.eclipse.lsp4j.WorkspaceServerCapabilities;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
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
    private final IntConsumer leave;
    private volatile @Nullable LanguageClient client;
    private volatile boolean watches;
    private volatile boolean over;

    /** @param leave what is done when the editor has said that it is over; takes 0, or 1 if the editor did not announce it */
    public GussetServer(IntConsumer leave) {
        this.leave = leave;
    }

    @Override
    public void connect(LanguageClient editor) {
        client = editor;
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
        folders(opened(params));
        workplace.options(Options.defaults().with(params.getInitializationOptions()));
        watches = isAskedToWatch(params.getCapabilities());
        desk.open();
        return CompletableFuture.completedFuture(
                new InitializeResult(capabilities(), new ServerInfo("gusset-language-server")));
    }

    /** The folders that are open; older editors know of one at the most. */
    @SuppressWarnings("deprecation")
    private static List<Path> opened(InitializeParams params) {
        if (params.getWorkspaceFolders() != null) {
            return paths(params.getWorkspaceFolders());
        }
        return Optional.ofNullable(params.getRootUri()).flatMap(SourceNames::path).stream()
                .toList();
    }

    private static boolean isAskedToWatch(@Nullable ClientCapabilities editor) {
        WorkspaceClientCapabilities work = editor == null ? null : editor.getWorkspace();
        DidChangeWatchedFilesCapabilities files = work == null ? null : work.getDidChangeWatchedFiles();
        return files != null && Boolean.TRUE.equals(files.getDynamicRegistration());
    }

    private static List<Path> paths(List<WorkspaceFolder> folders) {
        return folders.stream()
                .flatMap(f -> SourceNames.path(f.getUri()).stream())
                .toList();
    }

    /** The folders that are open; tables of measures are named from the first. */
    private void folders(List<Path> folders) {
        workplace.shelf().folders(folders);
        workplace.root(folders.stream().findFirst());
    }

    private static ServerCapabilities capabilities() {
        ServerCapabilities can = new ServerCapabilities();
        TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
        sync.setOpenClose(true);
        sync.setChange(TextDocumentSyncKind.Incremental);
        sync.setSave(true);
        can.setTextDocumentSync(sync);
        WorkspaceFoldersOptions folders = new WorkspaceFoldersOptions();
        folders.setSupported(true);
        folders.setChangeNotifications(true);
        can.setWorkspace(new WorkspaceServerCapabilities(folders));
        can.setCompletionProvider(new CompletionOptions(false, List.of(".", " ", "(", "{", "\"", "/")));
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
        LanguageClient editor = client;
        if (watches && editor != null) {
            List<FileSystemWatcher> files = Stream.of("**/*.gusset", "**/*.csv")
                    .map(f -> new FileSystemWatcher(Either.forLeft(f)))
                    .toList();
            editor.registerCapability(new RegistrationParams(List.of(new Registration(
                    "gusset-files",
                    "workspace/didChangeWatchedFiles",
                    new DidChangeWatchedFilesRegistrationOptions(files)))));
        }
    }

    @Override
    public void setTrace(SetTraceParams params) {
        // The server writes no trace of its own.
    }

    /** A text as the server has it. */
    Optional<Document> document(String uri) {
        return workplace.shelf().document(uri);
    }

    /** Tells the editor what is wrong with a text, in its newest state; with nothing if it is closed. */
    private void check(String uri) {
        Optional<Document> open = workplace.shelf().document(uri);
        List<org.eclipse.lsp4j.Diagnostic> all = open.map(d -> new Telling(workplace.analysis(d), workplace).all())
                .orElse(List.of());
        Optional<Integer> version = open.map(Document::version);
        boolean newest = version.equals(workplace.shelf().document(uri).map(Document::version));
        LanguageClient editor = client;
        if (editor != null && newest && !over) {
            editor.publishDiagnostics(new PublishDiagnosticsParams(uri, all, version.orElse(null)));
        }
        // What is wrong with other open texts may have changed with this one.
        workplace.outdated().forEach(this::checkSoon);
    }

    private void checkSoon(Document document) {
        desk.soon(document.uri(), workplace.options().delay(), () -> check(document.uri()));
    }

    private void checkAll() {
        workplace.shelf().documents().forEach(this::checkSoon);
    }

    private void trouble(String words) {
        LanguageClient editor = client;
        if (editor != null && !over) {
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
                Set<Path> now = new LinkedHashSet<>(workplace.shelf().folders());
                paths(params.getEvent().getRemoved()).forEach(now::remove);
                now.addAll(paths(params.getEvent().getAdded()));
                folders(List.copyOf(now));
                checkAll();
            }
        };
    }

    @Override
    public CompletableFuture<@Nullable Object> shutdown() {
        close();
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void exit() {
        int code = over ? 0 : 1;
        close();
        leave.accept(code);
    }

    @Override
    public void close() {
        over = true;
        desk.close();
    }
}
