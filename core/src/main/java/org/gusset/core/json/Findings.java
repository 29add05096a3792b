package org.gusset.core.json;

import java.util.List;
import java.util.Locale;
import org.gusset.core.check.Finding;
import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Wording;

/** Writes what checks and seams found. */
final class Findings {
    private final JsonText json;
    private final Wording wording;

    Findings(JsonText json, Wording wording) {
        this.json = json;
        this.wording = wording;
    }

    static String word(Finding.Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    void all(List<Finding> findings) {
        json.open('[');
        findings.forEach(this::finding);
        json.close(']');
    }

    private void finding(Finding finding) {
        json.open('{').key("name").text(finding.name());
        json.key("verdict").text(word(finding.verdict()));
        json.key("words").text(wording.say(finding.figures()));
        json.key("key").text(finding.figures().key());
        json.key("facts");
        new Amounts(json).facts(finding.figures());
        json.key("tested").open('[');
        finding.tested().forEach(this::tested);
        json.close(']').key("code");
        json.textOrNone(finding.diagnostic().map(d -> d.code().id()));
        json.key("place");
        new Messages(json, wording).place(finding.place());
        json.close('}');
    }

    private void tested(Tested tested) {
        json.open('{').key("what").text(wording.say(tested.what()));
        json.key("kind").text(Amounts.kind(tested.dimension()));
        json.key("value").number(tested.value());
        json.key("least").number(tested.least()).key("most").number(tested.most());
        json.key("tolerance").number(tested.tolerance());
        json.key("margin").number(tested.margin()).close('}');
    }
}
