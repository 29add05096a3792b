package org.gusset.editor;

import java.io.BufferedInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.ExecutionException;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.services.LanguageClient;

/** The server on standard input and output, as editors start it. */
public final class Main {
    private Main() {}

    /** Serves one editor until it says that it is over, or is gone. */
    public static void main(String[] arguments) throws InterruptedException {
        InputStream in = new BufferedInputStream(System.in);
        OutputStream out = System.out;
        // What is printed by mistake must not come between the messages.
        System.setOut(System.err);
        // What the library of the protocol has to say of a message is one line in the editor's log.
        System.setProperty("java.util.logging.SimpleFormatter.format", "gusset-language-server: %5$s%n");
        GussetServer server = new GussetServer(System::exit);
        try {
            Launcher<LanguageClient> launcher = Connection.of(server, in, out);
            server.connect(launcher.getRemoteProxy());
            launcher.startListening().get();
        } catch (ExecutionException e) {
            System.err.println("gusset-language-server: the connection broke: " + e.getCause());
        }
        // The editor is gone without a word, and nothing may be left behind.
        server.exit();
    }
}
