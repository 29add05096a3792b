package org.gusset.batch.spark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import org.gusset.batch.BodyResult;
import org.gusset.batch.RowResult;
import org.gusset.batch.SetAside;

/** What became of a row, as a row of Spark and back. Columns are named as in the files of the plain batch. */
final class RowForms {
    static final String KIND = "kind";
    static final String FITTED = "fitted";
    static final String SET_ASIDE = "set-aside";

    private static final DataType TEXT = DataTypes.StringType;
    private static final DataType FIGURE = DataTypes.DoubleType;

    private static final StructType PIECE =
            struct("piece", TEXT, "cloth", TEXT, "copies", DataTypes.IntegerType, "oneMm2", FIGURE, "allMm2", FIGURE);
    private static final StructType CLOTH = struct("cloth", TEXT, "mm2", FIGURE);
    private static final StructType FINDING =
            struct("finding", TEXT, "verdict", TEXT, "margin", FIGURE, "code", TEXT, "message", TEXT);
    private static final StructType SEAM = struct(
            "seam",
            TEXT,
            "firstMm",
            FIGURE,
            "secondMm",
            FIGURE,
            "easeMm",
            FIGURE,
            "leastMm",
            FIGURE,
            "mostMm",
            FIGURE,
            "toleranceMm",
            FIGURE,
            "verdict",
            TEXT);

    /** The columns of both kinds together; those of the other kind are null. */
    static final StructType SCHEMA = struct(
            KIND,
            TEXT,
            "row",
            DataTypes.LongType,
            "body",
            TEXT,
            "proved",
            DataTypes.BooleanType,
            "estimated",
            list(TEXT),
            "clothMm2",
            FIGURE,
            "clothCm2",
            FIGURE,
            "pieces",
            list(PIECE),
            "cloths",
            list(CLOTH),
            "findings",
            list(FINDING),
            "seams",
            list(SEAM),
            "why",
            TEXT,
            "code",
            TEXT,
            "reason",
            TEXT,
            "written",
            TEXT);

    private RowForms() {}

    private static StructType struct(Object... namesAndTypes) {
        StructField[] fields = new StructField[namesAndTypes.length / 2];
        for (int i = 0; i < fields.length; i++) {
            fields[i] = DataTypes.createStructField(
                    (String) namesAndTypes[2 * i], (DataType) namesAndTypes[2 * i + 1], true);
        }
        return new StructType(fields);
    }

    private static ArrayType list(DataType of) {
        return DataTypes.createArrayType(of, false);
    }

    static Row of(RowResult result) {
        if (result instanceof BodyResult b) {
            return RowFactory.create(
                    FITTED,
                    b.row(),
                    b.body(),
                    b.proved(),
                    b.estimated().toArray(),
                    b.clothMm2(),
                    b.clothCm2(),
                    rows(b.pieces(), p -> RowFactory.create(p.piece(), p.cloth(), p.copies(), p.oneMm2(), p.allMm2())),
                    rows(b.cloths(), c -> RowFactory.create(c.cloth(), c.mm2())),
                    rows(
                            b.findings(),
                            f -> RowFactory.create(f.finding(), f.verdict(), f.margin(), f.code(), f.message())),
                    rows(
                            b.seams(),
                            s -> RowFactory.create(
                                    s.seam(),
                                    s.firstMm(),
                                    s.secondMm(),
                                    s.easeMm(),
                                    s.leastMm(),
                                    s.mostMm(),
                                    s.toleranceMm(),
                                    s.verdict())),
                    null,
                    null,
                    null,
                    null);
        }
        SetAside a = (SetAside) result;
        return RowFactory.create(
                SET_ASIDE,
                a.row(),
                a.body(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                a.why(),
                a.code(),
                a.reason(),
                a.written());
    }

    private static <T> Object[] rows(List<T> values, Function<T, Row> form) {
        return values.stream().map(form).toArray();
    }

    static RowResult result(Row row) {
        long number = row.getLong(row.fieldIndex("row"));
        String body = text(row, "body");
        if (text(row, KIND).equals(SET_ASIDE)) {
            return new SetAside(
                    number, body, text(row, "why"), text(row, "code"), text(row, "reason"), text(row, "written"));
        }
        return new BodyResult(
                number,
                body,
                row.getBoolean(row.fieldIndex("proved")),
                row.getList(row.fieldIndex("estimated")),
                figure(row, "clothMm2"),
                figure(row, "clothCm2"),
                all(
                        row,
                        "pieces",
                        p -> new BodyResult.PieceArea(
                                text(p, "piece"),
                                text(p, "cloth"),
                                p.getInt(p.fieldIndex("copies")),
                                figure(p, "oneMm2"),
                                figure(p, "allMm2"))),
                all(row, "cloths", c -> new BodyResult.ClothArea(text(c, "cloth"), figure(c, "mm2"))),
                all(
                        row,
                        "findings",
                        f -> new BodyResult.FindingResult(
                                text(f, "finding"),
                                text(f, "verdict"),
                                figure(f, "margin"),
                                text(f, "code"),
                                text(f, "message"))),
                all(
                        row,
                        "seams",
                        s -> new BodyResult.SeamResult(
                                text(s, "seam"),
                                figure(s, "firstMm"),
                                figure(s, "secondMm"),
                                figure(s, "easeMm"),
                                figure(s, "leastMm"),
                                figure(s, "mostMm"),
                                figure(s, "toleranceMm"),
                                text(s, "verdict"))));
    }

    private static <T> List<T> all(Row row, String column, Function<Row, T> form) {
        List<T> values = new ArrayList<>();
        for (Object value : row.getList(row.fieldIndex(column))) {
            values.add(form.apply((Row) value));
        }
        return values;
    }

    private static String text(Row row, String column) {
        return row.getString(row.fieldIndex(column));
    }

    private static double figure(Row row, String column) {
        return row.getDouble(row.fieldIndex(column));
    }
}
