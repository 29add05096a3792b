package org.gusset.svg.internal.write;

import java.util.EnumMap;
import java.util.Map;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;

/**
 * Writes a scene as an SVG document whose user unit is the millimetre. Looks are written as presentation attributes on each
 * element, which every renderer understands; classes carry the roles.
 */
public final class SvgWriter {
    private final StyleTable styles;
    private final Xml xml = Xml.document();

    /** The attributes of each pen that was used, since a document has many strokes and few pens. */
    private final Map<Role, String> looks = new EnumMap<>(Role.class);

    /** The class attribute of each role that was used. */
    private final Map<Role, String> classes = new EnumMap<>(Role.class);

    private SvgWriter(StyleTable styles) {
        this.styles = styles;
    }

    /** The whole document, ending with a line break. */
    public static String write(Scene scene, StyleTable styles) {
        SvgWriter writer = new SvgWriter(styles);
        writer.document(scene);
        return writer.xml.toString();
    }

    private void document(Scene scene) {
        xml.begin("svg")
                .word("xmlns", "http://www.w3.org/2000/svg")
                .word("version", "1.1")
                .attribute("width", Numbers.text(scene.width()) + "mm")
                .attribute("height", Numbers.text(scene.height()) + "mm")
                .attribute("viewBox", "0 0 " + Numbers.text(scene.width()) + " " + Numbers.text(scene.height()))
                .word("role", "img")
                .attribute("aria-labelledby", "sheet-title sheet-description")
                .word("font-family", "sans-serif");
        xml.begin("title").attribute("id", "sheet-title").end(scene.title());
        xml.begin("desc").attribute("id", "sheet-description").end(scene.description());
        xml.begin("rect")
                .word("class", "paper")
                .attribute("width", scene.width())
                .attribute("height", scene.height())
                .word("fill", "#ffffff")
                .end();
        scene.items().forEach(this::ink);
        xml.end();
    }

    private void ink(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            stroke(stroke);
        } else if (ink instanceof Ink.Fill fill) {
            xml.begin("path");
            role(fill.role())
                    .attribute("d", fill.outline())
                    .word("fill", styles.pen(fill.role()).colour())
                    .word("stroke", "none")
                    .end();
        } else if (ink instanceof Ink.Dot dot) {
            xml.begin("circle");
            role(dot.role())
                    .attribute("cx", dot.centre().x())
                    .attribute("cy", dot.centre().y())
                    .attribute("r", dot.radius())
                    .word("fill", styles.pen(dot.role()).colour())
                    .word("stroke", "none")
                    .end();
        } else if (ink instanceof Ink.TextLine line) {
            text(line);
        } else if (ink instanceof Ink.Window window) {
            window(window);
        } else {
            group((Ink.Group) ink);
        }
    }

    private void stroke(Ink.Stroke stroke) {
        xml.begin("path");
        stroke.id().ifPresent(id -> xml.attribute("id", id));
        role(stroke.role())
                .attribute("d", stroke.path())
                .attributes(looks.computeIfAbsent(stroke.role(), this::look))
                .end();
    }

    private String look(Role role) {
        Pen pen = styles.pen(role);
        Xml look = Xml.attributes()
                .word("fill", "none")
                .word("stroke", pen.colour())
                .attribute("stroke-width", pen.weight());
        if (!pen.dashes().isEmpty()) {
            look.attribute("stroke-dasharray", pen.dashes());
        }
        return look.toString();
    }

    private void text(Ink.TextLine line) {
        Lettering lettering = styles.lettering(line.role());
        xml.begin("text");
        role(line.role())
                .attribute("x", line.at().x())
                .attribute("y", line.at().y())
                .attribute("font-size", line.size());
        if (lettering.bold()) {
            xml.word("font-weight", "bold");
        }
        if (line.anchor() != Ink.Anchor.START) {
            xml.word("text-anchor", line.anchor() == Ink.Anchor.MIDDLE ? "middle" : "end");
        }
        String turn = line.turn() == 0 ? "0" : Numbers.text(-line.turn());
        if (!turn.equals("0")) {
            xml.attribute(
                    "transform",
                    "rotate(" + turn + " " + Numbers.text(line.at().x()) + " "
                            + Numbers.text(line.at().y()) + ")");
        }
        xml.word("fill", lettering.colour()).end(line.text());
    }

    private void window(Ink.Window window) {
        String clip = window.id() + "-frame";
        xml.begin("clipPath").attribute("id", clip);
        xml.begin("rect")
                .attribute("x", window.frame().left())
                .attribute("y", window.frame().top())
                .attribute("width", window.frame().width())
                .attribute("height", window.frame().height())
                .end();
        xml.end();
        xml.begin("g")
                .attribute("id", window.id())
                .word("class", "window")
                .attribute("clip-path", "url(#" + clip + ")");
        window.items().forEach(this::ink);
        xml.end();
    }

    private void group(Ink.Group group) {
        xml.begin("g").attribute("id", group.id()).attribute("class", group.kind());
        if (group.kind().equals(Ink.Group.NAMED)) {
            xml.attribute("data-name", group.title());
        }
        Vector shift = group.shift();
        if (shift.dx() != 0 || shift.dy() != 0) {
            xml.attribute("transform", "translate(" + Numbers.text(shift.dx()) + " " + Numbers.text(shift.dy()) + ")");
        }
        if (!group.title().isEmpty()) {
            String titleId = group.id() + "-title";
            xml.word("role", "group").attribute("aria-labelledby", titleId);
            xml.begin("title").attribute("id", titleId).end(group.title());
        }
        if (!group.description().isEmpty()) {
            xml.begin("desc").end(group.description());
        }
        group.items().forEach(this::ink);
        xml.end();
    }

    private Xml role(Role role) {
        return xml.attributes(classes.computeIfAbsent(
                role, r -> Xml.attributes().word("class", r.className()).toString()));
    }
}
