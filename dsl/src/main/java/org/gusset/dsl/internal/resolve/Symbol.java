package org.gusset.dsl.internal.resolve;

import java.util.LinkedHashSet;
import java.util.Set;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** Something with a name, or a rule's argument. It is filled in while the draft is resolved and does not change afterwards. */
public final class Symbol {
    /** What a symbol stands for. */
    public enum Role {
        MEASURE("a measure"),
        CHOICE("a choice"),
        FIT("a fitting correction"),
        VALUE("a value"),
        UNKNOWN("an unknown"),
        RULE("a rule"),
        ARGUMENT("an argument"),
        PIECE("a piece"),
        USED("a draft that is used"),
        CLOTH("a cloth"),
        POINT("a point"),
        PATH("a line"),
        ROW("a row of points"),
        DART("a dart"),
        CHANGE("a change"),
        FULLNESS("gathers or pleats"),
        BROKEN("a broken definition");

        private final String words;

        Role(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** How far a symbol is resolved. */
    enum Progress {
        UNTOUCHED,
        BUSY,
        DONE
    }

    private final String name;
    private final Role role;
    private final Scope scope;
    private final Span span;
    private final @Nullable Statement statement;
    private final int step;
    private final int position;
    private final Home home;

    private @Nullable String fullName;
    private Type type;
    private @Nullable Term definition;
    Progress progress = Progress.UNTOUCHED;
    private final Set<Symbol> uses = new LinkedHashSet<>();

    Symbol(String name, Role role, Scope scope, Span span, @Nullable Statement statement, int step, Type type) {
        this(name, role, scope, span, statement, step, type, 0, scope.home());
    }

    /**
     * @param position where it stands among the statements of its piece
     * @param home the file in which its definition is written
     */
    Symbol(
            String name,
            Role role,
            Scope scope,
            Span span,
            @Nullable Statement statement,
            int step,
            Type type,
            int position,
            Home home) {
        this.name = name;
        this.role = role;
        this.scope = scope;
        this.span = span;
        this.statement = statement;
        this.step = step;
        this.type = type;
        this.position = position;
        this.home = home;
    }

    public String name() {
        return name;
    }

    /** The name with the piece in front, and what a file is used as. */
    public String fullName() {
        String known = fullName;
        if (known == null) {
            known = putTogether();
            fullName = known;
        }
        return known;
    }

    private String putTogether() {
        if (role == Role.MEASURE || role == Role.FIT) {
            return name;
        }
        return scope.piece().isEmpty() ? scope.home().prefix() + name : scope.piece() + "." + name;
    }

    public Role role() {
        return role;
    }

    public Scope scope() {
        return scope;
    }

    /** Where its name stands. */
    public Span span() {
        return span;
    }

    public @Nullable Statement statement() {
        return statement;
    }

    /** The step that draws it, counted from 0; -1 outside steps. */
    int step() {
        return step;
    }

    /** Where it stands among the statements of its piece: changes that stand further down alter it. */
    int position() {
        return position;
    }

    /** The file in which its definition is written. */
    Home home() {
        return home;
    }

    public Type type() {
        return type;
    }

    /** What it is; null for measures, choices, pieces and rules, which their checked statements describe. */
    public @Nullable Term definition() {
        return definition;
    }

    /** The symbols that it needs. */
    public Set<Symbol> uses() {
        return uses;
    }

    void define(Type newType, @Nullable Term term) {
        this.type = newType;
        this.definition = term;
        this.progress = Progress.DONE;
    }

    @Override
    public String toString() {
        return fullName();
    }
}
