package org.gusset.workbench;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The output, which remembers that something could not be written; the writer on top of it does not tell. */
final class Outlet extends OutputStream {
    private final OutputStream to;
    private @Nullable IOException failure;

    Outlet(OutputStream to) {
        this.to = to;
    }

    /** Why the end of the output is missing. A reader that has read enough and went away is no reason. */
    Optional<IOException> cutOff() {
        boolean gone = failure != null && String.valueOf(failure.getMessage()).contains("Broken pipe");
        return gone ? Optional.empty() : Optional.ofNullable(failure);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            to.write(bytes, from, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        to.flush();
    }
}
