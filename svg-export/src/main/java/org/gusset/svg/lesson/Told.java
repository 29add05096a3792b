package org.gusset.svg.lesson;

/**
 * What a step tells of one name.
 *
 * @param name a name of the draft; where a piece is finished, the word of the language that is spoken of ({@code allow}, {@code cut},
 *     {@code grain}, {@code notch}, {@code mark})
 * @param sentence how it came about, with the sum
 */
public record Told(String name, String sentence) {}
