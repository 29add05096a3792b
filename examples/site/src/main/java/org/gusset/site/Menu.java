package org.gusset.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The list of pages that stands beside each. */
final class Menu {
    /** A page to go to: where it stands on the site, and its words. */
    private record Entry(String address, String words) {}

    /** Pages under one heading; {@code prefixes} are the beginnings of places that belong to it. */
    private record Section(String title, List<String> prefixes, List<Entry> entries) {}

    private static final List<String> FIRST =
            List.of("README.md", "docs/README.md", "docs/gallery.md", "docs/reference/cheat-sheet.md");

    private final List<Section> sections = new ArrayList<>();

    Menu(Collection<MarkdownPage> pages, boolean api) {
        Map<String, MarkdownPage> byPlace = new LinkedHashMap<>();
        pages.forEach(p -> byPlace.put(p.place(), p));
        List<Entry> begin = new ArrayList<>();
        for (String place : FIRST) {
            MarkdownPage page = byPlace.get(place);
            if (page != null) {
                begin.add(new Entry(
                        Addresses.of(place, false), place.equals("README.md") ? "What Gusset is" : page.title()));
            }
        }
        sections.add(new Section("Begin", FIRST, begin));
        sections.add(section("Tutorial", pages, "docs/tutorial/", Comparator.comparing(Menu::order)));
        sections.add(section("How to", pages, "docs/how-to/", Comparator.comparing(MarkdownPage::title)));
        sections.add(section("Reference", pages, "docs/reference/", Comparator.comparing(MarkdownPage::title)));
        if (api) {
            sections.get(sections.size() - 1)
                    .entries()
                    .add(new Entry(ApiDocs.FOLDER + "/index.html", "Java: every class and method"));
        }
        Section messages = section("Messages", List.of(), "docs/diagnostics/", Comparator.comparing(Menu::order));
        messages.entries().add(new Entry("docs/diagnostics/index.html", "What the messages mean"));
        sections.add(messages);
        Section background =
                section("Background", pages, "docs/explanation/", Comparator.comparing(MarkdownPage::title));
        background
                .entries()
                .addAll(section("", pages, "docs/trade/", Comparator.comparing(Menu::order))
                        .entries());
        background
                .entries()
                .addAll(section("", pages, "examples/", Comparator.comparing(Menu::order))
                        .entries());
        sections.add(new Section(
                background.title(), List.of("docs/explanation/", "docs/trade/", "examples/"), background.entries()));
        Section project = section("The project", pages, "docs/releases/", Comparator.comparing(Menu::order));
        project.entries().add(new Entry("DEVELOPERS.html", "How the house is built"));
        project.entries().add(new Entry("docs/decisions/index.html", "Decisions"));
        sections.add(new Section(
                project.title(), List.of("docs/releases/", "docs/decisions/", "DEVELOPERS.md"), project.entries()));
    }

    /** By place, the first page of a folder before the others. */
    private static String order(MarkdownPage page) {
        return page.place().replace("README.md", " ");
    }

    private static Section section(
            String title, Collection<MarkdownPage> pages, String folder, Comparator<MarkdownPage> order) {
        List<Entry> entries = new ArrayList<>();
        pages.stream()
                .filter(p -> p.place().startsWith(folder) && !FIRST.contains(p.place()))
                .sorted(order)
                .forEach(p -> entries.add(new Entry(Addresses.of(p.place(), false), p.title())));
        return new Section(title, List.of(folder), entries);
    }

    /** The heading under which a file or folder of the project belongs; empty if under none. */
    String section(String place) {
        return sections.stream()
                .filter(s -> s.prefixes().stream().anyMatch(place::startsWith))
                .map(Section::title)
                .findFirst()
                .orElse("");
    }

    /** The list as it stands on a page. */
    String html(Layout.Page page) {
        StringBuilder out = new StringBuilder();
        for (Section section : sections) {
            boolean open = section.title().equals("Begin") || section.title().equals(section(page.place()));
            out.append("<details")
                    .append(open ? " open" : "")
                    .append("><summary>")
                    .append(section.title())
                    .append("</summary>\n<ul>\n");
            for (Entry entry : section.entries()) {
                boolean here = entry.address().equals(page.address());
                out.append("<li><a href=\"")
                        .append(Html.escape(Addresses.between(page.address(), entry.address())))
                        .append(here ? "\" aria-current=\"page\">" : "\">")
                        .append(Html.escape(entry.words()))
                        .append("</a></li>\n");
            }
            out.append("</ul></details>\n");
        }
        return out.toString();
    }
}
