package org.gusset.workbench;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.net.URI;
import java.util.concurrent.CountDownLatch;

/** Serves a page to the browsers of this machine until the program is told to stop. */
final class Serving {
    private static final int LAST_PORT = 65535;

    private Serving() {}

    /** What starts a server on a port. */
    @FunctionalInterface
    interface Start<S> {
        S on(int port) throws IOException;
    }

    /**
     * Starts to serve.
     *
     * @param what what is served, with its article
     * @param port where; 0 for any that is free
     * @throws Refusal if the port is none, is taken or is not allowed
     */
    static <S> S start(String what, int port, Start<S> start) {
        if (port < 0 || port > LAST_PORT) {
            throw new Refusal("`--port " + port + "`: a port is a number from 1 to " + LAST_PORT + ", or 0 for any.");
        }
        try {
            return start.on(port);
        } catch (BindException e) {
            throw new Refusal("The port " + port + " is taken, or not allowed (" + FileBytes.reason(e)
                    + "). Give another with --port, or leave it out for any that is free.");
        } catch (IOException e) {
            throw new Refusal(what + " cannot be served (" + FileBytes.reason(e) + ").");
        }
    }

    /** Serves until Ctrl-C, or another way of ending the program. */
    static void untilStopped(String what, URI address, Runnable close, PrintWriter out) {
        CountDownLatch stopped = new CountDownLatch(1);
        Thread stop = new Thread(
                () -> {
                    close.run();
                    out.println("Stopped.");
                    out.flush();
                    stopped.countDown();
                },
                "stop");
        Runtime.getRuntime().addShutdownHook(stop);
        out.println(what + " is at " + address);
        out.println("Only this machine can open it. Ctrl-C stops it.");
        out.flush();
        try {
            stopped.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            close.run();
        }
    }
}
