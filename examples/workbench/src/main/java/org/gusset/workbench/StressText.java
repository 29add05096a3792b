package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.stress.Body;
import org.gusset.core.stress.Cure;
import org.gusset.core.stress.Failure;
import org.gusset.core.stress.PeopleReport;
import org.gusset.core.stress.StressReport;
import org.gusset.core.stress.Tally;
import org.gusset.core.stress.Tightening;
import org.gusset.core.stress.Variable;
import org.gusset.core.stress.WorstFigure;

/** A report of stress as text of 100 columns at most. */
final class StressText {
    private static final int WIDTH = 100;
    private static final int MOST_FAILURES = 30;

    private final LengthStyle style;
    private final Wording wording;
    private final StringBuilder text = new StringBuilder();

    StressText(LengthStyle style) {
        this.style = style;
        this.wording = style.wording();
    }

    String of(StressReport report) {
        heading(report);
        failures(report.failures(), report.spread(), "bodies");
        worst(report.worst());
        report.people().ifPresent(this::people);
        verdict(report);
        return text.toString();
    }

    private void heading(StressReport report) {
        line("", "Stress of \"" + report.title() + "\", seed " + report.seed());
        long measures = report.variables().stream()
                .filter(v -> v.kind() == Variable.Kind.MEASURE)
                .count();
        long choices = report.variables().size() - measures;
        line(
                "",
                "Varied: " + Messages.count((int) measures, "measure") + ", " + Messages.count((int) choices, "choice")
                        + ": "
                        + String.join(
                                ", ",
                                report.variables().stream().map(Variable::name).toList()) + ".");
        if (!report.fixed().settings().isEmpty()) {
            line("", "Not varied: " + words(report.fixed()) + ".");
        }
        if (!report.withoutRange().isEmpty()) {
            line(
                    "",
                    "No bodies were made up: " + String.join(", ", report.withoutRange())
                            + " has no range. Write one, as `from 60 cm to 170 cm`.");
            return;
        }
        text.append(String.format("%n"));
        tally("at the ends of the ranges", report.corners());
        tally("spread over the ranges", report.spread());
        tally("driven toward failure", report.searched());
        report.noRoom()
                .forEach((name, bodies) -> line(
                        "",
                        Messages.count(bodies, "body").replace("bodys", "bodies")
                                + " could not be made up: the range of " + name + " had no room."));
        if (report.stoppedEarly()) {
            line("", "It was stopped early; the same seed need not give the same report.");
        }
        if (report.spread().legal() > 0) {
            line("", share(report.spread()) + " of the bodies spread over the ranges pass.");
        }
    }

    private void tally(String what, Tally tally) {
        text.append(String.format(
                Locale.ROOT,
                "  %-24s %7d tried %7d legal %7d pass %7d with a refused piece%n",
                what,
                tally.tried(),
                tally.legal(),
                tally.passed(),
                tally.refused()));
    }

    private void failures(List<Failure> failures, Tally of, String whom) {
        if (failures.isEmpty()) {
            return;
        }
        text.append(String.format("%nWhat fails%n"));
        int number = 0;
        for (Failure failure : failures) {
            number++;
            if (number > MOST_FAILURES) {
                line("  ", "and " + (failures.size() - MOST_FAILURES) + " more ways to fail");
                break;
            }
            text.append(String.format("%n"));
            line("  ", number + ". " + what(failure));
            String among = failure.spread() == 0
                    ? "Only found by searching: " + failure.bodies() + " " + whom + "."
                    : failure.spread() + " of " + of.legal() + " " + whom + " ("
                            + percent((double) failure.spread() / of.legal()) + ").";
            line("     ", among);
            failure.message().ifPresent(m -> line("     ", wording.say(m.phrase())));
            line(
                    "     ",
                    (whom.equals("people") ? failure.worst().measurements().body() + ": " : "Worst body: ")
                            + words(failure.worst()));
            if (!whom.equals("people")) {
                line("     ", failure.cure().map(this::words).orElseGet(() -> withoutCure(failure, of)));
            }
        }
    }

    private static String withoutCure(Failure failure, Tally of) {
        if (failure.kind() == Failure.Kind.MESSAGE && failure.spread() > 0 && failure.spread() == of.legal()) {
            return "Every body fails so: no range can help, the draft has to be mended.";
        }
        return "No single range, made narrower, was found to keep these out without losing half of the others.";
    }

    private String what(Failure failure) {
        String place = failure.place() instanceof Span span ? " (" + name(span) + ", line " + span.line() + ")" : "";
        String about = failure.subject().isEmpty() ? "" : " " + failure.subject();
        return switch (failure.kind()) {
            case MESSAGE -> failure.code() + about + place;
            case REFUSED_WITHOUT_A_WORD ->
                "The piece " + failure.subject() + " is refused, and nothing says why." + " Please report it.";
            case EXCEPTION ->
                "A fault of this program: " + failure.code() + " (" + failure.words() + ")." + " Please report it.";
        };
    }

    private static String name(Span span) {
        return span.source().substring(span.source().replace('\\', '/').lastIndexOf('/') + 1);
    }

    private String words(Cure cure) {
        return "To be safe: " + words(cure.change()) + ". That loses " + percent(cure.lost())
                + " of the bodies; none of " + cure.triedOn() + " others failed so.";
    }

    private String words(Tightening change) {
        if (change instanceof Tightening.Without without) {
            return without.variable() + " without `" + without.word() + "`";
        }
        Tightening.Bound bound = (Tightening.Bound) change;
        String end = bound.end() == Tightening.End.MOST ? "at most " : "at least ";
        String now = bound.end() == Tightening.End.MOST ? "up to " : "down to ";
        return bound.variable() + " " + end + amount(bound, bound.to()) + " (now " + now + amount(bound, bound.from())
                + ")";
    }

    private String amount(Tightening.Bound bound, Quantity quantity) {
        return switch (bound.form()) {
            case AMOUNT -> style.show(quantity);
            case TIMES -> bound.other() + " * " + style.show(quantity);
            case MORE_THAN ->
                bound.other()
                        + (quantity.value() < 0 ? " - " : " + ")
                        + style.show(new Quantity(Math.abs(quantity.value()), quantity.dimension()));
        };
    }

    private void worst(List<WorstFigure> figures) {
        if (figures.isEmpty()) {
            return;
        }
        text.append(String.format("%nHow near each check comes to failing%n"));
        for (WorstFigure worst : figures) {
            text.append(String.format("%n"));
            Tested figure = worst.figure();
            String margin = show(figure, Math.abs(worst.margin()));
            line("  ", worst.check() + place(worst.place()));
            line("     ", (worst.margin() < 0 ? "FAILS by " + margin : "holds by " + margin) + ": " + words(figure));
            line("     ", "Body: " + words(worst.body()));
        }
    }

    private static String place(Place place) {
        return place instanceof Span span ? " (" + name(span) + ", line " + span.line() + ")" : "";
    }

    private String words(Tested figure) {
        String value = show(figure, figure.value());
        if (Double.isInfinite(figure.most())) {
            return value + ", " + show(figure, figure.least()) + " at least is wanted";
        } else if (Double.isInfinite(figure.least())) {
            return value + ", " + show(figure, figure.most()) + " at most is wanted";
        }
        return value + ", " + show(figure, figure.least()) + " to " + show(figure, figure.most()) + " is wanted";
    }

    private String show(Tested figure, double value) {
        return style.show(new Quantity(value, figure.dimension()));
    }

    private void people(PeopleReport people) {
        text.append(String.format("%nThe people of the table%n"));
        Tally tally = people.tally();
        line(
                "  ",
                tally.tried() + " people, " + tally.legal() + " within the ranges, " + tally.passed()
                        + " of them pass (" + share(tally) + ").");
        for (PeopleReport.Outside outside : people.outside()) {
            String why = switch (outside.why()) {
                case TOO_SMALL -> " is below the range";
                case TOO_LARGE -> " is above the range";
                case NO_ROOM -> " has a range without room";
                case MISSING -> " was not taken";
            };
            line("  ", outside.measure() + why + ": " + outside.people() + " people, " + outside.first() + " first.");
        }
        failures(people.failures(), tally, "people");
    }

    private void verdict(StressReport report) {
        text.append(String.format("%n"));
        if (report.passes()) {
            line("", "Nothing was found that breaks the draft.");
            return;
        }
        int ways = report.failures().size()
                + report.people().map(p -> p.failures().size()).orElse(0);
        line(
                "",
                Messages.count(ways, "way") + " to fail; " + Messages.count(report.exceptions(), "fault")
                        + " of the program.");
    }

    private static String share(Tally tally) {
        return percent(tally.share());
    }

    /** Never 100 % where something is left, and never 0 % where there is something. */
    private static String percent(double share) {
        double shown = Math.rint(share * 1000) / 10;
        if (share < 1 && shown == 100) {
            return "just below 100 %";
        } else if (share > 0 && shown == 0) {
            return "less than 0.1 %";
        }
        return String.format(Locale.ROOT, "%.1f %%", shown);
    }

    private String words(Body body) {
        List<String> words = new ArrayList<>();
        for (Map.Entry<String, Measurements.Entry> entry :
                body.measurements().entries().entrySet()) {
            words.add(entry.getKey() + " " + style.show(entry.getValue().quantity()));
        }
        String choices = words(body.choices());
        if (!choices.isEmpty()) {
            words.add(choices);
        }
        return String.join(", ", words);
    }

    private String words(Choices choices) {
        List<String> words = new ArrayList<>();
        for (Map.Entry<String, Choice> entry : choices.settings().entrySet()) {
            Choice choice = entry.getValue();
            String value;
            if (choice instanceof Choice.Amount amount) {
                value = style.show(amount.quantity());
            } else if (choice instanceof Choice.Word word) {
                value = word.word();
            } else {
                value = ((Choice.Answer) choice).yes() ? "yes" : "no";
            }
            words.add(entry.getKey() + " " + value);
        }
        return String.join(", ", words);
    }

    /** Words broken at blanks, every line with the same indent. */
    private void line(String indent, String words) {
        StringBuilder line = new StringBuilder(indent);
        boolean empty = true;
        for (String word : words.strip().split("\\s+")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append(String.format("%n"));
                line = new StringBuilder(indent.isEmpty() ? "  " : indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(line).append(String.format("%n"));
    }
}
