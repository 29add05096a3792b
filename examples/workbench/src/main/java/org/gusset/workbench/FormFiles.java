package org.gusset.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.svg.Svg;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.Form;
import org.gusset.svg.sheet.FormPages;
import org.gusset.svg.style.StyleTable;

/** The pages of a form as SVG files. */
final class FormFiles {
    private FormFiles() {}

    /** The pages by file name: {@code smock-maren-oddway-sewing.svg}, and numbered if there are several. */
    static Map<String, String> of(Form form, String... stem) {
        Map<String, String> files = new LinkedHashMap<>();
        FileNames names = new FileNames();
        List<Scene> pages = FormPages.of(form);
        for (int i = 0; i < pages.size(); i++) {
            List<String> parts = new ArrayList<>(List.of(stem));
            if (pages.size() > 1) {
                parts.add(Integer.toString(i + 1));
            }
            files.put(
                    names.unused(".svg", parts.toArray(new String[0])), Svg.write(pages.get(i), StyleTable.drafting()));
        }
        return files;
    }
}
