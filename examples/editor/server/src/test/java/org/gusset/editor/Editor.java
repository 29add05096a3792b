package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/** An editor without a screen: it talks to a server through pipes, in the protocol's own messages. */
final class Editor implements LanguageClient, AutoCloseable {
    private static final int PIPE = 1 << 16;
    private static final long PATIENCE = 120;

    private final Path folder;
    private final GussetServer server = new GussetServer(code -> {});
    private final LanguageServer remote;
    private final List<Future<Void>> listening = new ArrayList<>();
    private final List<AutoCloseable> pipes = new ArrayList<>();
    private final Map<String, StringBuilder> texts = new LinkedHashMap<>();
    private final Map<String, Integer> versions = new LinkedHashMap<>();
    private final Map<String, PublishDiagnosticsParams> told = new ConcurrentHashMap<>();
    final List<String> trouble = new CopyOnWriteArrayList<>();
    final List<Registration> registered = new CopyOnWriteArrayList<>();
    final InitializeResult initialized;

    Editor(Path folder, Map<String, Object> options) {
        this.folder = folder;
        try {
            PipedInputStream toServer = new PipedInputStream(PIPE);
            PipedOutputStream fromEditor = new PipedOutputStream(toServer);
            PipedInputStream toEditor = new PipedInputStream(PIPE);
            PipedOutputStream fromServer = new PipedOutputStream(toEditor);
            pipes.addAll(List.of(fromEditor, fromServer, toServer, toEditor));
            Launcher<LanguageClient> serving = Connection.of(server, toServer, fromServer);
            server.connect(serving.getRemoteProxy());
            Launcher<LanguageServer> editing = LSPLauncher.createClientLauncher(this, toEditor, fromEditor);
            listening.add(serving.startListening());
            listening.add(editing.startListening());
            remote = editing.getRemoteProxy();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        InitializeParams params = new InitializeParams();
        params.setWorkspaceFolders(List.of(new WorkspaceFolder(SourceNames.uri(folder), "drafts")));
        params.setInitializationOptions(options);
        WorkspaceClientCapabilities work = new WorkspaceClientCapabilities();
        work.setDidChangeWatchedFiles(new DidChangeWatchedFilesCapabilities(true));
        ClientCapabilities can = new ClientCapabilities();
        can.setWorkspace(work);
        params.setCapabilities(can);
        initialized = get(remote.initialize(params));
        remote.initialized(new InitializedParams());
    }

    LanguageServer remote() {
        return remote;
    }

    GussetServer server() {
        return server;
    }

    static <T> T get(CompletableFuture<T> answer) {
        try {
            return answer.get(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException | TimeoutException e) {
            throw new AssertionError("no answer", e);
        } catch (ExecutionException e) {
            throw new AssertionError(e.getCause());
        }
    }

    String uri(String name) {
        return SourceNames.uri(folder.resolve(name));
    }

    TextDocumentIdentifier id(String name) {
        return new TextDocumentIdentifier(uri(name));
    }

    private StringBuilder known(String name) {
        return Objects.requireNonNull(texts.get(name), name);
    }

    String text(String name) {
        return known(name).toString();
    }

    // ---- what a user does

    void save(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void open(String name, String text) {
        texts.put(name, new StringBuilder(text));
        versions.put(name, 1);
        remote.getTextDocumentService()
                .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri(name), "gusset", 1, text)));
    }

    /** Replaces what stands between two offsets. */
    void type(String name, int from, int to, String put) {
        StringBuilder text = known(name);
        Range range = new Range(position(text.toString(), from), position(text.toString(), to));
        text.replace(from, to, put);
        send(name, new TextDocumentContentChangeEvent(range, put));
    }

    /** Replaces the whole text in one change without a range. */
    void replace(String name, String text) {
        texts.put(name, new StringBuilder(text));
        send(name, new TextDocumentContentChangeEvent(text));
    }

    private void send(String name, TextDocumentContentChangeEvent change) {
        int version = versions.merge(name, 1, Integer::sum);
        remote.getTextDocumentService()
                .didChange(new DidChangeTextDocumentParams(
                        new VersionedTextDocumentIdentifier(uri(name), version), List.of(change)));
    }

    /** Takes an edit as the server gives it; of files that are not open only the edits are counted. */
    int apply(WorkspaceEdit edit) {
        int count = 0;
        for (Map.Entry<String, List<TextEdit>> entry : edit.getChanges().entrySet()) {
            count += entry.getValue().size();
            texts.keySet().stream()
                    .filter(n -> uri(n).equals(entry.getKey()))
                    .findFirst()
                    .ifPresent(n -> apply(n, entry.getValue()));
        }
        return count;
    }

    void apply(String name, List<? extends TextEdit> edits) {
        List<TextEdit> backward = new ArrayList<>(edits);
        backward.sort(
                Comparator.<TextEdit>comparingInt(e -> offset(name, e.getRange().getStart()))
                        .reversed());
        for (TextEdit edit : backward) {
            type(
                    name,
                    offset(name, edit.getRange().getStart()),
                    offset(name, edit.getRange().getEnd()),
                    edit.getNewText());
        }
    }

    /** Counts lines and UTF-16 units in a way of its own, so that the server's counting is tried against another. */
    static Position position(String text, int offset) {
        String before = text.substring(0, offset);
        String[] lines = (before + "|").split("\r\n|\r|\n", -1);
        // Between the two signs of a line break is still the line before.
        if (before.endsWith("\r") && text.startsWith("\n", offset)) {
            return new Position(lines.length - 2, lines[lines.length - 2].length());
        }
        return new Position(lines.length - 1, lines[lines.length - 1].length() - 1);
    }

    int offset(String name, Position position) {
        String text = text(name);
        for (int offset = 0; offset <= text.length(); offset++) {
            if (position(text, offset).equals(position)) {
                return offset;
            }
        }
        throw new AssertionError("no place " + position);
    }

    /** The place right before the {@code number}th occurrence of some words, counted from 1. */
    Position at(String name, String words, int number) {
        int offset = -1;
        for (int i = 0; i < number; i++) {
            offset = text(name).indexOf(words, offset + 1);
            assertThat(offset).as(words + " in " + name).isNotNegative();
        }
        return position(text(name), offset);
    }

    // ---- what the server tells

    /** Closes a text; the messages that the editor then has of it. */
    List<org.eclipse.lsp4j.Diagnostic> close(String name) {
        told.remove(uri(name));
        remote.getTextDocumentService().didClose(new DidCloseTextDocumentParams(id(name)));
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        // What was still under way about the open text has a version, what is told of a closed one has none.
        while (!toldClosed(name) && System.nanoTime() < end) {
            pause();
        }
        return Objects.requireNonNull(told.get(uri(name)), name).getDiagnostics();
    }

    private boolean toldClosed(String name) {
        PublishDiagnosticsParams last = told.get(uri(name));
        return last != null && last.getVersion() == null;
    }

    private static void pause() {
        try {
            Thread.sleep(2);
        } catch (InterruptedException e) {
            throw new AssertionError("nothing more is waited for", e);
        }
    }

    /** The messages about the newest state of a text. */
    List<org.eclipse.lsp4j.Diagnostic> messages(String name) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        while (System.nanoTime() < end) {
            PublishDiagnosticsParams last = told.get(uri(name));
            if (last != null && Objects.equals(last.getVersion(), versions.get(name))) {
                return last.getDiagnostics();
            }
            pause();
        }
        throw new AssertionError("nothing was told about " + name);
    }

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
        told.put(diagnostics.getUri(), diagnostics);
    }

    /** Waits until the messages about a text are such, whatever is told before. */
    void until(String name, Predicate<List<org.eclipse.lsp4j.Diagnostic>> such) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        PublishDiagnosticsParams last = told.get(uri(name));
        while (last == null || !such.test(last.getDiagnostics())) {
            assertThat(System.nanoTime()).as("it stays at " + last).isLessThan(end);
            pause();
            last = told.get(uri(name));
        }
    }

    @Override
    public CompletableFuture<Void> registerCapability(RegistrationParams params) {
        registered.addAll(params.getRegistrations());
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void telemetryEvent(Object object) {
        trouble.add("telemetry: " + object);
    }

    @Override
    public void showMessage(MessageParams message) {
        trouble.add(message.getMessage());
    }

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
        trouble.add(request.getMessage());
        return CompletableFuture.completedFuture(new MessageActionItem("no"));
    }

    @Override
    public void logMessage(MessageParams message) {
        trouble.add(message.getMessage());
    }

    @Override
    public void close() {
        try {
            get(remote.shutdown());
            remote.exit();
            for (AutoCloseable pipe : pipes) {
                pipe.close();
            }
            listening.forEach(l -> l.cancel(true));
        } catch (Exception e) {
            throw new IllegalStateException("the pipes could not be closed", e);
        }
    }
}
