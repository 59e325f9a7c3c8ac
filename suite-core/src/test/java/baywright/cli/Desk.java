package baywright.cli;

import baywright.DemoSite;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;

/** The command line in this process, with its streams caught. */
final class Desk {

    /** A Monday in winter, when the demo's jobs arrive. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);

    private final Path settings;
    private final Path home;
    private Locale reader = Locale.UK;
    private boolean colour;

    Desk(Path settings, Path home) {
        this.settings = settings;
        this.home = home;
    }

    Desk inColour() {
        colour = true;
        return this;
    }

    /** The same for a reader of another country. */
    Desk speaking(Locale locale) {
        Desk other = new Desk(settings, home);
        other.reader = locale;
        return other;
    }

    /** What a command answered. */
    record Answer(int status, String out, String err) {}

    Answer answerTo(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Console console = new Console(new PrintWriter(out), new PrintWriter(err), colour, reader);
        Session session = new Session(console, new Settings(settings), new Home(home), CLOCK);
        session.keepScripts(DemoSite.SCRIPTS);
        int status = new CommandTree(session).run(words);
        return new Answer(status, out.toString(), err.toString());
    }
}
