package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.LengthStyle;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that all commands share: choices and the unit that lengths are shown in. */
final class Tailoring {
    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description = "Set a choice of the draft, as @|bold --set ease='10 cm'|@, @|bold --set neckline=round|@ or "
                    + "@|bold --set pockets=no|@. Once for each choice.")
    private List<String> settings = new ArrayList<>();

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            converter = UnitStyle.class,
            description =
                    "Show lengths in @|bold cm|@ (unless told), @|bold mm|@ or @|bold in|@, inches with tape fractions.")
    private LengthStyle style = LengthStyle.CM;

    /** Reads a unit as a style of lengths. */
    static final class UnitStyle implements ITypeConverter<LengthStyle> {
        @Override
        public LengthStyle convert(String value) {
            return switch (value) {
                case "cm" -> LengthStyle.CM;
                case "mm" -> LengthStyle.MM;
                case "in" -> LengthStyle.INCHES;
                default -> throw new TypeConversionException("it is cm, mm or in, not `" + value + "`");
            };
        }
    }

    LengthStyle style() {
        return style;
    }

    Choices choices() {
        Choices choices = Choices.none();
        for (String setting : settings) {
            int equals = setting.indexOf('=');
            String name = equals < 0 ? "" : setting.substring(0, equals).strip();
            if (name.isEmpty()) {
                throw new Refusal(
                        "`--set " + setting + "` must be a name, an equals sign and a value, as `--set ease='10 cm'`.");
            }
            if (choices.settings().containsKey(name)) {
                throw new Refusal("`" + name + "` is set twice.");
            }
            Outcome<Choice> choice = Choice.parse(setting.substring(equals + 1));
            if (choice.value().isEmpty()) {
                throw new Refusal(
                        "`--set " + setting + "`: " + words(choice.diagnostics().get(0)));
            }
            choices = choices.with(name, choice.value().get());
        }
        return choices;
    }

    private static String words(Diagnostic diagnostic) {
        StringBuilder words = new StringBuilder(diagnostic.message());
        diagnostic.hints().forEach(h -> words.append(' ').append(h.phrase()));
        return words.toString();
    }
}
