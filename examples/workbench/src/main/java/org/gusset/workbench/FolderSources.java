package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;

/**
 * Lends the files of one folder and of the folders in it: the folder of the draft that the user named. A name in a draft counts
 * from the folder of that draft; names that lead out of the lending folder are refused, links that do so too.
 */
final class FolderSources implements Sources {
    private final Source first;
    private final Map<String, Source> lent = new LinkedHashMap<>();

    FolderSources(Source first) {
        this.first = first;
    }

    /** The first draft and every file that was lent. */
    List<Source> all() {
        List<Source> all = new ArrayList<>();
        all.add(first);
        all.addAll(lent.values());
        return all;
    }

    @Override
    public Answer find(String file, Source asking) {
        Path named;
        try {
            named = FileBytes.path(file);
        } catch (Refusal refusal) {
            return Answer.none("this cannot be the name of a file");
        }
        if (named.isAbsolute() || file.startsWith("/") || file.startsWith("\\")) {
            return Answer.none("a file is named from the folder of this draft, not from the root of the disk");
        }
        Path path = folder(asking).resolve(named).normalize();
        Path lending = folder(first).toAbsolutePath().normalize();
        if (!path.toAbsolutePath().normalize().startsWith(lending)) {
            return Answer.none("it lies outside the folder of the first draft");
        }
        if (!Files.isRegularFile(path)) {
            return Answer.none(
                    Files.isDirectory(path) ? "it is a folder" : "there is no such file in the folder of this draft");
        }
        try {
            if (!path.toRealPath().startsWith(lending.toRealPath())) {
                return Answer.none("it is a link to a place outside the folder of the first draft");
            }
        } catch (IOException e) {
            return Answer.none("it cannot be reached (" + FileBytes.reason(e) + ")");
        }
        return read(path.toString());
    }

    private static Path folder(Source source) {
        Path folder = FileBytes.path(source.name()).getParent();
        return folder == null ? Path.of("") : folder;
    }

    private Answer read(String name) {
        Source known = lent.get(name);
        if (known != null) {
            return Answer.of(known);
        }
        try {
            Source source = DraftFile.read(name).source();
            lent.put(name, source);
            return Answer.of(source);
        } catch (Refusal refusal) {
            String why = String.valueOf(refusal.getMessage());
            return Answer.none(why.endsWith(".") ? why.substring(0, why.length() - 1) : why);
        }
    }
}
