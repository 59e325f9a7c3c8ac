package baywright.cli;

import baywright.library.ScriptCache;
import java.time.Clock;

/** Where the program starts. */
public final class Main {

    private Main() {}

    /** Runs one command and ends the process with its exit status, unless a window stays open. */
    public static void main(String[] args) {
        Session session = new Session(Console.ofProcess(), Settings.ofUser(), Home.ofProcess(), Clock.systemUTC());
        session.keepScripts(ScriptCache.ofUser());
        int status = new CommandTree(session).run(args);
        session.console().flush();
        if (!session.windowOpened()) {
            System.exit(status);
        }
    }
}
