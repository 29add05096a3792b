package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What files drafts can reach. */
class FolderSourcesTest {
    @TempDir
    Path folder;

    private Source written(String name, String text) {
        int slash = name.lastIndexOf('/');
        Path in = slash < 0 ? folder : folder.resolve(name.substring(0, slash));
        return Source.of(CommandRun.file(in, name.substring(slash + 1), text), text);
    }

    private static String why(FolderSources sources, String file, Source asking) {
        Sources.Answer answer = sources.find(file, asking);
        assertThat(answer.source()).isEmpty();
        return answer.why();
    }

    @Test
    void aNameCountsFromTheFolderOfTheDraftInWhichItStands() {
        Source first = written("shop/first.gusset", "draft \"A\"");
        Source rules = written("shop/rules/rules.gusset", "draft \"B\"");
        written("shop/rules/more.gusset", "draft \"C\"");
        FolderSources sources = new FolderSources(first);
        assertThat(sources.find("rules/rules.gusset", first).source()).contains(rules);
        assertThat(sources.find("more.gusset", rules).source()).isPresent();
        assertThat(sources.find("../rules/more.gusset", rules).source()).isPresent();
        assertThat(sources.find("../first.gusset", rules).source().orElseThrow().name())
                .isEqualTo(first.name());
        assertThat(sources.all()).hasSize(4);
    }

    @Test
    void whatLiesOutsideOfTheFirstFolderIsRefused() throws IOException {
        Source first = written("shop/first.gusset", "draft \"A\"");
        Source outside = written("secret.gusset", "draft \"S\"");
        FolderSources sources = new FolderSources(first);
        assertThat(why(sources, "../secret.gusset", first)).isEqualTo("it lies outside the folder of the first draft");
        assertThat(why(sources, "rules/../../secret.gusset", first)).contains("outside");
        assertThat(why(sources, outside.name(), first)).contains("not from the root of the disk");
        assertThat(why(sources, "nothing.gusset", first)).contains("no such file");
        assertThat(why(sources, ".", first)).contains("folder");
        assertThat(why(sources, "a\0b", first)).contains("cannot be the name");
        Files.write(folder.resolve("shop/picture.gusset"), new byte[] {0, 1, 2, 3});
        assertThat(why(sources, "picture.gusset", first)).contains("not a text file");
    }

    @Test
    void aLinkThatLeadsOutIsRefused() throws IOException {
        Source first = written("shop/first.gusset", "draft \"A\"");
        written("secret.gusset", "draft \"S\"");
        Path link = folder.resolve("shop/link.gusset");
        try {
            Files.createSymbolicLink(link, folder.resolve("secret.gusset"));
        } catch (UnsupportedOperationException | IOException e) {
            assumeThat(false).as("no links here").isTrue();
        }
        assertThat(why(new FolderSources(first), "link.gusset", first)).contains("link");
    }

    @Test
    void messagesShowTheLineOfTheFileThatIsUsed() {
        String draft =
                CommandRun.file(folder, "first.gusset", "draft \"A\"\nuse \"rules/r.gusset\" as r\nlet x = r.y\n");
        CommandRun.file(folder.resolve("rules"), "r.gusset", "draft \"R\"\nlet y = 3 cm + 4 deg\n");
        CommandRun run = CommandRun.standard("check", draft);
        assertThat(run.out()).contains("r.gusset:2:9: error DIM001").contains("let y = 3 cm + 4 deg");
        assertThat(run.code()).isNotZero();
    }
}
