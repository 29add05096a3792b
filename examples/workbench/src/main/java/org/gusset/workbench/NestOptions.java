package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import org.gusset.svg.sheet.Nest;
import picocli.CommandLine.Option;

/** The options that lay several bodies on one another. */
final class NestOptions {
    @Option(
            names = "--nest",
            description =
                    "Draw all bodies on one sheet: each piece once, its sizes laid on one another at its nesting point, "
                            + "each with its own kind of line; 12 sizes at most.")
    private boolean nest;

    @Option(
            names = "--size",
            paramLabel = "NAME",
            description = "With --nest: only this body of the table. Once for each, in the order of the key.")
    private List<String> sizes = new ArrayList<>();

    @Option(
            names = "--stitching-line",
            description = "With --nest: the line where the seams are sewn, instead of that where the cloth is cut.")
    private boolean stitching;

    /** True if a nest was asked for. Refuses options that belong to one where there is none. */
    boolean wanted() {
        if (!nest && (stitching || !sizes.isEmpty())) {
            throw new Refusal("--size and --stitching-line belong to a nest: add --nest.");
        }
        return nest;
    }

    Nest.Line line() {
        return stitching ? Nest.Line.STITCHING : Nest.Line.CUTTING;
    }

    /** The bodies that are laid on one another; refuses those that are not there, and more than can be told apart. */
    Bodies of(Bodies bodies) {
        Bodies chosen = sizes.isEmpty() ? bodies : bodies.only(sizes);
        if (chosen.names().size() > Nest.MOST) {
            throw new Refusal("A nest has " + Nest.MOST
                    + " sizes at most, so that their lines can be told apart in black and white, and " + "here are "
                    + chosen.names().size() + ". Name those you want with `--size NAME`, once for each.");
        }
        return chosen;
    }
}
