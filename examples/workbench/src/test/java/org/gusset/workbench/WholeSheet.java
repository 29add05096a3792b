package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.Sheets;

/** All stroked lines of one piece as the sheet with all pieces draws them. */
record WholeSheet(List<Path> lines) {
    static WholeSheet piece(Drawing drawing, String name) {
        List<Path> lines = new ArrayList<>();
        for (Ink ink :
                Sheets.all(SheetContent.of(drawing), SheetOptions.defaults()).items()) {
            if (ink instanceof Ink.Group group && group.id().equals("piece-" + name)) {
                collect(group, new Vector(0, 0), lines);
            }
        }
        return new WholeSheet(lines);
    }

    private static void collect(Ink ink, Vector shift, List<Path> lines) {
        if (ink instanceof Ink.Group group) {
            group.items().forEach(item -> collect(item, shift.plus(group.shift()), lines));
        } else if (ink instanceof Ink.Stroke stroke) {
            lines.add(stroke.path().transformed(Transform.shift(shift)));
        }
    }
}
