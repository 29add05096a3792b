package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/**
 * A file while it is read, with what it defines. A file that is used twice is two of these: their choices may differ. Filled in by
 * the resolver.
 */
final class Home {
    private final String prefix;
    private final DraftTree tree;
    private final Scope scope;
    private final Map<String, PieceBody> bodies = new LinkedHashMap<>();
    private final Map<String, Scope> pieceScopes = new LinkedHashMap<>();
    private final Set<String> broken = new HashSet<>();
    private final Map<String, Home> used = new LinkedHashMap<>();
    private final Map<String, Setting> settings = new LinkedHashMap<>();

    /** The names of its strips, and its seams that ask for notches: asked for with every piece, so that they are gathered once. */
    private final Set<String> strips = new HashSet<>();

    private final List<Statement.Seam> notching = new ArrayList<>();

    /** What a file that uses this one sets a choice to, in that file's words. */
    record Setting(Name name, Expr value, Home home) {}

    /**
     * @param prefix what stands before its names in the file that asked first, as in {@code block.}; empty for that file itself
     */
    Home(String prefix, DraftTree tree) {
        this.prefix = prefix;
        this.tree = tree;
        this.scope = new Scope(this);
        tree.broken().forEach((Name name) -> broken.add(name.text()));
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Strip strip) {
                strips.add(strip.name().text());
            } else if (statement instanceof Statement.Seam seam
                    && seam.matching().stream().anyMatch(m -> m.strokes() > 0)) {
                notching.add(seam);
            }
        }
    }

    String prefix() {
        return prefix;
    }

    DraftTree tree() {
        return tree;
    }

    /** Its names at file level. */
    Scope scope() {
        return scope;
    }

    /** The pieces by name, with all their statements. */
    Map<String, PieceBody> bodies() {
        return bodies;
    }

    /** What lies in the pieces. */
    Map<String, Scope> pieceScopes() {
        return pieceScopes;
    }

    /** Names that are broken, or told to be missing. */
    Set<String> broken() {
        return broken;
    }

    /** True if a piece of this name is a strip. */
    boolean isStrip(String piece) {
        return strips.contains(piece);
    }

    /** The seams that ask for notches where they match points, in file order. */
    List<Statement.Seam> notching() {
        return notching;
    }

    /** The files that it uses, by the names it gives them. */
    Map<String, Home> used() {
        return used;
    }

    /** What its choices are set to. */
    Map<String, Setting> settings() {
        return settings;
    }

    /** The statements of the piece in which a symbol lies; null if it lies in none. */
    @Nullable
    PieceBody bodyOf(Symbol symbol) {
        return bodies.get(local(symbol.scope().piece()));
    }

    /** A piece's name without what stands before it. */
    String local(String piece) {
        return piece.startsWith(prefix) ? piece.substring(prefix.length()) : piece;
    }

    /** This file and all that it uses, directly or not. */
    List<Home> all() {
        List<Home> all = new ArrayList<>();
        all.add(this);
        used.values().forEach(home -> all.addAll(home.all()));
        return all;
    }
}
