package org.gusset.workbench;

import java.nio.file.Path;
import java.util.List;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;

/** What a draft may write behind {@code use} to reach what it is not lent. */
final class HostileNames {
    /** Beside the folder of the first draft. */
    static final String SECRET = "secret.gusset";

    private HostileNames() {}

    /** @param first a draft in a folder with {@code rules/necks.gusset}, {@code out.gusset} (a link to the secret) and a pipe {@code pipe} */
    static List<HostileInput> all(Path first) {
        Source asking = Source.of(first.toString(), "draft \"First\"");
        String above = "it lies outside the folder of the first draft";
        String none = "this cannot be the name of a file";
        String root = "a file is named from the folder of this draft, not from the root of the disk";
        String missing = "there is no such file in the folder of this draft";
        String strokes = "folders are parted by `/`, not by `\\`";
        return List.of(
                name("`../secret.gusset`", above, "../secret.gusset", asking),
                name("`rules/../../secret.gusset`", above, "rules/../../secret.gusset", asking),
                name(
                        "the whole path, `/tmp/.../secret.gusset`",
                        root,
                        first.resolveSibling(SECRET).toAbsolutePath().toString().replace('\\', '/'),
                        asking),
                name("`C:secret.gusset`, `C:/secret.gusset`", root, "C:/secret.gusset", asking),
                name("`file:///etc/passwd`", root, "file:///etc/passwd", asking),
                name("`//server/share/secret.gusset`", root, "//server/share/secret.gusset", asking),
                name("`\\\\server\\share\\secret.gusset`", strokes, "\\\\server\\share\\secret.gusset", asking),
                name("`..\\secret.gusset`", strokes, "..\\secret.gusset", asking),
                name("`%2e%2e/secret.gusset`, `..%2fsecret.gusset`", missing, "%2e%2e/secret.gusset", asking),
                name("`rules/necks.gusset.`, `rules/necks.gusset ` with a blank", none, "rules/necks.gusset.", asking),
                name("`.../secret.gusset`", none, ".../secret.gusset", asking),
                name("`rules//necks.gusset`", none, "rules//necks.gusset", asking),
                name("`NUL`, `con.gusset`, `rules/COM1.gusset`", none, "con.gusset", asking),
                name("`necks.gusset::$DATA`", root, "rules/necks.gusset::$DATA", asking),
                name(
                        "a NUL, a line break, a sign that turns the way of reading",
                        none,
                        "rules/necks.gusset\0.png",
                        asking),
                name("a name of 300 letters", none, "a".repeat(300), asking),
                name("`rules`, a folder", "it is a folder", "rules", asking),
                name(
                        "a link to a file outside",
                        "it is a link to a place outside the folder of the first draft",
                        "out.gusset",
                        asking),
                name("a pipe, a device", "it is no file with text", "pipe", asking),
                name("a file of five megabytes", "it is larger than a draft can be", "huge.gusset", asking));
    }

    private static HostileInput name(String what, String gets, String name, Source asking) {
        return new HostileInput(what, gets, () -> {
            Sources.Answer answer = new FolderSources(asking).find(name, asking);
            return answer.source().map(s -> "lent: " + s.name()).orElse(answer.why());
        });
    }
}
