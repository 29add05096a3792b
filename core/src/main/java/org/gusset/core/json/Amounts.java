package org.gusset.core.json;

import java.util.Map;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/** Writes typed values and facts: each is an object with its {@code kind}, and its unit is the name of its figure. */
final class Amounts {
    private final JsonText json;

    Amounts(JsonText json) {
        this.json = json;
    }

    void facts(Phrase phrase) {
        json.open('{');
        for (Map.Entry<String, Fact> entry : phrase.facts().entrySet()) {
            json.key(entry.getKey()).open('{').key("kind");
            fact(entry.getValue());
            json.close('}');
        }
        json.close('}');
    }

    private void fact(Fact fact) {
        if (fact instanceof Fact.Words words) {
            json.text("words").key("text").text(words.text());
        } else if (fact instanceof Fact.Length length) {
            json.text("length").key("mm").number(length.mm());
        } else if (fact instanceof Fact.Area area) {
            json.text("area").key("squareMm").number(area.squareMm());
        } else if (fact instanceof Fact.Angle angle) {
            json.text("angle").key("degrees").number(angle.degrees());
        } else if (fact instanceof Fact.Said said) {
            json.text("phrase").key("key").text(said.phrase().key());
            json.key("english").text(said.phrase().english()).key("facts");
            facts(said.phrase());
        } else {
            json.text("number").key("value").number(((Fact.Number) fact).value());
        }
    }

    void value(NamedValue value) {
        if (value instanceof NamedValue.Amount amount) {
            quantity(amount.quantity());
        } else if (value instanceof NamedValue.Word word) {
            json.open('{')
                    .key("kind")
                    .text("word")
                    .key("word")
                    .text(word.word())
                    .close('}');
        } else {
            boolean yes = ((NamedValue.Answer) value).yes();
            json.open('{').key("kind").text("answer").key("yes").truth(yes).close('}');
        }
    }

    void quantity(Quantity quantity) {
        json.open('{').key("kind").text(kind(quantity.dimension()));
        json.key(unit(quantity.dimension())).number(quantity.value());
        if (kind(quantity.dimension()).equals("mixed")) {
            json.key("lengthPower").number(quantity.dimension().length());
            json.key("anglePower").number(quantity.dimension().angle());
        }
        json.close('}');
    }

    void point(Point point) {
        json.open('[').number(point.x()).number(point.y()).close(']');
    }

    static String kind(Dimension dimension) {
        if (dimension.equals(Dimension.LENGTH)) {
            return "length";
        } else if (dimension.equals(Dimension.AREA)) {
            return "area";
        } else if (dimension.equals(Dimension.ANGLE)) {
            return "angle";
        }
        return dimension.equals(Dimension.NUMBER) ? "number" : "mixed";
    }

    private static String unit(Dimension dimension) {
        return switch (kind(dimension)) {
            case "length" -> "mm";
            case "area" -> "squareMm";
            case "angle" -> "degrees";
            default -> "value";
        };
    }
}
