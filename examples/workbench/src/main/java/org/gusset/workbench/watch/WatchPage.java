package org.gusset.workbench.watch;

import org.gusset.workbench.lesson.PageParts;

/** The page on which a draft is watched: it fetches nothing but what the workbench tells it, and has nothing of the draft in itself. */
final class WatchPage {
    private WatchPage() {}

    static String html() {
        String style = PageParts.style() + PageParts.read(WatchPage.class, "watch.css");
        String script = PageParts.read(WatchPage.class, "watch.js");
        String policy = "default-src 'none'; style-src " + PageParts.hash(style) + "; script-src "
                + PageParts.hash(script)
                + "; connect-src 'self'; base-uri 'none'; form-action 'none'";
        return PageParts.read(WatchPage.class, "watch.html")
                .replace("{policy}", policy)
                .replace("{style}", style)
                .replace("{script}", script);
    }
}
