package org.gusset.workbench.lesson;

/** Text that came from somebody else, made harmless inside HTML. */
final class Html {
    private static final char REPLACEMENT = '\ufffd';

    private Html() {}

    /**
     * Text as it may stand between tags and between quotation marks. Characters that HTML does not allow, lone halves of
     * surrogate pairs among them, become U+FFFD.
     */
    static String escape(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                    if (Character.isHighSurrogate(c)
                            && i + 1 < text.length()
                            && Character.isLowSurrogate(text.charAt(i + 1))) {
                        out.append(c).append(text.charAt(++i));
                    } else {
                        out.append(allowed(c) ? c : REPLACEMENT);
                    }
                }
            }
        }
        return out.toString();
    }

    private static boolean allowed(char c) {
        return (c >= ' ' || c == '\t' || c == '\n')
                && !Character.isSurrogate(c)
                && (c < 0x7f || c > 0x9f)
                && c < 0xfffe;
    }
}
