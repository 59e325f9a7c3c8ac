package baywright.cli;

import baywright.library.ScriptCache;
import baywright.plan.FindingText;
import baywright.plan.Plan;
import baywright.plan.Setting;
import java.nio.file.Path;
import java.time.Clock;

/** What every command shares in one run: where to print, what the user keeps, where the program lives. */
final class Session {

    private final Console console;
    private final Settings settings;
    private final Home home;
    private final Clock clock;
    private final Texts texts;
    private ScriptCache cache = ScriptCache.none();
    private boolean json;
    private boolean windowOpened;

    Session(Console console, Settings settings, Home home, Clock clock) {
        this.console = console;
        this.settings = settings;
        this.home = home;
        this.clock = clock;
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

    /** Words the findings of a plan for the reader. */
    FindingText sentences(Setting setting, Plan plan) {
        return new FindingText(setting, plan, console.locale());
    }

    /** The same with every zone by its name, however many they are. */
    FindingText sentencesWithEveryZone(Setting setting, Plan plan) {
        return new FindingText(setting, plan, console.locale(), true);
    }

    BadInput badInput(String key, Object... values) {
        return new BadInput(text(key, values));
    }

    Clock clock() {
        return clock;
    }

    /** A path as the reader would type it: short where it lies below the current folder. */
    String shown(Path path) {
        Path here = Path.of("").toAbsolutePath();
        Path full = path.toAbsolutePath().normalize();
        String text = (full.startsWith(here) && !full.equals(here) ? here.relativize(full) : full).toString();
        return text.contains(" ") ? "\"" + text + "\"" : text;
    }

    /** How the reader called the program, for examples that can be typed as they stand. */
    String command() {
        return System.getProperty("baywright.command", "baywright");
    }

    /** Where scripts are kept between runs. */
    ScriptCache cache() {
        return cache;
    }

    void keepScripts(ScriptCache where) {
        cache = where;
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
