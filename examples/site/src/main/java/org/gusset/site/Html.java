package org.gusset.site;

/** Text in HTML. */
final class Html {
    private Html() {}

    /** Text as it may stand between tags and in quotation marks. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    static String link(String to, String words) {
        return "<a href=\"" + escape(to) + "\">" + escape(words) + "</a>";
    }
}
