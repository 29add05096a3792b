package org.gusset.benchmarks.table;

/**
 * One benchmark method of the module.
 *
 * @param type the class that holds it
 * @param method its name
 * @param parameter the value of its one parameter; empty if it has none
 */
public record Bench(Class<?> type, String method, Parameter parameter) {
    /** A parameter and its value; both empty for none. */
    public record Parameter(String name, String value) {
        public static final Parameter NONE = new Parameter("", "");
    }

    public static Bench of(Class<?> type, String method) {
        return new Bench(type, method, Parameter.NONE);
    }

    public static Bench of(Class<?> type, String method, String parameter, Object value) {
        return new Bench(type, method, new Parameter(parameter, value.toString()));
    }

    /** Its name as JMH has it. */
    public String name() {
        return type.getName() + "." + method;
    }
}
