package baywright.cli;

import baywright.workspace.NewShop;
import baywright.workspace.Workspace;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright shop new FOLDER}: a workspace with the standard stage scripts and usual values. */
@Command(name = "new", resourceBundle = CommandTree.HELP)
final class ShopNewCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "FOLDER", arity = "1", descriptionKey = "new-folder")
    private Path folder;

    @Option(names = "--name", paramLabel = "NAME", required = true, descriptionKey = "new-name")
    private String name;

    @Option(names = "--person", paramLabel = "NAME", required = true, descriptionKey = "new-person")
    private List<String> people;

    @Option(names = "--currency", paramLabel = "CODE", descriptionKey = "new-currency")
    private Optional<String> currency = Optional.empty();

    @Option(names = "--time-zone", paramLabel = "REGION", descriptionKey = "new-time-zone")
    private Optional<String> timeZone = Optional.empty();

    @Option(names = "--language", paramLabel = "TAG", descriptionKey = "new-language")
    private Optional<String> language = Optional.empty();

    @Option(names = "--tax", paramLabel = "PERCENT", descriptionKey = "new-tax")
    private Optional<String> tax = Optional.empty();

    ShopNewCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Path library = session.home().stageScripts();
        if (!Files.isDirectory(library)) {
            throw session.badInput("shop.new.no-library", session.home().folder());
        }
        NewShop usual = NewShop.usual(Locale.getDefault(Locale.Category.FORMAT), ZoneId.systemDefault());
        Workspace made = new NewShop(
                        name,
                        currency.orElse(usual.currency()),
                        timeZone.orElse(usual.timeZone()),
                        language.orElse(usual.language()),
                        usual.taxName(),
                        tax.orElse(usual.taxPercent()),
                        usual.charge(),
                        usual.wage(),
                        usual.hours(),
                        usual.bays(),
                        people.stream()
                                .map(person -> new NewShop.NewPerson(
                                        person, usual.people().get(0).skills()))
                                .toList())
                .create(folder, library);
        if (session.json()) {
            Answers.print(session, Answers.object().put("workspace", made.root().toString()));
        } else {
            session.say("shop.new.made", session.shown(made.root()));
            session.say("shop.new.next", session.command(), session.shown(made.root()));
        }
        return ExitStatus.FINE;
    }
}
