package org.gusset.workbench;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.workbench.lesson.LessonContent;
import org.gusset.workbench.lesson.LessonServer;
import org.gusset.workbench.lesson.LessonSession;

/** Serves a lesson until the program is told to stop. */
final class LessonServing {
    static final int LAST_PORT = 65535;

    private LessonServing() {}

    /** A session whose measures are read as those of a table. */
    static LessonSession session(Drawing drawing, LengthStyle style, Function<Drawing, LessonContent> teaching) {
        return new LessonSession(
                drawing,
                style,
                (body, measure, text, place) -> MeasureText.read(body, measure, text, Optional.empty(), place),
                teaching);
    }

    /** Starts to serve; refuses a port that is taken. */
    static LessonServer start(LessonSession session, int port) {
        if (port < 0 || port > LAST_PORT) {
            throw new Refusal("`--port " + port + "`: a port is a number from 1 to " + LAST_PORT + ", or 0 for any.");
        }
        try {
            return LessonServer.start(session, port);
        } catch (BindException e) {
            throw new Refusal("The port " + port + " is taken, or not allowed (" + FileBytes.reason(e)
                    + "). Give another with --port, or leave it out for any that is free.");
        } catch (IOException e) {
            throw new Refusal("The lesson cannot be served (" + FileBytes.reason(e) + ").");
        }
    }

    /** Serves until Ctrl-C, or another way of ending the program. */
    static void untilStopped(LessonServer server, PrintWriter out) {
        CountDownLatch stopped = new CountDownLatch(1);
        Thread stop = new Thread(
                () -> {
                    server.close();
                    out.println("Stopped.");
                    out.flush();
                    stopped.countDown();
                },
                "stop");
        Runtime.getRuntime().addShutdownHook(stop);
        out.println("The lesson is at " + server.address());
        out.println("Only this machine can open it. Ctrl-C stops it.");
        out.flush();
        try {
            stopped.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            server.close();
        }
    }
}
