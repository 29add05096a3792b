package org.gusset.editor;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executors;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/** A server at the two ends of a line. Whatever comes in, the line stays open, and what goes wrong is answered in words. */
final class Connection {
    private Connection() {}

    static Launcher<LanguageClient> of(GussetServer server, InputStream in, OutputStream out) {
        return new Launcher.Builder<LanguageClient>()
                .setLocalService(server)
                .setRemoteInterface(LanguageClient.class)
                .setInput(new Frames(in))
                .setOutput(out)
                .setExecutorService(Executors.newCachedThreadPool(work -> {
                    Thread thread = new Thread(work, "gusset-line");
                    thread.setDaemon(true);
                    return thread;
                }))
                .setExceptionHandler(Connection::answer)
                .create();
    }

    /** What is answered when a question could not be: never how the program looks inside. */
    static ResponseError answer(@Nullable Throwable trouble) {
        Throwable cause = trouble;
        while (cause != null
                && !(cause instanceof ResponseErrorException)
                && (cause instanceof CompletionException
                        || cause instanceof java.lang.reflect.InvocationTargetException
                        || cause.getCause() != null)) {
            cause = cause.getCause();
        }
        if (cause instanceof ResponseErrorException told) {
            return told.getResponseError();
        }
        // A question is a record of the protocol's library; what it has to say and does not is null.
        return cause instanceof NullPointerException
                ? new ResponseError(
                        ResponseErrorCode.InvalidParams, "The question lacks a part that it must have.", null)
                : new ResponseError(ResponseErrorCode.InternalError, "The question could not be answered.", null);
    }
}
