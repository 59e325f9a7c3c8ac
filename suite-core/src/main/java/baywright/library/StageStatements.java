package baywright.library;

import baywright.library.StageChange.Amount;
import baywright.library.StageChange.Aspect;
import baywright.library.StageChange.Count;
import baywright.library.StageChange.Part;
import baywright.library.StageChange.Points;
import baywright.library.StageChange.Said;
import baywright.library.StageChange.Words;
import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Need;
import baywright.library.StageTerms.Origin;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a stage says, laid out flat: one statement for each declaration, so that two stages can be held against each other. */
final class StageStatements {

    private static final Words THERE = new Words("");

    /** One declaration with its parts; a part that says nothing is left out. */
    record Statement(Aspect aspect, String subject, Said said, Map<Part, Said> parts, Place place) {}

    private final List<Statement> all = new ArrayList<>();

    private StageStatements() {}

    /** What it says once and for all. */
    static List<Statement> ofHead(Stage stage) {
        StageStatements made = new StageStatements();
        made.head(stage);
        return made.all;
    }

    /** What it says for one use. */
    static List<Statement> ofTerms(StageTerms terms, Place stage) {
        StageStatements made = new StageStatements();
        made.conditions(terms);
        made.takes(terms);
        made.dangers(terms.hazards());
        made.around(terms, stage);
        return made.all;
    }

    private void head(Stage stage) {
        Place at = stage.place();
        words(Aspect.TITLE, "", stage.title(), at);
        words(Aspect.ABOUT, "", stage.about(), at);
        words(Aspect.FAMILY, "", stage.family(), at);
        add(Aspect.REVISION, "", new Count(BigDecimal.valueOf(stage.revision())), at);
        words(Aspect.LIKE, "", stage.like(), at);
        stage.surfaces().forEach(s -> add(Aspect.SURFACE, s, THERE, at));
        for (Input input : stage.inputs()) {
            String takes = takes(input);
            add(
                    Aspect.INPUT,
                    input.name(),
                    new Words(takes),
                    parts(Part.USUAL, said(input.usual()), Part.REASON, reason(input.why())),
                    input.place());
        }
        stage.examples().forEach(e -> add(Aspect.EXAMPLE, e.name(), new Words(example(e)), e.place()));
    }

    private void conditions(StageTerms terms) {
        for (Need need : terms.needs()) {
            condition(need.absent() ? Aspect.REFUSAL : Aspect.NEED, need);
        }
        terms.prefers().forEach(p -> condition(Aspect.PREFERENCE, p));
        for (Effect effect : terms.effects()) {
            Map<Part, Said> parts = new TreeMap<>();
            effect.after().ifPresent(q -> parts.put(Part.AFTER, new Amount(q)));
            parts.put(Part.REACH, new Words(effect.reach().name().toLowerCase(Locale.ROOT)));
            parts.putAll(parts(Part.SPARES, reason(effect.unless())));
            add(effect.sets() ? Aspect.SETS : Aspect.CLEARS, effect.state(), THERE, parts, place(effect.origin()));
        }
    }

    private void condition(Aspect aspect, Need need) {
        add(
                aspect,
                need.anyOf().stream().sorted().collect(Collectors.joining(" | ")),
                THERE,
                parts(Part.REASON, reason(need.why())),
                place(need.origin()));
    }

    private void takes(StageTerms terms) {
        terms.attended()
                .forEach(a -> add(
                        Aspect.ATTENDED,
                        a.per(),
                        new Points(a.minutes(), Unit.MINUTE),
                        parts(Part.TIMES, Optional.of(new Count(a.times()))),
                        place(a.origin())));
        terms.standing()
                .forEach(s -> add(
                        Aspect.STANDING,
                        "",
                        minutes(s.least()),
                        parts(
                                Part.USUAL,
                                Optional.of(minutes(s.usual())),
                                Part.LONGEST,
                                s.most().map(StageStatements::minutes),
                                Part.REASON,
                                reason(s.why())),
                        place(s.origin())));
        terms.setUps().forEach(s -> add(Aspect.SET_UP, "", minutes(s.minutes()), place(s.origin())));
        terms.uses()
                .forEach(u -> add(
                        Aspect.USE,
                        u.item(),
                        new Amount(u.amount()),
                        parts(
                                Part.PER,
                                Optional.of(new Words(u.per())),
                                Part.TIMES,
                                Optional.of(new Count(u.times())),
                                Part.DILUTION,
                                reason(u.dilution())),
                        place(u.origin())));
        terms.removals()
                .forEach(r -> add(
                        Aspect.REMOVAL,
                        "",
                        new Points(r.micrometres(), Unit.MICROMETRE),
                        parts(Part.TIMES, Optional.of(new Count(r.times()))),
                        place(r.origin())));
    }

    private void dangers(StageTerms.Hazards hazards) {
        hazards.from().forEach(f -> add(Aspect.ITEM_HAZARD, f.id(), THERE, place(f.origin())));
        hazards.risks()
                .forEach(r -> add(
                        Aspect.RISK, r.kind(), r.level().<Said>map(Amount::new).orElse(THERE), place(r.origin())));
        hazards.wear().forEach(w -> add(Aspect.PROTECTION, w.id(), THERE, place(w.origin())));
        hazards.keepApart()
                .forEach(a ->
                        add(Aspect.APART, a.what(), THERE, parts(Part.REASON, reason(a.why())), place(a.origin())));
    }

    private void around(StageTerms terms, Place stage) {
        StageTerms.Crew crew = terms.crew();
        Place at = crew.origin().map(Origin::place).orElse(stage);
        add(Aspect.PEOPLE, "", new Count(BigDecimal.valueOf(crew.people())), at);
        add(Aspect.MOST_PEOPLE, "", new Count(BigDecimal.valueOf(crew.most())), at);
        String shares = crew.shares().stream()
                .map(s -> StageChange.plain(s).toPlainString())
                .collect(Collectors.joining(", "));
        words(Aspect.SHARES, "", shares, at);
        words(Aspect.SKILL, "", crew.skill(), at);
        if (crew.checker()) {
            add(Aspect.CHECKER, "", THERE, at);
        }
        Place where = terms.where().origin().map(Origin::place).orElse(stage);
        words(Aspect.BAY, "", terms.where().bay(), where);
        terms.where().equipment().forEach(e -> add(Aspect.EQUIPMENT, e.id(), THERE, place(e.origin())));
        StageTerms.Climate climate = terms.climate();
        Place air = climate.origin().map(Origin::place).orElse(stage);
        bound(Aspect.COLDEST, climate.coldest(), air);
        bound(Aspect.WARMEST, climate.warmest(), air);
        bound(Aspect.DRIEST, climate.driest(), air);
        bound(Aspect.DAMPEST, climate.dampest(), air);
        terms.checks().forEach(c -> add(Aspect.CHECK, c.text(), THERE, place(c.origin())));
        terms.mistakes().forEach(m -> add(Aspect.MISTAKE, m.text(), THERE, place(m.origin())));
    }

    private void bound(Aspect aspect, Optional<Quantity> bound, Place place) {
        bound.ifPresent(q -> add(aspect, "", new Amount(q), place));
    }

    private void words(Aspect aspect, String subject, String text, Place place) {
        if (!text.isEmpty()) {
            add(aspect, subject, new Words(text), place);
        }
    }

    private void add(Aspect aspect, String subject, Said said, Place place) {
        add(aspect, subject, said, Map.of(), place);
    }

    private void add(Aspect aspect, String subject, Said said, Map<Part, Said> parts, Place place) {
        all.add(new Statement(aspect, subject, said, parts, place));
    }

    private static Amount minutes(BigDecimal minutes) {
        return new Amount(new Quantity(minutes, Unit.MINUTE));
    }

    private static Place place(Origin origin) {
        return origin.place();
    }

    private static Optional<Said> reason(String why) {
        return why.isEmpty() ? Optional.empty() : Optional.of(new Words(why));
    }

    private static Map<Part, Said> parts(Part part, Optional<? extends Said> said) {
        Map<Part, Said> parts = new TreeMap<>();
        said.ifPresent(s -> parts.put(part, s));
        return parts;
    }

    private static Map<Part, Said> parts(
            Part part, Optional<? extends Said> said, Part other, Optional<? extends Said> otherSaid) {
        Map<Part, Said> parts = parts(part, said);
        parts.putAll(parts(other, otherSaid));
        return parts;
    }

    private static Map<Part, Said> parts(
            Part part,
            Optional<? extends Said> said,
            Part other,
            Optional<? extends Said> otherSaid,
            Part third,
            Optional<? extends Said> thirdSaid) {
        Map<Part, Said> parts = parts(part, said, other, otherSaid);
        parts.putAll(parts(third, thirdSaid));
        return parts;
    }

    private static String takes(Input input) {
        return InputValues.wanted(input);
    }

    private static Optional<Said> said(Value value) {
        if (value.raw() instanceof Quantity quantity) {
            return Optional.of(new Amount(quantity));
        }
        return Optional.of(
                value.raw() instanceof BigDecimal number
                        ? new Count(number)
                        : new Words(value.raw().toString()));
    }

    /** Everything that an example sets up and expects, in an order of its own. */
    private static String example(Example example) {
        List<String> parts = new ArrayList<>();
        parts.add("on '" + example.shape() + "'");
        list(parts, "zones", example.zones());
        map(parts, "with", example.with());
        map(parts, "given", example.given());
        map(parts, "drivers", example.drivers());
        example.attended().ifPresent(b -> parts.add("attended " + between(b)));
        example.standing().ifPresent(b -> parts.add("standing " + between(b)));
        if (!example.uses().isEmpty()) {
            parts.add("uses "
                    + new TreeMap<>(example.uses())
                            .entrySet().stream()
                                    .map(e -> e.getKey() + " " + e.getValue())
                                    .collect(Collectors.joining(", ")));
        }
        example.removes().ifPresent(b -> parts.add("removes " + between(b)));
        list(parts, "sets", example.sets());
        list(parts, "clears", example.clears());
        return String.join("; ", parts);
    }

    private static void list(List<String> parts, String name, List<String> ids) {
        if (!ids.isEmpty()) {
            parts.add(name + " " + String.join(", ", ids));
        }
    }

    private static void map(List<String> parts, String name, Map<String, Value> values) {
        if (!values.isEmpty()) {
            parts.add(name + " "
                    + new TreeMap<>(values)
                            .entrySet().stream()
                                    .map(e -> e.getKey() + " " + InputValues.shown(e.getValue()))
                                    .collect(Collectors.joining(", ")));
        }
    }

    private static String between(Example.Between between) {
        return between.least() + " to " + between.most();
    }
}
