package org.gusset.site;

import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** The command: {@code SiteBuild ROOT OUT [--api]}. */
public final class SiteBuild {
    private SiteBuild() {}

    /**
     * Builds the site and says where it lies.
     *
     * @param args the folder of the project, the folder to write to, and {@code --api} for the pages of the Java interface
     */
    public static void main(String[] args) {
        int code = run(List.of(args), System.out, System.err);
        if (code != 0) {
            System.exit(code);
        }
    }

    /** Builds; 0 if the site is there, 1 if it could not be built, 2 if the words are off. */
    static int run(List<String> words, PrintStream out, PrintStream err) {
        boolean api = words.size() == 3 && words.get(2).equals("--api");
        if (words.size() != 2 && !api) {
            err.println("site: SiteBuild ROOT OUT [--api]");
            return 2;
        }
        try {
            Path root = Path.of(words.get(0)).toAbsolutePath().normalize();
            Path to = Path.of(words.get(1)).toAbsolutePath().normalize();
            SiteFiles files = new SiteFiles(to);
            new Site(new Repository(root), files, api).write();
            if (api) {
                ApiDocs.write(root, to.resolve(ApiDocs.FOLDER));
            }
            out.println("site: " + files.count() + " files; open " + to.resolve("index.html"));
            return 0;
        } catch (IllegalStateException | InvalidPathException e) {
            err.println("site: " + e.getMessage());
        } catch (UncheckedIOException e) {
            err.println("site: a file could not be read or written: " + e.getCause());
        }
        return 1;
    }
}
