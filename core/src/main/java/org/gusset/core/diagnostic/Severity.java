package org.gusset.core.diagnostic;

/** How much a diagnostic weighs. An error makes the draft or the body unfit; the others do not. */
public enum Severity {
    ERROR("error"),
    WARNING("warning"),
    NOTE("note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The English word shown before the message. */
    public String word() {
        return word;
    }
}
