package baywright.safety;

/** Drawings of the pictograms: a red diamond, and in it a plain figure of our own after the shapes of GHS, annex 1. */
public final class Glyphs {

    private static final String FRAME =
            "<path d=\"M50 5 L95 50 L50 95 L5 50 Z\" fill=\"#ffffff\" stroke=\"#c8102e\" stroke-width=\"6\"/>";

    private static final String FLAME =
            "<path d=\"M50 24 C57 34 66 40 66 52 C66 61 59 67 50 67 C41 67 34 61 34 52 C34 45 38 42 40 36 C43 40 45 42 46 45"
                    + " C49 39 51 33 50 24 Z\"/>";

    private Glyphs() {}

    /**
     * A drawing as an SVG element.
     *
     * @param size of its sides, in the unit of CSS pixels
     */
    public static String svg(Pictogram pictogram, int size) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + size + "\" height=\"" + size
                + "\" viewBox=\"0 0 100 100\" role=\"img\" aria-label=\"" + pictogram.title() + "\"><title>"
                + pictogram.title() + "</title>" + FRAME + "<g fill=\"#000000\" stroke=\"none\">" + figure(pictogram)
                + "</g></svg>";
    }

    private static String figure(Pictogram pictogram) {
        return switch (pictogram) {
            case GHS01 ->
                "<circle cx=\"44\" cy=\"60\" r=\"13\"/><path d=\"M50 46 L56 38 L60 41 L54 49 Z\"/>"
                        + line("62 34 66 26") + line("66 40 76 38") + line("56 30 54 22") + line("63 46 71 51")
                        + line("30 44 23 38") + line("28 70 20 74") + line("60 68 68 72");
            case GHS02 -> FLAME + "<path d=\"M33 71 H67 V76 H33 Z\"/>";
            case GHS03 ->
                "<g transform=\"translate(12 -4) scale(0.76)\">" + FLAME + "</g>"
                        + "<circle cx=\"50\" cy=\"62\" r=\"14\" fill=\"none\" stroke=\"#000000\" stroke-width=\"6\"/>"
                        + "<path d=\"M32 78 H68 V82 H32 Z\"/>";
            case GHS04 ->
                "<g transform=\"rotate(-25 50 50)\"><path d=\"M24 42 H62 C68 42 72 46 72 50 C72 54 68 58 62 58 H24 Z\"/>"
                        + "<path d=\"M72 47 H80 V53 H72 Z\"/></g>";
            case GHS05 ->
                "<g transform=\"rotate(35 36 36)\"><path d=\"M22 32 H46 V39 H22 Z\"/></g>"
                        + "<g transform=\"rotate(-35 66 36)\"><path d=\"M54 32 H78 V39 H54 Z\"/></g>"
                        + drop(47, 50) + drop(55, 47) + drop(44, 58) + drop(57, 56)
                        + "<path d=\"M26 68 H42 L45 63 L48 68 H52 V73 H26 Z\"/>"
                        + "<path d=\"M54 67 C58 61 62 63 66 64 L78 66 V70 L54 73 Z\"/>";
            case GHS06 ->
                "<path d=\"M50 22 C63 22 69 31 69 40 C69 46 66 50 62 52 V60 H38 V52 C34 50 31 46 31 40 C31 31 37 22 50 22 Z\"/>"
                        + "<g fill=\"#ffffff\"><circle cx=\"42\" cy=\"40\" r=\"5\"/><circle cx=\"58\" cy=\"40\" r=\"5\"/>"
                        + "<path d=\"M50 45 L53 51 H47 Z\"/></g>"
                        + "<g stroke=\"#000000\" stroke-width=\"5\" stroke-linecap=\"round\">"
                        + "<path d=\"M30 64 L70 78\"/><path d=\"M70 64 L30 78\"/></g>";
            case GHS07 -> "<path d=\"M42 22 H58 L54 58 H46 Z\"/><circle cx=\"50\" cy=\"70\" r=\"6.5\"/>";
            case GHS08 ->
                "<circle cx=\"50\" cy=\"27\" r=\"9\"/>"
                        + "<path d=\"M50 37 C66 37 71 45 71 56 V72 H62 V56 L60 82 H40 L38 56 V72 H29 V56 C29 45 34 37 50 37 Z\"/>"
                        + "<path fill=\"#ffffff\" d=\"M50 42 L53 52 L63 50 L55 57 L61 66 L51 62 L47 72 L45 61 L36 60 L44 55"
                        + " L40 46 L48 51 Z\"/>";
            case GHS09 ->
                "<path d=\"M34 28 H38 V60 H34 Z\"/><g stroke=\"#000000\" stroke-width=\"3\" fill=\"none\">"
                        + "<path d=\"M36 44 L26 34\"/><path d=\"M36 40 L48 29\"/><path d=\"M36 50 L45 42\"/></g>"
                        + "<path d=\"M18 62 H52 C56 62 60 65 62 68 C66 60 76 60 80 66 L86 61 V72 L80 68 C76 74 66 74 62 70 C56 73 30 73"
                        + " 24 70 Z\"/>";
        };
    }

    private static String line(String points) {
        String[] at = points.split(" ", -1);
        return "<path stroke=\"#000000\" stroke-width=\"3.5\" d=\"M" + at[0] + " " + at[1] + " L" + at[2] + " " + at[3]
                + "\"/>";
    }

    private static String drop(int x, int y) {
        return "<circle cx=\"" + x + "\" cy=\"" + y + "\" r=\"2.6\"/>";
    }
}
