package org.gusset.core.stress;

import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.RefusedPiece;

/**
 * A kind of failure: all bodies for which the same line of the draft gives the same message fail alike.
 *
 * @param kind what happened
 * @param code the message's code; for a fault of our own the exception's class
 * @param where the line, or what is named there
 */
record Trouble(Failure.Kind kind, String code, String where) {
    static Trouble of(Diagnostic diagnostic) {
        Place place = diagnostic.place();
        String where = "";
        if (place instanceof Span span) {
            where = span.source() + ":" + span.start();
        } else if (diagnostic.phrase().facts().get("name") instanceof Fact.Words name) {
            where = name.text();
        } else if (place instanceof Place.Named named) {
            where = named.name();
        }
        return new Trouble(Failure.Kind.MESSAGE, diagnostic.code().id(), where);
    }

    static Trouble silent(RefusedPiece piece) {
        return new Trouble(Failure.Kind.REFUSED_WITHOUT_A_WORD, "", piece.name());
    }

    static Trouble fault(Throwable thrown) {
        StackTraceElement[] trace = thrown.getStackTrace();
        String where = trace.length == 0 ? "" : trace[0].getClassName() + "." + trace[0].getMethodName();
        return new Trouble(Failure.Kind.EXCEPTION, thrown.getClass().getSimpleName(), where);
    }
}
