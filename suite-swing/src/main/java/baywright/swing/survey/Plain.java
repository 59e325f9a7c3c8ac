package baywright.swing.survey;

/** Text from files for controls that would take some of it for HTML. */
final class Plain {

    private Plain() {}

    /** The text, never taken for HTML. */
    static String text(String text) {
        return text.startsWith("<") ? " " + text : text;
    }
}
