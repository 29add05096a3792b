package org.gusset.workbench;

/** How the program ends. */
final class ExitCodes {
    static final int GOOD = 0;
    /** The draft or a body has errors. */
    static final int FAULTS = 1;
    /** Wrong use, or a file that cannot be read or written. */
    static final int WRONG_USE = 2;
    /** A fault of the program itself. */
    static final int OWN_FAULT = 3;

    private ExitCodes() {}
}
