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
        super(diagnostic.toString(), null, false, false);
        this.diagnostic = diagnostic;
    }

    private Fault() {
        super("told elsewhere", null, false, false);
        this.diagnostic = null;
    }

    /** There is no value, for a reason that was told before. */
    public static Fault told() {
        return new Fault();
    }

    public static Fault of(Code code, Object... namesAndFacts) {
        return new Fault(Diagnostic.of(code, Place.nowhere(), namesAndFacts));
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
