package baywright.cli;

/** Colours of the terminal; each is told apart by its word too. */
enum Ink {
    STOP("1;31"),
    WARN("33"),
    NOTE("36"),
    GOOD("32"),
    HEAD("1"),
    FAINT("2");

    static final String PLAIN = "\033[0m";

    private final String parameters;

    Ink(String parameters) {
        this.parameters = parameters;
    }

    String code() {
        return "\033[" + parameters + "m";
    }
}
