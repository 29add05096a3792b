package org.gusset.site;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** Where things of the project stand on the site, and how one page leads to another. */
final class Addresses {
    /** Files that are shown as a picture or fetched as they are, not as a page of text. */
    private static final List<String> PICTURES = List.of(".png", ".svg", ".jpg");

    private Addresses() {}

    /** The page that shows a file or folder of the project. */
    static String of(String place, boolean folder) {
        if (folder) {
            return place.isEmpty() ? "index.html" : place + "/index.html";
        }
        if (place.equals("README.md") || place.endsWith("/README.md")) {
            return place.substring(0, place.length() - "README.md".length()) + "index.html";
        }
        if (place.endsWith(".md")) {
            return place.substring(0, place.length() - ".md".length()) + ".html";
        }
        return isPicture(place) ? place : place + ".html";
    }

    static boolean isPicture(String place) {
        return PICTURES.stream().anyMatch(place::endsWith);
    }

    /**
     * Where a link leads that stands in a file of the project.
     *
     * @param place the file
     * @param link the link's path, without a fragment
     * @throws IllegalStateException if it leads out of the project
     */
    static String resolved(String place, String link) {
        Deque<String> parts = new ArrayDeque<>(Arrays.asList(place.split("/")));
        parts.removeLast();
        for (String part : link.split("/")) {
            if (part.equals("..")) {
                if (parts.isEmpty()) {
                    throw new IllegalStateException(place + ": the link " + link + " leads out of the project");
                }
                parts.removeLast();
            } else if (!part.equals(".") && !part.isEmpty()) {
                parts.addLast(part);
            }
        }
        return String.join("/", parts);
    }

    /** The way from one page of the site to another, or to a file of it. */
    static String between(String from, String to) {
        List<String> start = folders(from);
        List<String> end = folders(to);
        int shared = 0;
        while (shared < start.size() && shared < end.size() && start.get(shared).equals(end.get(shared))) {
            shared++;
        }
        StringBuilder way = new StringBuilder("../".repeat(start.size() - shared));
        for (String part : end.subList(shared, end.size())) {
            way.append(part).append('/');
        }
        return way.append(to.substring(to.lastIndexOf('/') + 1)).toString();
    }

    /** The way from a page to the top of the site: empty, or ending in a slash. */
    static String top(String from) {
        return "../".repeat(folders(from).size());
    }

    private static List<String> folders(String address) {
        List<String> parts = new ArrayList<>(Arrays.asList(address.split("/")));
        parts.remove(parts.size() - 1);
        return parts;
    }
}
