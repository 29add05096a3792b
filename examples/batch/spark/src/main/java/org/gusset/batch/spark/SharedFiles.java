package org.gusset.batch.spark;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;

/**
 * Small files in the folder that all machines see, written whole. A file is moved onto its place in one step where the file system
 * replaces what is there (local disks of Linux). Others refuse that (HDFS); there the old file is moved aside first and put back if the
 * new one cannot be moved, and whoever looks for a file that a machine left aside, being stopped between the two moves, puts it back.
 */
final class SharedFiles {
    /** What the name of an old file ends with while the new one is moved to its place. */
    static final String ASIDE = ".aside";

    private final FileSystem files;

    SharedFiles(Path folder, Configuration configuration) throws IOException {
        this.files = folder.getFileSystem(configuration);
    }

    SharedFiles(FileSystem files) {
        this.files = files;
    }

    boolean exists(Path file) throws IOException {
        return files.exists(file) || putBack(file);
    }

    /** Puts a file back to its place that was left aside; false if there is none. */
    private boolean putBack(Path place) throws IOException {
        FileStatus[] left = files.globStatus(new Path(place.getParent(), "." + place.getName() + ".*" + ASIDE));
        // Another machine may be at it: then the file is there when the move fails.
        return left != null
                && left.length > 0
                && (files.rename(left[0].getPath(), place) || files.exists(place));
    }

    /** Writes lines beside the place under a name of the writer's own, then moves the file there. */
    void write(Path place, Iterator<String> lines, String writer) throws IOException {
        Path beside = new Path(place.getParent(), "." + place.getName() + "." + writer);
        boolean done = false;
        try {
            try (BufferedWriter out =
                    new BufferedWriter(new OutputStreamWriter(files.create(beside, true), StandardCharsets.UTF_8))) {
                while (lines.hasNext()) {
                    out.write(lines.next());
                    out.write('\n');
                }
            }
            if (!moved(beside, place)) {
                replace(place, beside, new Path(place.getParent(), beside.getName() + ASIDE));
            }
            done = true;
        } finally {
            if (!done) {
                files.delete(beside, false);
            }
        }
    }

    /** Some file systems return false where others throw. */
    private boolean moved(Path from, Path to) throws IOException {
        try {
            return files.rename(from, to);
        } catch (FileAlreadyExistsException e) {
            return false;
        }
    }

    private void replace(Path place, Path beside, Path aside) throws IOException {
        boolean kept = files.exists(place) && moved(place, aside);
        try {
            if (!moved(beside, place)) {
                throw new IOException(place + " cannot be moved to its place");
            }
        } catch (IOException e) {
            if (kept && !moved(aside, place)) {
                e.addSuppressed(new IOException("the old file lies at " + aside));
            }
            throw e;
        }
        if (kept) {
            files.delete(aside, false);
        }
    }

    void write(Path place, Map<String, String> words) throws IOException {
        List<String> lines = words.entrySet().stream()
                .map(e -> e.getKey() + ": " + e.getValue())
                .toList();
        write(place, lines.iterator(), "driver");
    }

    Map<String, String> words(Path file) throws IOException {
        Map<String, String> words = new LinkedHashMap<>();
        if (!exists(file)) {
            throw new FileNotFoundException(file + " is not there");
        }
        try (BufferedReader in = new BufferedReader(new InputStreamReader(files.open(file), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                int colon = line.indexOf(": ");
                words.put(line.substring(0, colon), line.substring(colon + 2));
            }
        }
        return words;
    }

    /** The length of all files of a table and the latest change, which tell one table from another well enough to go on. */
    String mark(Path table) throws IOException {
        long length = 0;
        long latest = 0;
        for (FileStatus status : files.listStatus(table)) {
            length += status.getLen();
            latest = Math.max(latest, status.getModificationTime());
        }
        return table + " " + length + " " + latest;
    }
}
