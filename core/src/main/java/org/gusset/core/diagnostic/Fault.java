package org.gusset.core.diagnostic;

/**
 * How an operation inside the library says that it cannot give a value. The evaluator and the readers catch it and keep
 * its diagnostic; it never leaves the library.
 */
public final class Fault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Diagnostic diagnostic;

    public Fault(Diagnostic diagnostic) {
        super(diagnostic.toString(), null, false, false);
        this.diagnostic = diagnostic;
    }

    public static Fault of(Code code, Object... namesAndFacts) {
        return new Fault(Diagnostic.of(code, Place.nowhere(), namesAndFacts));
    }

    public Diagnostic diagnostic() {
        return diagnostic;
    }
}
