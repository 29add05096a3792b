package org.gusset.workbench;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.watch.WatchServer;
import org.gusset.workbench.watch.WatchSession;

/** A draft that is looked at again and again, and the page that shows it. */
final class Watching implements AutoCloseable {
    /** How often the files are looked at while a page is open, and while none is. */
    private static final long LOOK_MILLIS = 5;

    private static final long IDLE_MILLIS = 100;

    private final WatchedFiles files;
    private final WatchSession session;
    private final WatchServer server;
    private final Thread looking;

    private Watching(WatchedFiles files, WatchSession session, WatchServer server) {
        this.files = files;
        this.session = session;
        this.server = server;
        looking = new Thread(this::look, "look");
        looking.setDaemon(true);
    }

    /**
     * Starts to watch.
     *
     * @param port where to listen; 0 for any that is free
     * @throws java.net.BindException if the port is taken or not allowed
     */
    static Watching start(
            Bench bench, String draft, List<Measurements> bodies, Choices choices, LengthStyle style, int port)
            throws IOException {
        WatchedFiles files = new WatchedFiles(bench, draft);
        WatchSession session = new WatchSession(
                files.first(),
                bodies,
                choices,
                style,
                (body, measure, text, place) -> MeasureText.read(body, measure, text, Optional.empty(), place),
                SheetOptions.defaults().withLengths(style));
        Watching watching = new Watching(files, session, WatchServer.start(session, port));
        watching.looking.start();
        return watching;
    }

    URI address() {
        return server.address();
    }

    private void look() {
        try {
            while (true) {
                Thread.sleep(server.seen() ? LOOK_MILLIS : IDLE_MILLIS);
                files.changed().ifPresent(session::take);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        looking.interrupt();
        server.close();
    }
}
