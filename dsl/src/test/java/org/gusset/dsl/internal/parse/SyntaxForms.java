package org.gusset.dsl.internal.parse;

import java.util.List;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Way;
import org.gusset.dsl.syntax.Words;

/** The families of nodes of the syntax tree. */
final class SyntaxForms {
    static final List<Class<?>> FAMILIES = List.of(
            Statement.class,
            Statement.RuleBody.class,
            Statement.CurveBody.class,
            Statement.ArcBody.class,
            Statement.Origin.class,
            Expr.class,
            Move.class,
            Move.Side.class,
            PlaceOn.class,
            PlaceOn.From.class,
            Way.class,
            Words.Part.class);

    private SyntaxForms() {}
}
