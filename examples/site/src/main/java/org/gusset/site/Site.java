package org.gusset.site;

import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Queue;
import java.util.Set;

/**
 * The whole site: every page of Markdown, the files and folders they lead to, the gallery, the search. A link that leads to nothing ends
 * the build.
 */
final class Site {
    static final String LEXER = "dsl/src/main/antlr4/org/gusset/dsl/internal/parse/GussetLexer.g4";

    private final Repository repository;
    private final SiteFiles files;
    private final Map<String, MarkdownPage> pages = new LinkedHashMap<>();
    private final Set<String> shown = new LinkedHashSet<>();
    private final Queue<String> asked = new ArrayDeque<>();
    private final Layout layout;
    private final Colours colours;
    private final SearchIndex index = new SearchIndex();

    /**
     * @param api whether the pages of the Java interface will lie beside it
     */
    Site(Repository repository, SiteFiles files, boolean api) {
        this.repository = repository;
        this.files = files;
        for (String place : repository.pages()) {
            pages.put(place, MarkdownPage.read(place, repository.text(place)));
        }
        this.layout = new Layout(new Menu(pages.values(), api));
        this.colours = Colours.of(repository.text(LEXER));
    }

    void write() {
        Gallery gallery = new Gallery(repository, files);
        pages.values().forEach(page -> markdown(page, gallery));
        ask("docs/decisions");
        while (!asked.isEmpty()) {
            show(asked.remove());
        }
        page(new Layout.Page("search.html", "Search", "", "search", SiteFiles.resource("search.html"), ""));
        for (String name : new String[] {"site.css", "search.js", "icon.svg"}) {
            files.text("assets/" + name, SiteFiles.resource(name));
        }
        files.text("assets/search-index.js", index.script());
    }

    private void markdown(MarkdownPage page, Gallery gallery) {
        String address = Addresses.of(page.place(), false);
        Map<String, String> made = page.place().equals(Gallery.PLACE) ? gallery.cards(address, this::ask) : Map.of();
        String html = new MarkdownHtml(link -> leading(page.place(), link), colours, made).of(page);
        String section = layout.section(page.place());
        page(new Layout.Page(address, page.title(), section, page.place(), html, Layout.headlines(page)));
        index.add(address, section, page);
    }

    private void page(Layout.Page page) {
        files.text(page.address(), layout.of(page));
    }

    /** Where a link of a file of the project leads on the site. */
    private String leading(String place, String link) {
        if (link.matches("[a-z]+:.*")) {
            return link;
        }
        int hash = link.indexOf('#');
        String path = hash < 0 ? link : link.substring(0, hash);
        String fragment = hash < 0 ? "" : link.substring(hash);
        String to = path.isEmpty() ? place : Addresses.resolved(place, path);
        MarkdownPage page = pages.get(repository.isFolder(to) ? to + "/README.md" : to);
        if (page != null) {
            boolean known =
                    fragment.isEmpty() || page.headlines().stream().anyMatch(h -> fragment.equals("#" + h.anchor()));
            if (!known) {
                throw new IllegalStateException(place + ": no heading of " + page.place() + " is " + fragment);
            }
            String target = Addresses.of(page.place(), false);
            return path.isEmpty() ? fragment : Addresses.between(Addresses.of(place, false), target) + fragment;
        }
        if (!repository.isFile(to) && !repository.isFolder(to)) {
            throw new IllegalStateException(place + ": the link " + link + " leads to nothing");
        }
        return Addresses.between(Addresses.of(place, false), ask(to)) + fragment;
    }

    /** Has a file or folder of the project shown; its address. */
    private String ask(String place) {
        if (shown.add(place)) {
            asked.add(place);
        }
        return Addresses.of(place, repository.isFolder(place));
    }

    private void show(String place) {
        if (repository.isFolder(place)) {
            folder(place);
        } else if (Addresses.isPicture(place)) {
            files.bytes(place, repository.bytes(place));
        } else {
            file(place);
        }
    }

    /** A file of the project as a page, and beside it as it is. */
    private void file(String place) {
        String address = Addresses.of(place, false);
        String name = place.substring(place.lastIndexOf('/') + 1);
        String text = repository.text(place);
        files.bytes(place, repository.bytes(place));
        String html = "<h1>" + Html.escape(name) + "</h1>\n<p class=\"fetch\"><a href=\"" + Html.escape(name)
                + "\" download>Save this file</a></p>\n"
                + colours.block(text, name.substring(name.lastIndexOf('.') + 1)) + "\n";
        page(new Layout.Page(address, name, place.substring(0, place.length() - name.length()), place, html, ""));
        if (name.endsWith(".gusset")) {
            index.add(address, "Draft", name, text);
        }
    }

    /** A list of what lies in a folder. */
    private void folder(String place) {
        String address = Addresses.of(place, true);
        StringBuilder list = new StringBuilder("<h1>" + Html.escape(title(place)) + "</h1>\n<ul class=\"files\">\n");
        for (String file : repository.below(place, "")) {
            MarkdownPage page = pages.get(file);
            String to = page == null ? ask(file) : Addresses.of(file, false);
            String words = page == null ? file.substring(place.length() + 1) : page.title();
            list.append("<li>")
                    .append(Html.link(Addresses.between(address, to), words))
                    .append("</li>\n");
        }
        page(new Layout.Page(address, title(place), layout.section(place + "/"), place, list + "</ul>\n", ""));
    }

    private static String title(String place) {
        return place.equals("docs/decisions") ? "Decisions" : place;
    }
}
