package org.gusset.workbench.lesson;

import java.util.List;

/**
 * The form of a served lesson: a field for each measure and each choice of the draft, with what is wrong beside it.
 *
 * @param address where the form is sent to
 * @param measures the measures of the body
 * @param choices the choices and fitting corrections
 * @param messages what is wrong
 * @param outcome what was done with what was sent, in a sentence; empty at first
 */
record MeasureForm(
        String address,
        List<Field> measures,
        List<Field> choices,
        List<MeasuringCard.Message> messages,
        String outcome) {
    /**
     * One field.
     *
     * @param id its name in the form, and its id on the page
     * @param label what it is for
     * @param text what stands in it
     * @param words what may be chosen; empty for amounts, which are written
     * @param notes how it is taken, its range, what happens if it is left empty
     */
    record Field(String id, String label, String text, List<String> words, List<String> notes) {
        Field {
            words = List.copyOf(words);
            notes = List.copyOf(notes);
        }

        Field with(String newText) {
            return new Field(id, label, newText, words, notes);
        }
    }

    MeasureForm {
        measures = List.copyOf(measures);
        choices = List.copyOf(choices);
        messages = List.copyOf(messages);
    }

    String html() {
        StringBuilder out = new StringBuilder("<form class=\"measures\" id=\"measures\" method=\"post\" action=\"");
        out.append(Html.escape(address)).append("\" aria-labelledby=\"measures-heading\" autocomplete=\"off\">\n");
        out.append("<h2 id=\"measures-heading\">Measures</h2>\n");
        out.append("<p class=\"outcome\" id=\"outcome\" role=\"status\">")
                .append(Html.escape(outcome))
                .append("</p>\n");
        out.append("<div class=\"wrong\" id=\"form-wrong\" role=\"alert\">");
        wrong(out, "");
        out.append("</div>\n");
        measures.forEach(f -> field(out, f));
        if (!choices.isEmpty()) {
            out.append("<h3>Choices</h3>\n");
            choices.forEach(f -> field(out, f));
        }
        out.append("<button type=\"submit\">Draw again</button>\n");
        return out.append("</form>\n").toString();
    }

    private void field(StringBuilder out, Field field) {
        String id = Html.escape(field.id());
        boolean wrong = messages.stream().anyMatch(m -> m.field().equals(field.id()));
        String about = " id=\"" + id + "\" name=\"" + id + "\" aria-describedby=\"" + id + "-wrong " + id + "-note\""
                + (wrong ? " aria-invalid=\"true\"" : "");
        out.append("<div class=\"field\"><label for=\"").append(id).append("\">");
        out.append(Html.escape(field.label())).append("</label>\n");
        if (field.words().isEmpty()) {
            out.append("<input type=\"text\"").append(about).append(" spellcheck=\"false\" maxlength=\"60\" value=\"");
            out.append(Html.escape(field.text())).append("\">\n");
        } else {
            out.append("<select").append(about).append(">");
            for (String word : field.words()) {
                out.append("<option").append(word.equals(field.text()) ? " selected>" : ">");
                out.append(Html.escape(word)).append("</option>");
            }
            out.append("</select>\n");
        }
        out.append("<div class=\"wrong\" id=\"").append(id).append("-wrong\" aria-live=\"polite\">");
        wrong(out, field.id());
        out.append("</div>\n<p class=\"note\" id=\"").append(id).append("-note\">");
        out.append(Html.escape(String.join("; ", field.notes()))).append("</p></div>\n");
    }

    private void wrong(StringBuilder out, String field) {
        for (MeasuringCard.Message message : messages) {
            if (message.field().equals(field)) {
                out.append("<p>").append(Html.escape(message.text())).append("</p>");
            }
        }
    }
}
