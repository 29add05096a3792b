package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;

/**
 * Lays a {@link Form} out on upright pages of A4 (210 by 297 mm, ISO 216). Type grows smaller, down to what is still read, if that brings it on one
 * page; else it goes on to more pages, no row parted.
 */
public final class FormPages {
    private static final double WIDTH = 210;
    private static final double HEIGHT = 297;
    private static final double MARGIN = 14;
    private static final double[] SCALES = {1, 0.92, 0.85, 0.78, 0.72};
    private static final double TITLE = 6.5;
    private static final double HEADING = 4.6;
    private static final double BODY = 3.6;
    private static final double SMALL = 2.9;
    private static final double PADDING = 1.1;

    private final Form form;
    private final double scale;
    private final List<List<Ink>> pages = new ArrayList<>();
    private List<Ink> page = new ArrayList<>();
    private double y = MARGIN;

    private FormPages(Form form, double scale) {
        this.form = form;
        this.scale = scale;
    }

    /** The pages, in order; one if it can be. */
    public static List<Scene> of(Form form) {
        List<Scene> scenes = new FormPages(form, 1).scenes();
        for (int i = 1; i < SCALES.length && scenes.size() > 1; i++) {
            List<Scene> smaller = new FormPages(form, SCALES[i]).scenes();
            scenes = smaller.size() < scenes.size() ? smaller : scenes;
        }
        return scenes;
    }

    private List<Scene> scenes() {
        words(Role.SHEET_TITLE, form.title(), TITLE, true);
        form.notes().forEach(note -> words(Role.LABEL, note, BODY, false));
        form.sections().forEach(this::section);
        if (!form.foot().isBlank()) {
            y += PADDING * 2;
            words(Role.SMALL_PRINT, form.foot(), SMALL, false);
        }
        pages.add(page);
        List<Scene> scenes = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String title =
                    pages.size() == 1 ? form.title() : form.title() + ", page " + (i + 1) + " of " + pages.size();
            List<Ink> items = new ArrayList<>(pages.get(i));
            if (pages.size() > 1) {
                items.add(new Ink.TextLine(
                        Role.SMALL_PRINT,
                        new Point(WIDTH - MARGIN, HEIGHT - MARGIN / 2),
                        Ink.Anchor.END,
                        0,
                        SMALL,
                        "page " + (i + 1) + " of " + pages.size()));
            }
            scenes.add(new Scene(title, form.foot(), WIDTH, HEIGHT, items));
        }
        return scenes;
    }

    private void room(double height) {
        if (y + height > HEIGHT - MARGIN && y > MARGIN) {
            pages.add(page);
            page = new ArrayList<>();
            y = MARGIN;
        }
    }

    private void words(Role role, String text, double size, boolean bold) {
        double type = size * scale;
        for (String line : LineBreaks.broken(text, WIDTH - 2 * MARGIN, 0, type, bold)) {
            room(type * TextMeasure.LEADING);
            line(role, MARGIN, type, line);
            y += type * TextMeasure.LEADING;
        }
    }

    private void line(Role role, double x, double type, String text) {
        page.add(Ink.TextLine.upright(role, new Point(x, y + type * TextMeasure.ASCENT), type, text));
    }

    private void section(Form.Section section) {
        double heading = HEADING * scale * TextMeasure.LEADING;
        List<Double> widths = FormColumns.widths(section, WIDTH - 2 * MARGIN, BODY * scale, SMALL * scale);
        double first = section.rows().isEmpty() ? 0 : height(section.rows().get(0), widths);
        double heads = section.heads().isEmpty() ? 0 : SMALL * scale * TextMeasure.LEADING + PADDING;
        y += 3 * PADDING * scale;
        room(heading + heads + first);
        line(Role.PIECE_NAME, MARGIN, HEADING * scale, section.title());
        y += heading;
        if (!section.heads().isEmpty()) {
            double x = MARGIN;
            for (int c = 0; c < section.heads().size(); c++) {
                line(Role.SMALL_PRINT, x, SMALL * scale, section.heads().get(c));
                x += widths.get(c) + FormColumns.GAP;
            }
            y += heads;
        }
        rule();
        for (Form.Row row : section.rows()) {
            double height = height(row, widths);
            room(height);
            row(row, widths, height);
            y += height;
            rule();
        }
    }

    private void rule() {
        page.add(Ink.Stroke.of(Role.DIVIDER, Path.line(new Point(MARGIN, y), new Point(WIDTH - MARGIN, y))));
    }

    private double height(Form.Row row, List<Double> widths) {
        double most = 0;
        for (int c = 0; c < row.cells().size(); c++) {
            Form.Cell cell = row.cells().get(c);
            double own = 0;
            if (cell instanceof Form.Blank blank) {
                own = blank.height();
            } else {
                for (Line line : lines((Form.Words) cell, widths.get(c))) {
                    own += line.type() * TextMeasure.LEADING;
                }
            }
            most = Math.max(most, own);
        }
        return most + 2 * PADDING * scale;
    }

    /** One line of a cell. */
    private record Line(Role role, double type, String text) {}

    private List<Line> lines(Form.Words words, double width) {
        List<Line> lines = new ArrayList<>();
        add(lines, Role.LABEL, BODY * scale, words.text(), width);
        add(lines, Role.SMALL_PRINT, SMALL * scale, words.small(), width);
        return lines;
    }

    private static void add(List<Line> lines, Role role, double type, String text, double width) {
        if (!text.isBlank()) {
            // A hair more than the words were measured for, so that what just fits is not broken.
            LineBreaks.broken(text, width + 1e-6, 0, type, false).forEach(l -> lines.add(new Line(role, type, l)));
        }
    }

    private void row(Form.Row row, List<Double> widths, double height) {
        double top = y;
        double x = MARGIN;
        for (int c = 0; c < row.cells().size(); c++) {
            y = top + PADDING * scale;
            if (row.cells().get(c) instanceof Form.Words words) {
                for (Line line : lines(words, widths.get(c))) {
                    line(line.role(), x, line.type(), line.text());
                    y += line.type() * TextMeasure.LEADING;
                }
            } else {
                box(x, y, widths.get(c), height - 2 * PADDING * scale);
            }
            x += widths.get(c) + FormColumns.GAP;
        }
        y = top;
    }

    private void box(double x, double top, double width, double height) {
        Point a = new Point(x, top);
        Point b = new Point(x + width, top);
        Point c = new Point(x + width, top + height);
        Point d = new Point(x, top + height);
        page.add(Ink.Stroke.of(Role.BLANK_BOX, Path.line(a, b, c, d, a)));
    }
}
