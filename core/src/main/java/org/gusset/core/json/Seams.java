package org.gusset.core.json;

import java.util.List;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.seam.Hem;
import org.gusset.core.seam.SeamMark;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.SewnSeam;
import org.gusset.core.seam.Stretch;
import org.gusset.core.seam.Walk;
import org.gusset.core.seam.WalkedSide;

/** Writes how the pieces are sewn together. */
final class Seams {
    private final JsonText json;
    private final Messages messages;

    Seams(JsonText json, Wording wording) {
        this.json = json;
        this.messages = new Messages(json, wording);
    }

    void sewing(Sewing sewing) {
        json.open('{').key("seams").open('[');
        for (int i = 0; i < sewing.seams().size(); i++) {
            seam(sewing.seams().get(i), sewing.findings().get(i), sewing.needs().get(i));
        }
        json.close(']').key("hems").open('[');
        sewing.hems().forEach(this::hem);
        json.close(']').close('}');
    }

    private void seam(SewnSeam seam, Finding finding, List<String> needs) {
        Walk walk = seam.walk();
        json.open('{').key("name").text(seam.name());
        json.key("verdict").text(Findings.word(finding.verdict()));
        json.key("needs").open('[');
        needs.forEach(json::text);
        json.close(']').key("first");
        side(seam.first(), seam.firstMarks(), seam.firstAllowance());
        json.key("second");
        side(seam.second(), seam.secondMarks(), seam.secondAllowance());
        json.key("ease").number(seam.ease()).key("wantedEase");
        if (walk.ease().isPresent()) {
            band(walk.ease().get());
        } else {
            json.none();
        }
        json.key("tolerance").number(walk.tolerance());
        json.key("pressed");
        json.textOrNone(Optional.of(walk.pressed()).filter(words -> !words.isEmpty()));
        json.key("stretches").open('[');
        seam.stretches().forEach(this::stretch);
        json.close(']').key("place");
        messages.place(walk.place());
        json.close('}');
    }

    private void side(WalkedSide side, List<SeamMark> marks, Optional<Double> allowance) {
        json.open('{').key("length").number(side.length());
        json.key("allowance");
        json.numberOrNone(allowance);
        json.key("edges").open('[');
        for (WalkedSide.Leg leg : side.legs()) {
            json.open('{').key("words").text(leg.run().words());
            json.key("piece");
            json.textOrNone(Optional.of(leg.run().piece()).filter(name -> !name.isEmpty()));
            json.key("edge");
            json.textOrNone(Optional.of(leg.run().edge()).filter(name -> !name.isEmpty()));
            json.key("from").number(leg.from()).key("to").number(leg.to());
            json.key("reversed").truth(leg.reversed()).close('}');
        }
        json.close(']').key("marks").open('[');
        for (SeamMark mark : marks) {
            json.open('{').key("at").number(mark.at()).key("strokes").number(mark.strokes());
            json.key("piece").text(mark.piece()).key("edge").text(mark.edge()).close('}');
        }
        json.close(']').close('}');
    }

    private void stretch(Stretch stretch) {
        json.open('{').key("from");
        json.textOrNone(Optional.of(stretch.from()).filter(words -> !words.isEmpty()));
        json.key("to");
        json.textOrNone(Optional.of(stretch.to()).filter(words -> !words.isEmpty()));
        json.key("first").open('[').number(stretch.firstFrom());
        json.number(stretch.firstTo()).close(']');
        json.key("second").open('[').number(stretch.secondFrom());
        json.number(stretch.secondTo()).close(']');
        json.key("ease").number(stretch.ease()).key("wantedEase");
        band(stretch.wanted());
        json.close('}');
    }

    private void band(Walk.Band band) {
        json.open('{').key("least").number(band.low());
        json.key("most").number(band.high()).close('}');
    }

    private void hem(Hem hem) {
        json.open('{').key("piece").text(hem.piece()).key("edge").text(hem.edge());
        json.key("width").number(hem.width()).key("offGrainDegrees").number(hem.offGrain());
        json.key("hangFirst").truth(hem.drops()).close('}');
    }
}
