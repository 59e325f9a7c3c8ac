package baywright.cli;

import baywright.remote.Access;
import baywright.remote.SharedLibrary;
import baywright.remote.Watch;
import baywright.remote.Watch.Step;
import baywright.workspace.FileProblem;
import baywright.workspace.Workspace;
import java.io.Console;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** A workspace whose shared library is worked with: who is asked what, and what is told while it takes time. */
final class SharedDesk implements Watch {

    private final Session session;
    private final Workspace workspace;
    private volatile boolean asking;

    /** @throws BadInput when shop, price list or shapes of the site have errors */
    SharedDesk(Session session, Path folder) {
        this.session = session;
        this.workspace = Workspace.open(folder);
        workspace.ownProblems().stream()
                .filter(FileProblem::isError)
                .findFirst()
                .ifPresent(problem -> {
                    throw new BadInput(problem.toString());
                });
    }

    Workspace workspace() {
        return workspace;
    }

    SharedLibrary opened() {
        return SharedLibrary.open(workspace.root(), access(), session.clock());
    }

    SharedLibrary following(String remote, String branch, Optional<String> site) {
        return SharedLibrary.follow(workspace, remote, branch, site, access(), session.clock());
    }

    private Access access() {
        return Access.of(System.getenv(), this::ask);
    }

    /** Asks on the terminal; without one nobody answers. */
    private Optional<String> ask(Access.Question question) {
        boolean isTerminal = "yes".equals(System.getProperty("baywright.terminal"));
        return Optional.ofNullable(System.console())
                .filter(terminal -> isTerminal && !session.json())
                .flatMap(terminal -> ask(terminal, question));
    }

    private Optional<String> ask(Console terminal, Access.Question question) {
        asking = true;
        try {
            terminal.printf(
                    "%n%s%n%s ",
                    question.text().strip(),
                    session.text("shared.ask." + question.kind().name().toLowerCase(Locale.ROOT)));
            return question.isSecret()
                    ? Optional.ofNullable(terminal.readPassword()).map(String::new)
                    : Optional.ofNullable(terminal.readLine());
        } finally {
            asking = false;
        }
    }

    /** What the work gives; meanwhile a terminal is told that it takes time, and how to stop it. */
    <T> T during(Function<Watch, T> work) {
        return Progress.during(session, "shared.progress", () -> asking, () -> work.apply(this));
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }

    @Override
    public void at(Step now, int done, int all) {
        // the terminal tells the seconds
    }
}
