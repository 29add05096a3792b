package org.gusset.benchmarks.nesting;

import java.util.List;

/**
 * The best published densities of the classic sets, in per cent: J. Gardeyn, G. Vanden Berghe, T. Wauters, "An open-source heuristic to reboot
 * 2D nesting research", 2025, arXiv 2509.13329, tables 2 and 3. The width is the nominal one; in the files of some sets it is 0.01 % more.
 *
 * @param name of the file
 * @param garment whether it comes from garments or textiles
 * @param width the nominal width of the strip
 * @param best the best density of any method
 */
record Published(String name, boolean garment, double width, double best) {
    static final List<Published> SETS = List.of(
            new Published("shirts", true, 40, 90.92),
            new Published("trousers", true, 79, 92.62),
            new Published("swim", true, 5752, 79.83),
            new Published("albano", true, 4900, 89.82),
            new Published("dagli", true, 60, 90.17),
            new Published("mao", true, 2550, 86.87),
            new Published("marques", true, 104, 92.02),
            new Published("fu", false, 38, 92.41),
            new Published("jakobs1", false, 40, 89.26),
            new Published("jakobs2", false, 70, 87.73),
            new Published("shapes0", false, 40, 69.98),
            new Published("shapes1", false, 40, 76.73),
            new Published("blaz1", false, 15, 86.23));
}
