package org.gusset.core.draft;

/**
 * How one named thing came about.
 *
 * @param piece its piece; empty for the file
 * @param step the title of its step; empty outside steps
 * @param name its name
 * @param sentence what was done and the sum: {@code from nape, square down 23.5 cm (chest 104 cm / 8 + 10.5 cm)}
 */
public record TraceLine(String piece, String step, String name, String sentence) {}
