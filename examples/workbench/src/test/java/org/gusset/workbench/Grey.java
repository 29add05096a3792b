package org.gusset.workbench;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;

/** A picture as shades of grey, 0 for black and 255 for white, on white paper. */
final class Grey {
    private final int width;
    private final int height;
    private final byte[] shades;

    private Grey(int width, int height, byte[] shades) {
        this.width = width;
        this.height = height;
        this.shades = shades;
    }

    /** The top left part of a picture, so many dots wide and high; white where the picture ends before. */
    static Grey of(BufferedImage picture, int width, int height) {
        BufferedImage paper = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pencil = paper.createGraphics();
        pencil.setColor(Color.WHITE);
        pencil.fillRect(0, 0, width, height);
        pencil.drawImage(picture, 0, 0, null);
        pencil.dispose();
        byte[] shades = new byte[width * height];
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            paper.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                int red = row[x] >> 16 & 255;
                int green = row[x] >> 8 & 255;
                int blue = row[x] & 255;
                // The weights of ITU-R BT.601, in thousandths.
                shades[y * width + x] = (byte) ((299 * red + 587 * green + 114 * blue + 500) / 1000);
            }
        }
        return new Grey(width, height, shades);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    int shade(int x, int y) {
        return shades[y * width + x] & 255;
    }

    /** How many dots are as dark as this or darker. */
    int dark(int most) {
        int count = 0;
        for (byte shade : shades) {
            if ((shade & 255) <= most) {
                count++;
            }
        }
        return count;
    }

    /** How many dots differ from those of another picture of the same size by more than so many shades. */
    int differing(Grey other, int shades) {
        int count = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (Math.abs(shade(x, y) - other.shade(x, y)) > shades) {
                    count++;
                }
            }
        }
        return count;
    }

    /**
     * How many dots that are as dark as {@code ink} have no dot of the other picture that is at least as dark as {@code trace} in their
     * place or next to it.
     */
    int astray(Grey other, int ink, int trace) {
        int count = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (shade(x, y) <= ink && other.darkestRound(x, y) > trace) {
                    count++;
                }
            }
        }
        return count;
    }

    private int darkestRound(int x, int y) {
        int darkest = 255;
        for (int v = Math.max(0, y - 1); v <= Math.min(height - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(width - 1, x + 1); u++) {
                darkest = Math.min(darkest, shade(u, v));
            }
        }
        return darkest;
    }

    /** The picture in squares of so many dots each, each of the mean shade of its dots; what is left over at the far edges is left out. */
    Grey squares(int side) {
        int columns = width / side;
        int rows = height / side;
        byte[] means = new byte[columns * rows];
        long[] sums = new long[columns];
        for (int row = 0; row < rows; row++) {
            Arrays.fill(sums, 0);
            for (int y = row * side; y < (row + 1) * side; y++) {
                for (int x = 0; x < columns * side; x++) {
                    sums[x / side] += shade(x, y);
                }
            }
            for (int column = 0; column < columns; column++) {
                means[row * columns + column] = (byte) Math.round((double) sums[column] / (side * side));
            }
        }
        return new Grey(columns, rows, means);
    }

    /** The largest difference between two dots in the same place. */
    int most(Grey other) {
        int most = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                most = Math.max(most, Math.abs(shade(x, y) - other.shade(x, y)));
            }
        }
        return most;
    }

    /** Both pictures in one, to look at: this one's ink red, the other's blue, black where both have it. */
    BufferedImage over(Grey other) {
        BufferedImage both = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int mine = shade(x, y);
                int theirs = other.shade(x, y);
                both.setRGB(x, y, theirs << 16 | Math.min(mine, theirs) << 8 | mine);
            }
        }
        return both;
    }
}
