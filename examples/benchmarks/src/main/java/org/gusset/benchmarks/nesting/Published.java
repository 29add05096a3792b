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
 * @param mean the mean density of that paper's search, a hundred runs of 20 minutes on three threads; not a number if none is told
 */
record Published(String name, boolean garment, double width, double best, double mean) {
    static final List<Published> SETS = List.of(
            new Published("shirts", true, 40, 90.92, 89.66),
            new Published("trousers", true, 79, 92.62, 91.73),
            new Published("swim", true, 5752, 79.83, 78.26),
            new Published("albano", true, 4900, 89.82, 89.47),
            new Published("dagli", true, 60, 90.17, 89.26),
            new Published("mao", true, 2550, 86.87, 86.14),
            new Published("marques", true, 104, 92.02, 90.93),
            new Published("fu", false, 38, 92.41, 92.24),
            new Published("jakobs1", false, 40, 89.26, 89.09),
            new Published("jakobs2", false, 70, 87.73, 84.77),
            new Published("shapes0", false, 40, 69.98, 68.60),
            new Published("shapes1", false, 40, 76.73, 75.69),
            new Published("blaz1", false, 15, 86.23, 84.68),
            // Pieces of real fashion jobs: only the records are published, densities follow from their lengths.
            new Published("gardeyn0", true, 20000, 89.85, Double.NaN),
            new Published("gardeyn1", true, 20000, 90.23, Double.NaN),
            new Published("gardeyn2", true, 10000, 89.57, Double.NaN),
            new Published("gardeyn3", true, 20000, 88.68, Double.NaN));
}
