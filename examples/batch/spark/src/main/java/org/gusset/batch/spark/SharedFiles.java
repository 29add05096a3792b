package org.gusset.batch.spark;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;

/** Small files in the folder that all machines see, written whole. */
final class SharedFiles {
    private final FileSystem files;

    SharedFiles(Path folder, Configuration configuration) throws IOException {
        this.files = folder.getFileSystem(configuration);
    }

    boolean exists(Path file) throws IOException {
        return files.exists(file);
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
            files.delete(place, false);
            if (!files.rename(beside, place)) {
                throw new IOException(place + " cannot be moved to its place");
            }
            done = true;
        } finally {
            if (!done) {
                files.delete(beside, false);
            }
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
