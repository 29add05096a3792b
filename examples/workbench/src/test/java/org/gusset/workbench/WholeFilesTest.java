package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are written together and whole, or stay as they were: on a full disk, on one that cannot be written, and when a run is ended. */
class WholeFilesTest {
    @TempDir
    Path folder;

    private static final Map<String, String> NEW = inOrder("sheet.svg", "new", "back.svg", "new", "front.svg", "new");

    private static Map<String, String> inOrder(String... namesAndTexts) {
        Map<String, String> files = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return files;
    }

    @Test
    void oldFilesAreReplacedAndNothingElseIsLeft() throws IOException {
        CommandRun.file(folder, "sheet.svg", "old");
        WholeFiles.write(folder, NEW);
        assertThat(CommandRun.filesBelow(folder)).containsExactly("back.svg", "front.svg", "sheet.svg");
        assertThat(folder.resolve("sheet.svg")).hasContent("new");
    }

    @Test
    void whereTheLastCannotMoveTheOthersArePutBack() throws IOException {
        CommandRun.file(folder, "sheet.svg", "old");
        Map<String, String> files = new LinkedHashMap<>(NEW);
        files.put("n".repeat(300) + ".svg", "a name longer than any file may have");
        assertThatThrownBy(() -> WholeFiles.write(folder, files))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("File name too long")
                .hasMessageContaining("Nothing was changed.");
        assertThat(CommandRun.filesBelow(folder)).containsExactly("sheet.svg");
        assertThat(folder.resolve("sheet.svg")).hasContent("old");
    }

    @Test
    void foldersMadeForNothingAreRemoved() {
        Path deep = folder.resolve("paper/autumn");
        assertThatThrownBy(() -> WholeFiles.write(deep, Map.of("n".repeat(300), "")))
                .isInstanceOf(Refusal.class);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aLinkStaysALinkAndTheFileBehindItIsReplaced() throws IOException {
        String real = CommandRun.file(folder.resolve("shelf"), "sheet.svg", "old");
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.createSymbolicLink(out.resolve("sheet.svg"), Path.of(real));
        WholeFiles.write(out, NEW);
        assertThat(out.resolve("sheet.svg")).isSymbolicLink();
        assertThat(Path.of(real)).hasContent("new");
        assertThat(CommandRun.filesBelow(folder.resolve("shelf"))).containsExactly("sheet.svg");
    }

    @Test
    void aLinkThatLeadsNowhereIsTold() throws IOException {
        Files.createSymbolicLink(folder.resolve("back.svg"), folder.resolve("gone.svg"));
        assertThatThrownBy(() -> WholeFiles.write(folder, NEW))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("back.svg")
                .hasMessageContaining("leads nowhere");
        assertThat(CommandRun.filesBelow(folder)).isEmpty();
    }

    @Test
    void theFolderMayBeALink() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real"));
        WholeFiles.write(Files.createSymbolicLink(folder.resolve("link"), real), NEW);
        assertThat(CommandRun.filesBelow(real)).hasSize(3);
    }

    @Test
    void whoMayReadAFileStaysAsItWas() throws IOException {
        Path draft = Path.of(CommandRun.file(folder, "smock.gusset", "old"));
        assumeTrue(
                Files.getFileStore(draft).supportsFileAttributeView("posix"),
                "files here have no permissions of POSIX");
        Files.setPosixFilePermissions(draft, PosixFilePermissions.fromString("rw-rw----"));
        WholeFiles.replace(draft, "new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(draft)))
                .isEqualTo("rw-rw----");
        assertThat(draft).hasContent("new");
    }

    @Test
    void whatAKilledRunLeftIsRemovedOnceNoRunCanStillWantIt() throws IOException {
        CommandRun.file(folder, ".gusset-1.part", "half a she");
        CommandRun.file(folder, ".gusset-2.old", "old");
        WholeFiles.write(folder, NEW);
        assertThat(CommandRun.filesBelow(folder)).contains(".gusset-1.part", ".gusset-2.old");
        Leftovers.clear(folder, Instant.now().plusSeconds(2));
        assertThat(CommandRun.filesBelow(folder)).containsExactly("back.svg", "front.svg", "sheet.svg");
    }

    @Test
    void aFullDiskAndOneThatCanOnlyBeRead() throws IOException, InterruptedException {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                ChildRun.does("mount", "-t", "tmpfs", "-o", "size=128k", "tmpfs", disk.toString()),
                "there is no right to mount a small disk here");
        try {
            WholeFiles.write(disk, inOrder("sheet.svg", "old", "back.svg", "old"));
            Map<String, String> large = inOrder("sheet.svg", "new", "back.svg", "n".repeat(200_000));
            assertThatThrownBy(() -> WholeFiles.write(disk, large))
                    .isInstanceOf(Refusal.class)
                    .hasMessage(
                            "`" + disk
                                    + "` cannot be written (the disk is full). Nothing was changed. Make room on it, or name a folder on another disk.");
            isOld(disk);
            assertThatThrownBy(() -> WholeFiles.replace(disk.resolve("sheet.svg"), "n".repeat(200_000)))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("the disk is full");
            isOld(disk);
            Path filler = Files.write(disk.resolve("filler"), new byte[118_000]);
            CommandRun run = drawn(disk);
            assertThat(run.err()).contains("the disk is full");
            assertThat(run.code()).isEqualTo(ExitCodes.WRONG_USE);
            Files.delete(filler);
            isOld(disk);

            assertThat(ChildRun.does("mount", "-o", "remount,ro", disk.toString()))
                    .isTrue();
            assertThatThrownBy(() -> WholeFiles.write(disk, NEW))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("Nothing was changed.")
                    .hasMessageNotContaining("Exception");
            assertThatThrownBy(() -> WholeFiles.write(disk, Map.of("other.svg", "new")))
                    .isInstanceOf(Refusal.class)
                    .hasMessage(
                            "`" + disk
                                    + "` cannot be written (the disk can only be read). Nothing was changed. Name a folder that you may write to.");
            isOld(disk);
        } finally {
            ChildRun.does("umount", "-l", disk.toString());
        }
    }

    private CommandRun drawn(Path out) {
        String draft = CommandRun.file(folder, "smock.gusset", "good");
        return CommandRun.of(
                "draw",
                draft,
                "--measures",
                CommandRun.file(folder, "cast.csv", "measure,Pip\nchest,72 cm\n"),
                "--paper",
                "A4",
                "--out",
                out.toString());
    }

    private static void isOld(Path disk) {
        assertThat(CommandRun.filesBelow(disk)).containsExactly("back.svg", "sheet.svg");
        assertThat(disk.resolve("sheet.svg")).hasContent("old");
        assertThat(disk.resolve("back.svg")).hasContent("old");
    }

    @Test
    void aUserWhoMayNotWriteIsToldSo() throws IOException, InterruptedException {
        boolean root = "root".equals(System.getProperty("user.name"));
        List<String> as = root ? List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups") : List.of();
        assumeTrue(!root || ChildRun.does("setpriv", "--version"), "root may write anything, and there is no setpriv");
        Path home = Files.createTempDirectory("gusset-protected");
        Path closed = Files.createDirectory(home.resolve("closed"));
        Path open = Files.createDirectory(home.resolve("open"));
        CommandRun.file(closed, "sheet.svg", "old");
        Path kept = Path.of(CommandRun.file(open, "sheet.svg", "old"));
        try {
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxrwxrwx"));
            Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rwxrwxrwx"));
            Files.setPosixFilePermissions(kept, PosixFilePermissions.fromString("r--r--r--"));
            Files.setPosixFilePermissions(closed.resolve("sheet.svg"), PosixFilePermissions.fromString("rw-rw-rw-"));
            Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
            Process run = ChildRun.of(as, Protected.class, closed.toString(), open.toString())
                    .redirectErrorStream(true)
                    .start();
            List<String> told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            assumeTrue(run.waitFor() == 0, () -> "nobody else can run here: " + told);
            assertThat(told)
                    .containsExactly(
                            "`" + closed
                                    + "` cannot be written (permission denied). Nothing was changed. Name a folder that you may write to.",
                            "`" + kept
                                    + "` is protected from being written over. Nothing was changed. Take the protection off, or name another folder.");
            assertThat(CommandRun.filesBelow(home)).containsExactly("closed/sheet.svg", "open/sheet.svg");
            assertThat(kept).hasContent("old");
        } finally {
            Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxrwxrwx"));
            for (Path file : List.of(kept, closed.resolve("sheet.svg"), open, closed, home)) {
                Files.deleteIfExists(file);
            }
        }
    }

    @Test
    void aRunThatIsKilledLeavesOnlyWholeFiles() throws IOException, InterruptedException {
        Random moments = new Random(20261129);
        for (int round = 0; round < Integer.getInteger("gusset.kills", 4); round++) {
            Path out = folder.resolve("killed " + round);
            ended(out, moments.nextInt(120), true);
            // A kill can fall between two moves; then the files are of two sets that follow one another.
            assertThat(Generations.letters(out)).as("round " + round).hasSizeBetween(1, 2);
            assertThat(CommandRun.filesBelow(out))
                    .filteredOn(name -> !Generations.NAMES.contains(name))
                    .allMatch(name -> name.startsWith(".gusset-"));
        }
    }

    @Test
    void aRunThatIsToldToStopLeavesOneSetAndNothingElse() throws IOException, InterruptedException {
        Random moments = new Random(20261130);
        for (int round = 0; round < Integer.getInteger("gusset.kills", 4); round++) {
            Path out = folder.resolve("stopped " + round);
            ended(out, moments.nextInt(120), false);
            assertThat(Generations.letters(out)).as("round " + round).hasSize(1);
            assertThat(CommandRun.filesBelow(out)).isEqualTo(Generations.NAMES);
        }
    }

    private static void ended(Path out, int afterMillis, boolean byForce) throws IOException, InterruptedException {
        Process run = ChildRun.of(List.of(), Generations.class, out.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader told =
                new BufferedReader(new InputStreamReader(run.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(told.readLine()).isEqualTo("begun");
            Thread.sleep(afterMillis);
            if (byForce) {
                run.destroyForcibly();
            } else {
                run.destroy();
            }
            assertThat(run.waitFor(20, TimeUnit.SECONDS)).isTrue();
        } finally {
            run.destroyForcibly();
        }
    }

    @Test
    void anOutputThatCannotBeWrittenWholeIsNotCalledGood() throws IOException, InterruptedException {
        File full = new File("/dev/full");
        assumeTrue(full.exists(), "there is no /dev/full here");
        Process run = ChildRun.of(List.of(), Workbench.class, "--version")
                .redirectOutput(full)
                .start();
        String told = new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor()).isEqualTo(ExitCodes.WRONG_USE);
        assertThat(told).contains("the output could not be written whole (No space left on device).");
    }
}
