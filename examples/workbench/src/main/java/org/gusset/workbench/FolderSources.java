package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.dsl.FileName;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;

/**
 * Lends the files of one folder and of the folders in it: the folder of the draft that the user named. A name in a draft counts
 * from the folder of that draft; names that lead out of the lending folder are refused, links that do so too. A file is read from the
 * place that was looked at: it is opened without following links, so that one put there in between leads nowhere.
 */
final class FolderSources implements Sources {
    private static final String OUTSIDE = "it lies outside the folder of the first draft";
    private static final String NONE = "there is no such file in the folder of this draft";

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
        Optional<String> objection = FileName.objection(file);
        if (objection.isPresent()) {
            return Answer.none(objection.get());
        }
        Path path;
        try {
            path = folder(asking).resolve(FileBytes.path(file)).normalize();
        } catch (Refusal refusal) {
            return Answer.none("this cannot be the name of a file");
        }
        Path lending = folder(first).toAbsolutePath().normalize();
        if (!path.toAbsolutePath().normalize().startsWith(lending)) {
            return Answer.none(OUTSIDE);
        }
        Source known = lent.get(path.toString());
        if (known != null) {
            return Answer.of(known);
        }
        try {
            Path root = lending.toRealPath();
            Path real = path.toRealPath();
            if (!real.startsWith(root)) {
                return Answer.none("it is a link to a place outside the folder of the first draft");
            }
            return Files.isDirectory(real) ? Answer.none("it is a folder") : read(path, root, root.relativize(real));
        } catch (IOException e) {
            return Answer.none(
                    Files.exists(path, LinkOption.NOFOLLOW_LINKS)
                            ? "it cannot be reached (" + FileBytes.reason(e) + ")"
                            : NONE);
        }
    }

    private static Path folder(Source source) {
        Path folder = FileBytes.path(source.name()).getParent();
        return folder == null ? Path.of("") : folder;
    }

    private Answer read(Path path, Path root, Path real) throws IOException {
        Path name = path.getFileName();
        Path own = real.getFileName();
        boolean otherCase = name != null
                && own != null
                && !name.equals(own)
                && name.toString().equalsIgnoreCase(own.toString());
        if (otherCase) {
            // Elsewhere small letters and capitals differ, and the draft would not find it.
            return Answer.none("there is `" + own + "`, which is not the same everywhere");
        }
        Optional<byte[]> bytes = FixedFile.read(root, real, FileBytes.LARGEST_DRAFT);
        if (bytes.isEmpty()) {
            return Answer.none(
                    Files.isDirectory(path)
                            ? "it is a folder"
                            : Files.isRegularFile(path)
                                    ? "it is larger than a draft can be"
                                    : "it is no file with text");
        }
        try {
            Source source = DraftFile.of(path.toString(), bytes.get()).source();
            lent.put(source.name(), source);
            return Answer.of(source);
        } catch (Refusal refusal) {
            String why = String.valueOf(refusal.getMessage());
            return Answer.none(why.endsWith(".") ? why.substring(0, why.length() - 1) : why);
        }
    }
}
