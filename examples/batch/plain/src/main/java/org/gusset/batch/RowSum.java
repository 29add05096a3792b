package org.gusset.batch;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/** The first 128 bits of the SHA-256 sum of all that was made of a row, every bit of every figure. */
final class RowSum {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(4096);
    private final DataOutputStream out = new DataOutputStream(bytes);

    private RowSum() {}

    static BigInteger of(RowResult result) {
        RowSum sum = new RowSum();
        try {
            if (result instanceof BodyResult body) {
                sum.add(body);
            } else if (result instanceof SetAside aside) {
                sum.add(aside);
            }
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(sum.bytes.toByteArray());
            return new BigInteger(1, Arrays.copyOf(digest, 16));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private void add(BodyResult body) throws IOException {
        out.writeLong(body.row());
        text(body.body());
        out.writeBoolean(body.proved());
        out.writeInt(body.estimated().size());
        for (String name : body.estimated()) {
            text(name);
        }
        figure(body.clothMm2());
        figure(body.clothCm2());
        out.writeInt(body.pieces().size());
        for (BodyResult.PieceArea area : body.pieces()) {
            text(area.piece());
            text(area.cloth());
            out.writeInt(area.copies());
            figure(area.oneMm2());
            figure(area.allMm2());
        }
        out.writeInt(body.cloths().size());
        for (BodyResult.ClothArea area : body.cloths()) {
            text(area.cloth());
            figure(area.mm2());
        }
        out.writeInt(body.findings().size());
        for (BodyResult.FindingResult finding : body.findings()) {
            text(finding.finding());
            text(finding.verdict());
            figure(finding.margin());
            text(finding.code());
            text(finding.message());
        }
        out.writeInt(body.seams().size());
        for (BodyResult.SeamResult seam : body.seams()) {
            text(seam.seam());
            figure(seam.firstMm());
            figure(seam.secondMm());
            figure(seam.easeMm());
            figure(seam.leastMm());
            figure(seam.mostMm());
            figure(seam.toleranceMm());
            text(seam.verdict());
        }
    }

    private void add(SetAside aside) throws IOException {
        out.writeLong(aside.row());
        text(aside.body());
        text(aside.why());
        text(aside.code());
        text(aside.reason());
        text(aside.written());
    }

    private void figure(double value) throws IOException {
        out.writeLong(Double.doubleToLongBits(value));
    }

    private void text(String text) throws IOException {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(utf8.length);
        out.write(utf8);
    }
}
