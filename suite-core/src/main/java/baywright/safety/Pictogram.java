package baywright.safety;

/** The nine hazard pictograms of the UN Globally Harmonized System, annex 1, in the order of their numbers. */
public enum Pictogram {
    GHS01("exploding bomb"),
    GHS02("flame"),
    GHS03("flame over circle"),
    GHS04("gas cylinder"),
    GHS05("corrosion"),
    GHS06("skull and crossbones"),
    GHS07("exclamation mark"),
    GHS08("health hazard"),
    GHS09("environment");

    private final String title;

    Pictogram(String title) {
        this.title = title;
    }

    /** The symbol's name, to be shown beside or instead of the picture. */
    public String title() {
        return title;
    }
}
