package org.gusset.editor;

import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.jspecify.annotations.Nullable;

/**
 * One thread answers, in the order of asking. What it cannot take in is refused at once, what is cancelled while it waits is not begun,
 * and whatever goes wrong in an answer is told and leaves the next one untouched.
 */
final class Desk implements AutoCloseable {
    /** How many questions wait at the most. */
    static final int MOST_WAITING = 256;

    private static final long STACK = 16L << 20;
    private static final ThreadFactory THREADS = work -> {
        Thread thread = new Thread(null, work, "gusset", STACK);
        thread.setDaemon(true);
        return thread;
    };

    private enum State {
        BEFORE,
        OPEN,
        OVER
    }

    private final ThreadPoolExecutor worker = new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(MOST_WAITING),
            THREADS,
            new ThreadPoolExecutor.AbortPolicy());
    private final ScheduledThreadPoolExecutor clock = new ScheduledThreadPoolExecutor(1, THREADS);
    private final Map<String, ScheduledFuture<?>> later = new ConcurrentHashMap<>();
    private final Consumer<String> trouble;
    private volatile State state = State.BEFORE;

    /** @param trouble takes what went wrong, in words */
    Desk(Consumer<String> trouble) {
        this.trouble = trouble;
        clock.setRemoveOnCancelPolicy(true);
    }

    /** Questions are answered from now on. */
    void open() {
        state = State.OPEN;
    }

    /** Answers when those before it are answered; with {@code otherwise} if something goes wrong. */
    <T extends @Nullable Object> CompletableFuture<T> ask(String what, T otherwise, Supplier<T> answer) {
        State now = state;
        if (now != State.OPEN) {
            return now == State.BEFORE
                    ? refused(ResponseErrorCode.ServerNotInitialized, "The server has not been told to begin.")
                    : refused(ResponseErrorCode.InvalidRequest, "The server has been told that it is over.");
        }
        CompletableFuture<T> answered = new CompletableFuture<>();
        try {
            worker.execute(() -> {
                // Cancelled while it waited.
                if (answered.isDone()) {
                    return;
                }
                try {
                    answered.complete(guarded(what, otherwise, answer));
                } catch (ResponseErrorException | CancellationException e) {
                    answered.completeExceptionally(e);
                }
            });
            return answered;
        } catch (RejectedExecutionException e) {
            return refused(ResponseErrorCode.ServerCancelled, "The server has more to do than it can take in.");
        }
    }

    private static <T extends @Nullable Object> CompletableFuture<T> refused(ResponseErrorCode code, String why) {
        return CompletableFuture.failedFuture(new ResponseErrorException(new ResponseError(code, why, null)));
    }

    private <T extends @Nullable Object> T guarded(String what, T otherwise, Supplier<T> answer) {
        try {
            return answer.get();
        } catch (ResponseErrorException | CancellationException e) {
            throw e;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            StackTraceElement[] where = e.getStackTrace();
            trouble.accept(
                    "The server could not answer (" + what + "); the texts are as they were. Please report this: " + e
                            + (where.length == 0 ? "" : " at " + where[0]));
            return otherwise;
        }
    }

    /** Does something in a while, if it is not put off again before; only the last for a key is kept. */
    void soon(String key, int delay, Runnable work) {
        if (clock.isShutdown()) {
            return;
        }
        ScheduledFuture<?> before = later.put(
                key,
                clock.schedule(
                        () -> {
                            later.remove(key);
                            ask("messages", key, () -> {
                                work.run();
                                return key;
                            });
                        },
                        delay,
                        TimeUnit.MILLISECONDS));
        if (before != null) {
            before.cancel(false);
        }
    }

    @Override
    public void close() {
        state = State.OVER;
        clock.shutdownNow();
        worker.shutdownNow();
    }
}
