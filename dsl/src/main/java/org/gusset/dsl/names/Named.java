package org.gusset.dsl.names;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Dimension;

/**
 * Something that has a name. A piece that is traced from another has names of its own for all that it takes over: they have the same
 * place as the other's, and other full names.
 *
 * @param fullName the name as the whole draft says it, as in {@code Back.tip} or {@code block.quarter}
 * @param name the name alone
 * @param kind what it stands for
 * @param type what it gives, in a drafter's words with the article, as in {@code a length}; of a rule, what a call of it gives
 * @param dimension the dimension, if it is an amount or a rule that gives one
 * @param place where the name stands in its definition. For what the language draws of itself, as the edges of a strip, the place that
 *     stands for it
 * @param written false if the name does not stand there: the language gives it
 * @param statement the whole definition
 * @param note the words of its definition, as how a measure is taken; empty if there are none
 * @param words the words of a choice, or the arguments of a rule with their kinds
 */
public record Named(
        String fullName,
        String name,
        NameKind kind,
        String type,
        Optional<Dimension> dimension,
        Span place,
        boolean written,
        Span statement,
        String note,
        List<String> words) {
    public Named {
        words = List.copyOf(words);
    }
}
