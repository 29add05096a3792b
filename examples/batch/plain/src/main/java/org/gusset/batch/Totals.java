package org.gusset.batch;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is counted over many rows. Areas are summed exactly and sums of rows added up as whole numbers, so that neither order nor the
 * number of threads or machines makes a difference.
 */
public final class Totals implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final BigInteger MODULUS = BigInteger.ONE.shiftLeft(128);

    private long rows;
    private long fitted;
    private long proved;
    private final TreeMap<String, Long> setAside = new TreeMap<>();
    private BigDecimal clothMm2 = BigDecimal.ZERO;
    private BigInteger sum = BigInteger.ZERO;

    /** Counts rows that were read. */
    public void read(long more) {
        rows += more;
    }

    /** Counts a row that was read. */
    public void read() {
        rows++;
    }

    /** Counts what was made of a row. */
    public void made(RowResult result) {
        if (result instanceof BodyResult body) {
            fitted++;
            proved += body.proved() ? 1 : 0;
            clothMm2 = clothMm2.add(new BigDecimal(body.clothMm2()));
        } else if (result instanceof SetAside aside) {
            setAside.merge(aside.why(), 1L, Long::sum);
        }
        sum = sum.add(RowSum.of(result)).mod(MODULUS);
    }

    /** These totals and others. */
    public Totals plus(Totals other) {
        Totals all = new Totals();
        for (Totals one : new Totals[] {this, other}) {
            all.rows += one.rows;
            all.fitted += one.fitted;
            all.proved += one.proved;
            one.setAside.forEach((why, count) -> all.setAside.merge(why, count, Long::sum));
            all.clothMm2 = all.clothMm2.add(one.clothMm2);
            all.sum = all.sum.add(one.sum).mod(MODULUS);
        }
        return all;
    }

    public long rows() {
        return rows;
    }

    public long fitted() {
        return fitted;
    }

    public long proved() {
        return proved;
    }

    public long setAside() {
        return setAside.values().stream().mapToLong(Long::longValue).sum();
    }

    /** True if every row that was read came out, one way or the other. */
    public boolean noneLost() {
        return rows == fitted + setAside();
    }

    /** All figures by name, in words; two batches that agree in these made the same of every row, to the last bit. */
    public Map<String, String> words() {
        Map<String, String> words = new java.util.LinkedHashMap<>();
        words.put("rows", Long.toString(rows));
        words.put("fitted", Long.toString(fitted));
        words.put("proved", Long.toString(proved));
        words.put("set aside", Long.toString(setAside()));
        setAside.forEach((why, count) -> words.put("set aside, " + why, Long.toString(count)));
        words.put("cloth in square mm", clothMm2.toPlainString());
        words.put("sum of all rows", String.format(java.util.Locale.ROOT, "%032x", sum));
        return words;
    }

    /** Reads what {@link #words()} gives; figures that are not there count 0. */
    public static Totals of(Map<String, String> words) {
        Totals totals = new Totals();
        totals.rows = Long.parseLong(words.getOrDefault("rows", "0"));
        totals.fitted = Long.parseLong(words.getOrDefault("fitted", "0"));
        totals.proved = Long.parseLong(words.getOrDefault("proved", "0"));
        words.forEach((name, value) -> {
            if (name.startsWith("set aside, ")) {
                totals.setAside.put(name.substring("set aside, ".length()), Long.parseLong(value));
            }
        });
        totals.clothMm2 = new BigDecimal(words.getOrDefault("cloth in square mm", "0"));
        totals.sum = new BigInteger(words.getOrDefault("sum of all rows", "0"), 16);
        return totals;
    }
}
