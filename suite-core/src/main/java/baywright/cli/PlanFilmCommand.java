package baywright.cli;

import baywright.plan.FilmBudget;
import baywright.plan.FilmComparison;
import baywright.plan.Setting;
import baywright.quantity.Unit;
import baywright.workspace.ReadingsFile;
import baywright.workspace.ReadingsForm;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan film JOB}: the paint of each zone, what the plan takes off it, and how that ends. */
@Command(name = "film", resourceBundle = CommandTree.HELP)
final class PlanFilmCommand implements Callable<Integer> {

    /** How a file parts its cells. */
    enum Separator {
        COMMA(','),
        SEMICOLON(';'),
        TAB('\t');

        private final char sign;

        Separator(char sign) {
            this.sign = sign;
        }
    }

    /** How a file writes decimals. */
    enum Decimal {
        POINT('.'),
        COMMA(',');

        private final char sign;

        Decimal(char sign) {
            this.sign = sign;
        }
    }

    /** What a file's numbers count. */
    enum Thickness {
        UM(Unit.MICROMETRE),
        MIL(Unit.MIL);

        private final Unit unit;

        Thickness(Unit unit) {
            this.unit = unit;
        }
    }

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--after", paramLabel = "FILE", descriptionKey = "after")
    private Optional<Path> after = Optional.empty();

    @Option(names = "--unit", paramLabel = "UNIT", descriptionKey = "unit")
    private Optional<Thickness> unit = Optional.empty();

    @Option(names = "--decimal", paramLabel = "MARK", descriptionKey = "decimal")
    private Optional<Decimal> decimal = Optional.empty();

    @Option(names = "--separator", paramLabel = "SIGN", descriptionKey = "separator")
    private Optional<Separator> separator = Optional.empty();

    @Option(names = "--csv", descriptionKey = "csv")
    private boolean csv;

    PlanFilmCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Setting setting = opened.site().setting(opened.job());
        FilmBudget budget = FilmBudget.of(setting, opened.job().plan());
        Optional<FilmComparison> compared = after.map(file -> compare(opened, budget, file));
        FilmPrinter printer = new FilmPrinter(session, budget, compared);
        if (session.json()) {
            Answers.print(session, printer.json(opened));
        } else if (csv) {
            printer.csv();
        } else {
            printer.print(opened);
        }
        return ExitStatus.FINE;
    }

    private FilmComparison compare(OpenedJob opened, FilmBudget budget, Path file) {
        ReadingsForm form =
                new ReadingsForm(separator.map(s -> s.sign), decimal.map(d -> d.sign), unit.map(u -> u.unit));
        ReadingsFile read = opened.site().readings(opened.job(), file, form);
        return FilmComparison.of(budget, read.byZone());
    }
}
