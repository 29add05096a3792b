package org.gusset.site;

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
        List<String> words = List.of(args);
        boolean api = words.contains("--api");
        List<String> folders = words.stream().filter(w -> !w.startsWith("--")).toList();
        if (folders.size() != 2) {
            System.err.println("site: SiteBuild ROOT OUT [--api]");
            System.exit(2);
        }
        Path root = Path.of(folders.get(0)).toAbsolutePath().normalize();
        Path out = Path.of(folders.get(1)).toAbsolutePath().normalize();
        try {
            SiteFiles files = new SiteFiles(out);
            new Site(new Repository(root), files, api).write();
            if (api) {
                ApiDocs.write(root, out.resolve(ApiDocs.FOLDER));
            }
            System.out.println("site: " + files.count() + " files; open " + out.resolve("index.html"));
        } catch (IllegalStateException e) {
            System.err.println("site: " + e.getMessage());
            System.exit(1);
        }
    }
}
