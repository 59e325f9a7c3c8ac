package baywright.cli;

/** What every command shares in one run: where to print, what the user keeps, where the program lives. */
final class Session {

    private final Console console;
    private final Settings settings;
    private final Home home;
    private final Texts texts;
    private boolean json;
    private boolean windowOpened;

    Session(Console console, Settings settings, Home home) {
        this.console = console;
        this.settings = settings;
        this.home = home;
        this.texts = new Texts(console.locale());
    }

    Console console() {
        return console;
    }

    Settings settings() {
        return settings;
    }

    Home home() {
        return home;
    }

    /** A sentence of the bundle with its values filled in. */
    String text(String key, Object... values) {
        return texts.of(key, values);
    }

    void say(String key, Object... values) {
        console.out().println(text(key, values));
    }

    BadInput badInput(String key, Object... values) {
        return new BadInput(text(key, values));
    }

    boolean json() {
        return json;
    }

    void answerInJson(boolean wanted) {
        json = wanted;
    }

    boolean windowOpened() {
        return windowOpened;
    }

    void noteWindowOpened() {
        windowOpened = true;
    }
}
