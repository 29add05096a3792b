package org.gusset.dsl;

/**
 * How a host wants drafts compiled.
 *
 * @param budget what a draft may ask for
 */
public record Settings(Budget budget) {
    public static Settings defaults() {
        return new Settings(Budget.defaults());
    }

    public Settings withBudget(Budget newBudget) {
        return new Settings(newBudget);
    }
}
