package baywright.cli;

import baywright.library.Input;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.script.Value;
import baywright.site.Numbers;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One stage for a reader: what it takes, needs, changes, uses and warns of, with everything at its usual value. */
final class StagePrinter {

    private final Session session;
    private final Library library;
    private final Numbers numbers;

    StagePrinter(Session session, Library library) {
        this.session = session;
        this.library = library;
        this.numbers = new Numbers(session.console().locale());
    }

    void print(Stage stage) {
        Console console = session.console();
        console.out().println(console.paint(Ink.HEAD, stage.title()) + "  " + stage.id());
        if (!stage.about().isEmpty()) {
            Wrap.lines(stage.about(), Console.WIDTH).forEach(console.out()::println);
        }
        Table table = new Table("", "~");
        for (Row row : rows(stage)) {
            table.add(console.paint(Ink.FAINT, row.name()), row.texts().get(0));
            row.texts().stream().skip(1).forEach(text -> table.add("", text));
        }
        table.print(console, "  ");
    }

    /** A heading with what stands beside it. */
    private record Row(String name, List<String> texts) {}

    private List<Row> rows(Stage stage) {
        StageTerms terms = stage.usualTerms();
        List<Row> rows = new ArrayList<>();
        add(rows, "family", Stream.of(stage.family()));
        add(rows, "surfaces", Stream.of(String.join(", ", stage.surfaces())));
        add(rows, "inputs", stage.inputs().stream().map(this::input));
        add(rows, "needs", terms.needs().stream().map(this::need));
        add(rows, "prefers", terms.prefers().stream().map(this::need));
        add(rows, "sets", states(terms, StageTerms.Effect::sets));
        add(rows, "clears", states(terms, effect -> !effect.sets()));
        add(rows, "hands-on", terms.attended().stream().map(this::attended));
        add(rows, "set-up", terms.setUps().stream().map(s -> minutes(s.minutes())));
        add(rows, "standing", terms.standing().stream().map(this::standing));
        add(rows, "uses", terms.uses().stream().map(this::use));
        add(
                rows,
                "removes",
                terms.removals().stream().map(r -> points(r.micrometres().times(r.times())) + " µm"));
        add(rows, "hazards", hazards(terms.hazards()));
        add(rows, "wear", protection(terms.hazards()));
        add(rows, "apart", terms.hazards().keepApart().stream().map(a -> a.what() + because(a.why())));
        add(rows, "crew", crew(terms.crew()));
        add(rows, "bay", Stream.of(terms.where().bay()));
        add(
                rows,
                "equipment",
                Stream.of(terms.where().equipment().stream()
                        .map(StageTerms.Named::id)
                        .collect(Collectors.joining(", "))));
        add(rows, "climate", climate(terms.climate()));
        add(rows, "checks", terms.checks().stream().map(StageTerms.Note::text));
        add(rows, "mistakes", terms.mistakes().stream().map(StageTerms.Note::text));
        add(rows, "script", Stream.of(stage.place().toString()));
        return rows;
    }

    private void add(List<Row> rows, String key, Stream<String> texts) {
        List<String> all = texts.filter(text -> !text.isEmpty()).toList();
        if (!all.isEmpty()) {
            rows.add(new Row(session.text("show." + key), all));
        }
    }

    private String input(Input input) {
        String wants =
                switch (input.kind()) {
                    case CHOICE -> String.join(" | ", input.choices());
                    case COUNT, MEASURE ->
                        input.least().map(this::plain).orElse("") + " … "
                                + input.most().map(this::plain).orElse("");
                    case YES_NO -> session.text("show.yes-no");
                };
        return session.text("show.input", input.name(), wants, plain(input.usual()), because(input.why()));
    }

    private String plain(Value value) {
        if (value.raw() instanceof BigDecimal number) {
            return numbers.number(number, 6);
        }
        if (value.raw() instanceof Quantity quantity) {
            return numbers.quantity(quantity);
        }
        if (value.raw() instanceof Boolean yes) {
            return session.text(yes ? "show.yes" : "show.no");
        }
        return value.raw().toString();
    }

    private String need(StageTerms.Need need) {
        String states = String.join(" | ", need.anyOf());
        return (need.absent() ? session.text("show.not", states) : states) + because(need.why());
    }

    private Stream<String> states(StageTerms terms, Predicate<StageTerms.Effect> which) {
        return terms.effects().stream().filter(which).map(effect -> {
            String reach = effect.reach() == StageTerms.Reach.ZONE
                    ? ""
                    : " " + session.text("show.reach." + Answers.word(effect.reach()));
            String after = effect.after()
                    .map(time -> " " + session.text("show.after", numbers.quantity(time)))
                    .orElse("");
            return effect.state() + reach + after;
        });
    }

    private String attended(StageTerms.Attended attended) {
        return session.text(
                "show.attended",
                points(attended.minutes()),
                attended.per(),
                numbers.number(attended.minutes().mean(), 2),
                times(attended.times()));
    }

    private String times(BigDecimal times) {
        return times.compareTo(BigDecimal.ONE) == 0 ? "" : " × " + numbers.number(times, 3);
    }

    private String points(ThreePoint points) {
        return Stream.of(points.least(), points.likely(), points.most())
                .map(p -> numbers.number(p, 3))
                .collect(Collectors.joining(" / "));
    }

    private String minutes(BigDecimal minutes) {
        return numbers.number(minutes, 2) + " min";
    }

    private String standing(StageTerms.Standing standing) {
        String most = standing.most()
                .map(m -> session.text("show.standing.most", minutes(m)))
                .orElse("");
        return session.text("show.standing.line", minutes(standing.least()), most, minutes(standing.usual()))
                + because(standing.why());
    }

    private String use(StageTerms.Use use) {
        String title = Optional.ofNullable(library.itemById().get(use.item()))
                .map(item -> item.title())
                .orElse(use.item());
        String diluted = use.dilution().isEmpty() ? "" : " " + session.text("show.diluted", use.dilution());
        return session.text("show.use", numbers.quantity(use.amount()), title, use.per(), times(use.times())) + diluted;
    }

    private Stream<String> hazards(StageTerms.Hazards hazards) {
        Stream<String> items = hazards.from().stream()
                .map(from -> Optional.ofNullable(library.itemById().get(from.id()))
                        .map(item -> item.title() + ": "
                                + (item.hazards().isEmpty()
                                        ? session.text("show.no-statement")
                                        : String.join(", ", item.hazards())))
                        .orElse(from.id()));
        Stream<String> risks = hazards.risks().stream()
                .map(risk -> risk.kind()
                        + risk.level()
                                .map(level -> " " + numbers.quantity(level))
                                .orElse(""));
        return Stream.concat(items, risks);
    }

    private Stream<String> protection(StageTerms.Hazards hazards) {
        Stream<String> items = hazards.from().stream()
                .flatMap(from -> Optional.ofNullable(library.itemById().get(from.id())).stream())
                .flatMap(item -> item.protection().stream());
        String all = Stream.concat(items, hazards.wear().stream().map(StageTerms.Named::id))
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        return Stream.of(all);
    }

    private Stream<String> crew(StageTerms.Crew crew) {
        String people = session.text("show.people", crew.people(), crew.most());
        String skill = crew.skill().isEmpty() ? "" : "; " + session.text("show.skill", crew.skill());
        return Stream.of(people + skill + (crew.checker() ? "; " + session.text("show.checker") : ""));
    }

    private Stream<String> climate(StageTerms.Climate climate) {
        return Stream.of(
                between(climate.coldest(), climate.warmest(), "°C"),
                between(climate.driest(), climate.dampest(), "% RH"));
    }

    private String between(Optional<Quantity> least, Optional<Quantity> most, String unit) {
        if (least.isEmpty() && most.isEmpty()) {
            return "";
        }
        Function<Quantity, String> show = q -> numbers.number(q.inBase(), 1);
        return least.map(show).orElse("") + " … " + most.map(show).orElse("") + " " + unit;
    }

    private String because(String why) {
        return why.isEmpty() ? "" : " " + session.text("show.because", why);
    }

    ObjectNode json(Stage stage) {
        ObjectNode one = Answers.object();
        one.put("id", stage.id());
        one.put("title", stage.title());
        one.put("about", stage.about());
        one.put("revision", stage.revision());
        rows(stage).forEach(row -> {
            ArrayNode texts = one.putArray(row.name());
            row.texts().forEach(texts::add);
        });
        return one;
    }
}
