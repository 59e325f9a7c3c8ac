package baywright.swing.drawing;

import java.awt.Color;

/**
 * What a colour looks like to people who lack one kind of cone, and how far two colours seem apart.
 *
 * <p>Source of the matrices: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, A Physiologically-based Model for Simulation of Color
 * Vision Deficiency, IEEE TVCG 15 (2009), doi 10.1109/TVCG.2009.113, table for severity 1.0; they act on linear RGB.
 */
enum Sight {
    USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    /** Given away as a copy only. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final double[] matrix;

    Sight(double... matrix) {
        this.matrix = matrix;
    }

    double[] matrix() {
        return matrix.clone();
    }

    /** Distance in CIELAB, CIE 1976 (ISO/CIE 11664-4), white D65; about 2.3 is just seen. */
    double distance(Color a, Color b) {
        double[] first = lab(seen(a));
        double[] second = lab(seen(b));
        return Math.sqrt(Math.pow(first[0] - second[0], 2)
                + Math.pow(first[1] - second[1], 2)
                + Math.pow(first[2] - second[2], 2));
    }

    private double[] seen(Color colour) {
        double[] rgb = {Ink.linear(colour.getRed()), Ink.linear(colour.getGreen()), Ink.linear(colour.getBlue())};
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = matrix[3 * i] * rgb[0] + matrix[3 * i + 1] * rgb[1] + matrix[3 * i + 2] * rgb[2];
            seen[i] = Math.max(0, Math.min(1, sum));
        }
        return seen;
    }

    /** Source of the matrix: IEC 61966-2-1 (sRGB to XYZ). */
    private static double[] lab(double[] rgb) {
        double x = f((0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2]) / 0.95047);
        double y = f(0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2]);
        double z = f((0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
}
