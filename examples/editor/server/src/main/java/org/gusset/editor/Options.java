package org.gusset.editor;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import org.gusset.core.measure.LengthStyle;
import org.jspecify.annotations.Nullable;

/**
 * What the editor's user has chosen, under {@code gusset} in the settings.
 *
 * @param measures the table of measures; empty for none, so that no values are shown
 * @param body the name of the body in it; empty for the first
 * @param unit how lengths are shown: mm, cm or in
 * @param values whether values stand beside definitions
 * @param delay how long the server waits after a key before it tells what is wrong, in ms
 */
record Options(String measures, String body, String unit, boolean values, int delay) {
    private static final int DELAY = 150;
    private static final int LONGEST_DELAY = 5000;

    static Options defaults() {
        return new Options("", "", "cm", true, DELAY);
    }

    LengthStyle style() {
        return switch (unit) {
            case "mm" -> LengthStyle.MM;
            case "in" -> LengthStyle.INCHES;
            default -> LengthStyle.CM;
        };
    }

    /** What an editor sends, with or without {@code gusset} around it; what it leaves out or sends in another form stays as it is. */
    Options with(@Nullable Object sent) {
        JsonObject all = object(sent);
        if (all == null) {
            return this;
        }
        JsonObject inner = object(all.get("gusset"));
        JsonObject own = inner == null ? all : inner;
        return new Options(
                text(own, "measures", measures),
                text(own, "body", body),
                text(own, "unit", unit),
                flag(own, "values", values),
                Math.max(0, Math.min(LONGEST_DELAY, number(own, "delay", delay))));
    }

    private static @Nullable JsonObject object(@Nullable Object sent) {
        if (sent == null) {
            return null;
        }
        try {
            JsonElement element = sent instanceof JsonElement json ? json : new Gson().toJsonTree(sent);
            return element.isJsonObject() ? element.getAsJsonObject() : null;
        } catch (JsonParseException | IllegalArgumentException e) {
            return null;
        }
    }

    private static String text(JsonObject own, String name, String otherwise) {
        JsonElement value = own.get(name);
        boolean text = value != null
                && value.isJsonPrimitive()
                && value.getAsJsonPrimitive().isString();
        return text ? value.getAsString() : otherwise;
    }

    private static boolean flag(JsonObject own, String name, boolean otherwise) {
        JsonElement value = own.get(name);
        boolean flag = value != null
                && value.isJsonPrimitive()
                && value.getAsJsonPrimitive().isBoolean();
        return flag ? value.getAsBoolean() : otherwise;
    }

    private static int number(JsonObject own, String name, int otherwise) {
        JsonElement value = own.get(name);
        boolean number = value != null
                && value.isJsonPrimitive()
                && value.getAsJsonPrimitive().isNumber();
        return number ? (int) value.getAsDouble() : otherwise;
    }
}
