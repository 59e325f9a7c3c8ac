package baywright.cli;

import baywright.plan.FilmBudget;
import baywright.plan.FilmBudget.ZoneBudget;
import baywright.plan.FilmComparison;
import baywright.quantity.ThreePoint;
import baywright.site.Numbers;
import baywright.vehicle.FilmSign;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.ZoneFilm;
import baywright.workspace.CsvLine;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Shows the paint of a vehicle zone by zone, with where each lowest reading stands, and what the plan makes of it. */
final class FilmPrinter {

    private static final double SMALLEST_SHOWN = 0.0001;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Session session;
    private final FilmBudget budget;
    private final Optional<FilmComparison> compared;
    private final Numbers numbers;

    FilmPrinter(Session session, FilmBudget budget, Optional<FilmComparison> compared) {
        this.session = session;
        this.budget = budget;
        this.compared = compared;
        this.numbers = new Numbers(session.console().locale());
    }

    void print(OpenedJob opened) {
        session.say("film.title", opened.job().title());
        Table table = new Table(headings(
                "film.column.",
                "zone",
                ">count",
                ">least",
                ">mean",
                ">deviation",
                ">most",
                "band",
                ">budget",
                ">planned",
                ">chance",
                "~verdict"));
        budget.zones().forEach(zone -> table.add(cells(zone)));
        table.print(session.console(), "  ");
        session.say(
                "film.floor",
                numbers.number(budget.limits().stopBelow(), 1),
                numbers.number(budget.limits().careBelow(), 1));
        printLowest();
        compared.ifPresent(this::print);
    }

    private String[] headings(String prefix, String... columns) {
        return Arrays.stream(columns)
                .map(c -> {
                    boolean marked = c.startsWith("~") || c.startsWith(">");
                    return (marked ? c.substring(0, 1) : "") + session.text(prefix + (marked ? c.substring(1) : c));
                })
                .toArray(String[]::new);
    }

    private String[] cells(ZoneBudget zone) {
        ZoneFilm film = zone.film();
        return new String[] {
            film.zone(),
            String.valueOf(film.count()),
            um(film.lowest()),
            um(film.mean()),
            film.statistics().map(s -> um(s.spread().deviation())).orElse(""),
            um(film.most()),
            session.text("film.band." + (film.readable() ? Answers.word(film.band()) : "unreadable")),
            um(film.budget()),
            planned(zone.planned()),
            chance(zone),
            session.text("film.verdict." + Answers.word(zone.verdict()))
        };
    }

    private String um(Optional<BigDecimal> film) {
        return film.map(f -> numbers.fixed(f, 1)).orElse("");
    }

    private String um(double film) {
        return numbers.fixed(BigDecimal.valueOf(film), 1);
    }

    private String planned(ThreePoint planned) {
        return planned.most().signum() == 0
                ? ""
                : numbers.number(planned.likely(), 1) + " / " + numbers.number(planned.most(), 1);
    }

    private String chance(ZoneBudget zone) {
        return zone.chanceBelow(budget.limits().stopBelow())
                .map(c -> c < SMALLEST_SHOWN
                        ? session.text("film.chance.hardly")
                        : numbers.number(BigDecimal.valueOf(c).multiply(HUNDRED), 2) + " %")
                .orElse("");
    }

    /** Where the readings stand that decide, and what is odd about others. */
    private void printLowest() {
        Table table = new Table("", "~", "");
        for (ZoneBudget zone : budget.zones()) {
            ZoneFilm film = zone.film();
            film.statistics()
                    .filter(s -> film.band().isThin() || !film.signs().isEmpty())
                    .ifPresent(s ->
                            table.add(film.zone(), remarks(film), s.lowest().source()));
        }
        if (!table.isEmpty()) {
            session.say("film.remarks");
            table.print(session.console(), "  ");
        }
    }

    private String remarks(ZoneFilm film) {
        List<String> words = new ArrayList<>();
        film.sure()
                .filter(s -> film.band().isThin())
                .ifPresent(s -> words.add(session.text("film.sure", um(film.sure()))));
        film.signs().stream()
                .sorted()
                .map((FilmSign s) -> session.text("film.sign." + Answers.word(s)))
                .forEach(words::add);
        return words.stream().collect(Collectors.joining("; "));
    }

    private void print(FilmComparison comparison) {
        session.say("film.after", comparison.zones().size());
        Table table = new Table(headings(
                "film.column.", "zone", ">count", ">least", ">before", ">after", ">removed", ">planned", "~answer"));
        comparison
                .zones()
                .forEach(zone -> table.add(
                        zone.before().film().zone(),
                        String.valueOf(zone.after().count()),
                        um(Optional.of(zone.after().lowest().micrometres())),
                        um(zone.before().film().mean()),
                        um(Optional.of(zone.after().mean())),
                        um(zone.difference())
                                + zone.uncertainty().map(u -> " ± " + um(u)).orElse(""),
                        planned(zone.before().planned()),
                        session.text("film.answer." + Answers.word(zone.answer()))));
        table.print(session.console(), "  ");
    }

    /** The map as a spreadsheet reads it, with points and micrometres whatever the reader's language. */
    void csv() {
        write(
                "zone",
                "n",
                "least_um",
                "mean_um",
                "sd_um",
                "most_um",
                "sure_um",
                "band",
                "budget_um",
                "planned_likely_um",
                "planned_most_um",
                "chance_below_floor",
                "verdict",
                "lowest_at");
        for (ZoneBudget zone : budget.zones()) {
            ZoneFilm film = zone.film();
            Optional<FilmStatistics> read = film.statistics();
            write(
                    film.zone(),
                    String.valueOf(film.count()),
                    plain(film.lowest()),
                    plain(film.mean()),
                    plain(read.map(s -> BigDecimal.valueOf(s.spread().deviation()))),
                    plain(film.most()),
                    plain(film.sure()),
                    film.readable() ? Answers.word(film.band()) : "unreadable",
                    plain(film.budget()),
                    plain(Optional.of(zone.planned().likely())),
                    plain(Optional.of(zone.planned().most())),
                    plain(zone.chanceBelow(budget.limits().stopBelow()).map(BigDecimal::valueOf)),
                    Answers.word(zone.verdict()),
                    read.map(s -> s.lowest().source()).orElse(""));
        }
    }

    private void write(String... cells) {
        session.console().out().print(CsvLine.of(List.of(cells)));
    }

    private static String plain(Optional<BigDecimal> figure) {
        return figure.map(f ->
                        f.setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString())
                .orElse("");
    }

    ObjectNode json(OpenedJob opened) {
        ObjectNode answer = Answers.object();
        answer.put("job", opened.job().id());
        answer.put("floor", Answers.figure(budget.limits().stopBelow()));
        answer.put("careBelow", Answers.figure(budget.limits().careBelow()));
        var zones = answer.putArray("zones");
        budget.zones().forEach(zone -> zones.add(json(zone)));
        compared.ifPresent(c -> {
            var after = answer.putArray("after");
            c.zones().forEach(zone -> after.add(json(zone)));
        });
        answer.set("warnings", ProblemPrinter.json(opened.warnings()));
        return answer;
    }

    private ObjectNode json(ZoneBudget zone) {
        ZoneFilm film = zone.film();
        ObjectNode one = Answers.object();
        one.put("zone", film.zone());
        one.put("readable", film.readable());
        one.put("count", film.count());
        one.put("wanted", film.wanted());
        film.statistics().ifPresent(s -> {
            one.put("least", Answers.figure(s.lowest().micrometres()));
            one.put("leastAt", s.lowest().source());
            one.put("mean", Answers.figure(s.mean()));
            one.put("deviation", Answers.figure(BigDecimal.valueOf(s.spread().deviation())));
            one.put("most", Answers.figure(s.highest().micrometres()));
            one.put("mostAt", s.highest().source());
        });
        film.sure().ifPresent(s -> one.put("sure", Answers.figure(s)));
        one.put("band", Answers.word(film.band()));
        var signs = one.putArray("signs");
        film.signs().stream().sorted().forEach(s -> signs.add(Answers.word(s)));
        film.topcoat().ifPresent(t -> one.put("topcoat", Answers.figure(t)));
        film.budget().ifPresent(b -> one.put("budget", Answers.figure(b)));
        one.put("plannedLikely", Answers.figure(zone.planned().likely()));
        one.put("plannedMost", Answers.figure(zone.planned().most()));
        zone.chanceBelow(budget.limits().stopBelow()).ifPresent(c -> one.put("chanceBelowFloor", c));
        one.put("verdict", Answers.word(zone.verdict()));
        var taken = one.putArray("taken");
        zone.taken().forEach(t -> {
            ObjectNode line = taken.addObject();
            line.put("step", t.step());
            line.put("least", Answers.figure(t.removal().micrometres().least()));
            line.put("likely", Answers.figure(t.removal().micrometres().likely()));
            line.put("most", Answers.figure(t.removal().micrometres().most()));
            line.put("at", t.removal().trail().place().toString());
        });
        return one;
    }

    private static ObjectNode json(FilmComparison.Removed zone) {
        ObjectNode one = Answers.object();
        one.put("zone", zone.before().film().zone());
        one.put("count", zone.after().count());
        one.put("least", Answers.figure(zone.after().lowest().micrometres()));
        one.put("leastAt", zone.after().lowest().source());
        one.put("mean", Answers.figure(zone.after().mean()));
        one.put("removed", Answers.figure(BigDecimal.valueOf(zone.difference())));
        zone.uncertainty().ifPresent(u -> one.put("uncertainty", Answers.figure(BigDecimal.valueOf(u))));
        one.put("answer", Answers.word(zone.answer()));
        return one;
    }
}
