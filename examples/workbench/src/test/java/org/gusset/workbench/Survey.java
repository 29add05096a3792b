package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;

/**
 * The people of a large public body survey (6,068 soldiers, both sexes, measured in 2010 to 2012), their columns turned into the
 * measures of the shipped drafts. {@code docs/reference/survey.md} tells which column is which, and what is estimated.
 */
final class Survey {
    static final int PEOPLE = 6068;

    /**
     * Natural waist over waist at the navel: the medians of another public table that has both, 68.3 to 82.4 cm for women and
     * 83.4 to 87.3 cm for men.
     */
    private static final double NATURAL_WAIST_OF_WOMEN = 68.3 / 82.4;

    private static final double NATURAL_WAIST_OF_MEN = 83.4 / 87.3;

    private Survey() {}

    static Path file() {
        return Path.of(System.getProperty("gusset.facts", "../../../shared/facts"))
                .resolve("bodies/ansur2_tape_measurements_mm.csv");
    }

    /** Every so many-th person, from the first on. */
    static List<Measurements> people(int every) throws IOException {
        TableRows table = TableRows.read("survey", Files.readString(file()));
        List<String> headings = table.rows().get(0).cells();
        List<Measurements> people = new ArrayList<>();
        for (int i = 1; i < table.rows().size(); i += every) {
            Map<String, String> row = new HashMap<>();
            for (int c = 0; c < headings.size(); c++) {
                row.put(headings.get(c), table.rows().get(i).cell(c));
            }
            people.add(person(row));
        }
        return people;
    }

    /** One row of the survey as measures in mm. */
    static Measurements person(Map<String, String> row) {
        boolean woman = "F".equals(row.get("sex"));
        // Midway between the lowest rib and the top of the hip bone (from memory, as the standards on taking measures
        // place it).
        double waistHeight = (mm(row, "tenth_rib_height") + mm(row, "hip_bone_height")) / 2;
        Map<String, Double> measures = new LinkedHashMap<>();
        measures.put("height", mm(row, "stature"));
        measures.put("chest", mm(row, "chest_girth"));
        measures.put("waist", mm(row, "waist_navel_girth") * (woman ? NATURAL_WAIST_OF_WOMEN : NATURAL_WAIST_OF_MEN));
        measures.put("hip", mm(row, "hip_girth"));
        measures.put("hip_depth", waistHeight - mm(row, "hip_joint_height"));
        measures.put(
                "back_length",
                mm(row, "back_nape_to_navel_waist_length") - (waistHeight - mm(row, "waist_navel_height")));
        measures.put("body_rise", waistHeight - mm(row, "crotch_inside_leg_height"));
        measures.put("waist_to_floor", waistHeight);
        measures.put("neck", mm(row, "neck_base_girth"));
        measures.put("shoulder_width", mm(row, "shoulder_biacromial_breadth"));
        measures.put("back_width", mm(row, "across_back_interscye_1_length"));
        measures.put("upper_arm", mm(row, "upper_arm_flexed_girth"));
        measures.put("arm_length", mm(row, "upper_arm_length") + mm(row, "forearm_length"));
        measures.put("wrist", mm(row, "wrist_girth"));
        String name = "subject " + row.get("subject");
        Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
        measures.forEach((measure, value) ->
                entries.put(measure, new Measurements.Entry(Quantity.length(value), Place.named(name))));
        return new Measurements(name, entries);
    }

    private static double mm(Map<String, String> row, String column) {
        return Double.parseDouble(Objects.requireNonNull(row.get(column), column));
    }
}
