package org.gusset.workbench;

/** Wrong use or a file that cannot be read or written: the program says so and ends with exit code 2. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refusal(String message) {
        super(message, null, false, false);
    }

    /** What is said. */
    String words() {
        return String.valueOf(getMessage());
    }
}
