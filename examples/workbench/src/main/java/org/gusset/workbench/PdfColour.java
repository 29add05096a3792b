package org.gusset.workbench;

import java.util.Map;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;

/** A style's colour as a PDF file writes it. */
final class PdfColour {
    private static final Map<String, String> NAMED = Map.of("black", "#000000", "white", "#ffffff", "gray", "#808080");

    private PdfColour() {}

    /** Reads {@code #rrggbb}, {@code #rgb}, black, gray or white. */
    static PDColor of(String colour) {
        String hex = NAMED.getOrDefault(colour, colour);
        if (!hex.startsWith("#")) {
            throw new IllegalArgumentException("A colour of a PDF file is written #rrggbb, not \"" + colour + "\".");
        }
        int digits = (hex.length() - 1) / 3;
        float[] parts = new float[3];
        for (int i = 0; i < 3; i++) {
            String part = hex.substring(1 + i * digits, 1 + (i + 1) * digits);
            parts[i] = Integer.parseInt(digits == 1 ? part + part : part, 16) / 255f;
        }
        return new PDColor(parts, PDDeviceRGB.INSTANCE);
    }
}
