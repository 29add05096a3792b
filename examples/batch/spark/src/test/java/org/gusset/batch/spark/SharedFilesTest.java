package org.gusset.batch.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.FilterFileSystem;
import org.apache.hadoop.fs.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of the old file when a new one cannot be moved to its place. */
class SharedFilesTest {
    private static final Map<String, String> OLD = Map.of("rows", "1");
    private static final Map<String, String> NEW = Map.of("rows", "2");

    @TempDir
    java.nio.file.Path disk;

    private Path place;

    @BeforeEach
    void place() {
        place = new Path(disk.toUri().toString(), "batch.txt");
    }

    /** A file system that moves nothing onto a file, as HDFS, and refuses the moves of these numbers altogether. */
    private static final class Refusing extends FilterFileSystem {
        private final List<Integer> refused;
        private final boolean thrown;
        private final List<String> moves = new ArrayList<>();

        Refusing(FileSystem disk, boolean thrown, Integer... refused) {
            super(disk);
            this.refused = List.of(refused);
            this.thrown = thrown;
        }

        @Override
        public boolean rename(Path from, Path to) throws IOException {
            moves.add(to.getName());
            if (refused.contains(moves.size())) {
                if (thrown) {
                    throw new IOException("the disk is gone");
                }
                return false;
            }
            return !fs.exists(to) && fs.rename(from, to);
        }
    }

    private static FileSystem local() throws IOException {
        return FileSystem.getLocal(new Configuration());
    }

    private List<String> names() throws IOException {
        List<String> names = new ArrayList<>();
        for (FileStatus status : local().listStatus(place.getParent())) {
            names.add(status.getPath().getName());
        }
        return names;
    }

    @Test
    void aDiskThatReplacesTakesOneMove() throws IOException {
        List<String> moves = new ArrayList<>();
        SharedFiles files = new SharedFiles(new FilterFileSystem(local()) {
            @Override
            public boolean rename(Path from, Path to) throws IOException {
                moves.add(to.getName());
                return fs.rename(from, to);
            }

            @Override
            public boolean delete(Path path, boolean recursive) {
                throw new AssertionError("nothing is deleted: " + path);
            }
        });
        files.write(place, OLD);
        files.write(place, NEW);
        assertThat(files.words(place)).isEqualTo(NEW);
        assertThat(moves).containsExactly("batch.txt", "batch.txt");
        assertThat(names()).containsExactly("batch.txt");
    }

    @Test
    void aDiskThatDoesNotReplaceKeepsTheOldFileAside() throws IOException {
        Refusing disk = new Refusing(local(), false);
        SharedFiles files = new SharedFiles(disk);
        files.write(place, OLD);
        files.write(place, NEW);
        assertThat(files.words(place)).isEqualTo(NEW);
        assertThat(disk.moves)
                .containsExactly("batch.txt", "batch.txt", ".batch.txt.driver.aside", "batch.txt");
        assertThat(names()).containsExactly("batch.txt");
    }

    @Test
    void theOldFileComesBackWhenTheNewOneCannotMove() throws IOException {
        for (boolean thrown : new boolean[] {false, true}) {
            new SharedFiles(local()).write(place, OLD);
            // Onto the old file, the old one aside, the new one to its place, the old one back.
            Refusing disk = new Refusing(local(), thrown, 3);
            SharedFiles files = new SharedFiles(disk);
            assertThatThrownBy(() -> files.write(place, NEW)).isInstanceOf(IOException.class);
            assertThat(disk.moves).hasSize(4);
            assertThat(files.words(place)).isEqualTo(OLD);
            assertThat(names()).containsExactly("batch.txt");
        }
    }

    @Test
    void whatWasLeftAsideIsPutBackByWhoeverLooksForIt() throws IOException {
        new SharedFiles(local()).write(place, OLD);
        SharedFiles stopped = new SharedFiles(new Refusing(local(), false, 3, 4));
        assertThatThrownBy(() -> stopped.write(place, NEW))
                .isInstanceOf(IOException.class)
                .satisfies(e -> assertThat(e.getSuppressed()[0]).hasMessageContaining(".batch.txt.driver.aside"));
        assertThat(names()).containsExactly(".batch.txt.driver.aside");
        SharedFiles next = new SharedFiles(new Refusing(local(), false));
        assertThat(next.exists(place)).isTrue();
        assertThat(next.words(place)).isEqualTo(OLD);
        assertThat(names()).containsExactly("batch.txt");
    }

    @Test
    void whatNeverWasIsNotThere() throws IOException {
        SharedFiles files = new SharedFiles(local());
        assertThat(files.exists(place)).isFalse();
        assertThatThrownBy(() -> files.words(place)).isInstanceOf(FileNotFoundException.class);
    }
}
