package org.gusset.batch;

/** The batch cannot begin or go on; the message says what to do, and what was finished stays finished. */
public final class BatchException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BatchException(String message) {
        super(message);
    }

    public BatchException(String message, Throwable cause) {
        super(message, cause);
    }
}
