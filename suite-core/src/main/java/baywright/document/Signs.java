package baywright.document;

import baywright.vehicle.FilmBand;

/** A sign for each film band: own outline and own filling, so that neither colour nor shape alone must be told apart. */
final class Signs {

    private static final int SIDE = 10;

    private Signs() {}

    static String svg(FilmBand band, boolean readable) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + SIDE + "\" height=\"" + SIDE
                + "\" viewBox=\"0 0 20 20\">" + (readable ? figure(band) : figure(FilmBand.UNKNOWN)) + "</svg>";
    }

    private static String figure(FilmBand band) {
        return switch (band) {
            case STOP -> path("M6 1 H14 L19 6 V14 L14 19 H6 L1 14 V6 Z", "#8f1d1d");
            case CARE -> path("M10 1 L19.5 18.5 H0.5 Z", "#d98a00");
            case ORDINARY -> "<circle cx=\"10\" cy=\"10\" r=\"8.5\" fill=\"#2f7d5b\" stroke=\"#1b2226\"/>";
            case REPAINT -> path("M10 0.5 L19.5 10 L10 19.5 L0.5 10 Z", "#3b6fb0");
            case FILLER -> path("M2 2 H18 V18 H2 Z", "#6a4c93");
            case UNKNOWN ->
                "<circle cx=\"10\" cy=\"10\" r=\"8\" fill=\"#ffffff\" stroke=\"#1b2226\" stroke-width=\"2\"/>"
                        + "<path d=\"M6 10 H14\" stroke=\"#1b2226\" stroke-width=\"2\"/>";
        };
    }

    private static String path(String points, String fill) {
        return "<path d=\"" + points + "\" fill=\"" + fill + "\" stroke=\"#1b2226\"/>";
    }
}
