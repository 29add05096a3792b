package org.gusset.dsl.syntax;

import java.util.List;
import java.util.Optional;

/**
 * A whole file.
 *
 * @param source the file's name
 * @param version the number of the line {@code gusset 1}, if there is one
 * @param statements the statements at file level, in order; broken ones are left out, or have {@link Expr.Broken} inside
 * @param broken names whose definitions were broken and that are known all the same, so that their uses stay quiet
 */
public record DraftTree(String source, Optional<Integer> version, List<Statement> statements, List<Name> broken) {
    public DraftTree {
        statements = List.copyOf(statements);
        broken = List.copyOf(broken);
    }
}
