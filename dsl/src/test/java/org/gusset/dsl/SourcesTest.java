package org.gusset.dsl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of files as drafts say them, and texts that are lent by their names. */
class SourcesTest {
    @ParameterizedTest
    @CsvSource({
        "skirt.gusset, necks.gusset, necks.gusset",
        "skirt.gusset, rules/necks.gusset, rules/necks.gusset",
        "rules/necks.gusset, arms.gusset, rules/arms.gusset",
        "rules/necks.gusset, ../skirt.gusset, skirt.gusset",
        "rules/deep/necks.gusset, ../../skirt.gusset, skirt.gusset",
        "rules/necks.gusset, ./arms.gusset, rules/arms.gusset",
        "rules/necks.gusset, ../rules/../a.gusset, a.gusset",
        "skirt.gusset, %2e%2e/a.gusset, %2e%2e/a.gusset",
        "skirt.gusset, Röcke/Saum 2.gusset, Röcke/Saum 2.gusset",
        "skirt.gusset, .hidden, .hidden"
    })
    void aNameCountsFromTheFolderOfTheFileInWhichItStands(String asking, String written, String file) {
        assertThat(FileName.objection(written)).isEmpty();
        assertThat(FileName.from(asking, written)).contains(file);
    }

    @ParameterizedTest
    @ValueSource(strings = {"..", ".", "../skirt.gusset", "rules/../../skirt.gusset", "../../../../etc/passwd"})
    void aNameThatLeadsOutIsNowhere(String written) {
        assertThat(FileName.from("skirt.gusset", written)).isEmpty();
    }

    /** Device names: Microsoft, Naming Files, Paths, and Namespaces. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/etc/passwd",
                "//server/share",
                "\\\\server\\share",
                "a\\b",
                "C:a",
                "C:/a",
                "file:///a",
                "a:stream",
                "a//b",
                "a/",
                "a.",
                "a ",
                "a./b",
                "...",
                "con",
                "NUL",
                "aux.gusset",
                "Com1.txt.gusset",
                "lpt9",
                "COM²",
                "prn .gusset",
                "a\0",
                "a\nb",
                "a\u202eb",
                "a\u200b",
                "a\ud800",
                "a*",
                "a?",
                "a|b",
                "<a>",
                "a\"b"
            })
    void whatSomeSystemTakesForSomethingElseIsNoName(String written) {
        assertThat(FileName.objection(written)).isPresent();
        assertThat(FileName.from("skirt.gusset", written)).isEmpty();
    }

    @Test
    void aNameIsBounded() {
        assertThat(FileName.objection("a".repeat(FileName.LONGEST))).isEmpty();
        assertThat(FileName.objection("a".repeat(FileName.LONGEST + 1))).isPresent();
    }

    @Test
    void textsAreLentByTheirNames() {
        Sources sources = Sources.of(
                Map.of("skirt.gusset", "draft \"Skirt\"\n", "rules/necks.gusset", "draft \"Necks\"\nlet v = 1 cm\n"));
        Source skirt = Source.of("skirt.gusset", "draft \"Skirt\"\n");
        Sources.Answer necks = sources.find("rules/necks.gusset", skirt);
        assertThat(necks.source().orElseThrow().name()).isEqualTo("rules/necks.gusset");
        assertThat(sources.find("../skirt.gusset", necks.source().orElseThrow()).source())
                .contains(skirt);
        assertThat(sources.find("../etc/passwd", skirt).why())
                .isEqualTo("it lies outside the folder of the first draft");
        assertThat(sources.find("Skirt.gusset", skirt).why())
                .isEqualTo("there is no such file in the folder of this draft");
        assertThat(sources.find("a\\b", skirt).why()).isEqualTo("folders are parted by `/`, not by `\\`");
        assertThat(sources.find("nul", skirt).why()).isEqualTo("this cannot be the name of a file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/skirt.gusset", "../skirt.gusset", "./skirt.gusset", "rules/../skirt.gusset", "nul"})
    void aNameThatNoDraftCouldSayIsRefused(String name) {
        assertThatIllegalArgumentException().isThrownBy(() -> Sources.of(Map.of(name, "")));
    }
}
