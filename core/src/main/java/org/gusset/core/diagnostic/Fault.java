package org.gusset.core.diagnostic;

import org.jspecify.annotations.Nullable;

/**
 * How an operation inside the library says that it cannot give a value. The evaluator and the readers catch it and keep
 * its diagnostic; it never leaves the library.
 */
public final class Fault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient @Nullable Diagnostic diagnostic;

    public Fault(Diagnostic diagnostic) {
        super(null, null, false, false);
        this.diagnostic = diagnostic;
    }

    private Fault() {
        super(null, null, false, false);
        this.diagnostic = null;
    }

    /** There is no value, for a reason that was told before. */
    public static Fault told() {
        return new Fault();
    }

    public static Fault of(Code code, Object... namesAndFacts) {
        return new Fault(Diagnostic.of(code, Place.nowhere(), namesAndFacts));
    }

    /** The message in English, put together only when it is asked for: a solve may meet thousands of faults on its way. */
    @Override
    public String getMessage() {
        return diagnostic == null ? "told elsewhere" : diagnostic.toString();
    }

    /** True if the reason was told before, so that there is no message. */
    public boolean isTold() {
        return diagnostic == null;
    }

    /**
     * The message.
     *
     * @throws IllegalStateException if it was told elsewhere
     */
    public Diagnostic diagnostic() {
        if (diagnostic == null) {
            throw new IllegalStateException("the reason was told elsewhere");
        }
        return diagnostic;
    }
}
