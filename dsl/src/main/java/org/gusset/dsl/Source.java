package org.gusset.dsl;

/** A named text: the name is what messages show, usually the file's name. */
public record Source(String name, String text) {
    public static Source of(String name, String text) {
        return new Source(name, text);
    }
}
