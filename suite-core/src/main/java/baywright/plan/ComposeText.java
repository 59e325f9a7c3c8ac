package baywright.plan;

import baywright.library.Stage;
import baywright.plan.Composition.Because;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Words a composed plan for people: why its steps are there, and why something is not. */
public final class ComposeText {

    private static final int ZONES_NAMED = 4;

    /** So many steps that need the same are counted, not named. */
    private static final int MANY = 4;

    private final GoalComposition composed;
    private final Locale locale;
    private final ResourceBundle texts;
    private final ZoneNames names;
    private final EditText edits;

    /** For one composition; a language without texts of its own gets the English ones. */
    public ComposeText(GoalComposition composed, Locale locale) {
        this.composed = composed;
        this.locale = locale;
        names = new ZoneNames(composed.setting().shape(), locale);
        edits = new EditText(composed.setting(), locale);
        texts = ResourceBundle.getBundle(
                "baywright.plan.compose",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** Why a step is there, goals first; no full stops. */
    public List<String> why(Step step) {
        List<Because> all = composed.composition().reasons().stream()
                .filter(b -> b.step().equals(step.id()))
                .toList();
        List<String> sentences = new ArrayList<>();
        grouped(all.stream().filter(b -> b.forStep().isEmpty()).toList(), this::goals)
                .forEach((goals, some) -> sentences.add(say("asked", goals, states(some), on(some.get(0)))));
        List<Because> needed = all.stream()
                .filter(b -> !b.forStep().isEmpty() && b.rule().isEmpty())
                .toList();
        Map<String, List<Because>> byState = grouped(needed, b -> b.state() + b.ends());
        byState.values().stream()
                .filter(some -> some.size() >= MANY)
                .forEach(some -> sentences.add(
                        say(some.get(0).ends() ? "many.ends" : "many.needs", some.size(), states(some.subList(0, 1)))));
        grouped(
                        needed.stream()
                                .filter(b -> byState.get(b.state() + b.ends()).size() < MANY)
                                .toList(),
                        b -> b.forStep() + b.ends() + b.zones())
                .forEach((key, some) -> sentences.add(say(
                        some.get(0).ends() ? "ends" : "needs",
                        name(some.get(0).forStep()),
                        states(some),
                        on(some.get(0)))));
        all.stream()
                .filter(b -> !b.rule().isEmpty())
                .forEach(b -> sentences.add(edits.of(b, composed.composition().plan())));
        composed.composition().putOff().stream()
                .filter(p -> p.step().equals(step.id()))
                .forEach(p -> sentences.add(putOff(step, p)));
        return sentences;
    }

    private String putOff(Step step, Composition.PutOff put) {
        String at = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.LONG, FormatStyle.SHORT)
                .withLocale(locale)
                .format(step.at().orElseThrow());
        return put.forStep().equals(step.id())
                ? say("put-off", at, stopped(put.stop()))
                : say("put-off.for", at, name(put.forStep()), stopped(put.stop()));
    }

    private static Map<String, List<Because>> grouped(List<Because> all, Function<Because, String> by) {
        return all.stream().collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.toList()));
    }

    private static String states(List<Because> all) {
        return all.stream().map(b -> "'" + b.state() + "'").distinct().collect(Collectors.joining(", "));
    }

    private String on(Because because) {
        return because.zones().equals(List.of(VehicleIndex.VEHICLE)) ? "" : say("on", zones(because.zones()));
    }

    private String name(String id) {
        return composed.composition().plan().steps().stream()
                .filter(s -> s.id().equals(id))
                .map(s -> title(s.stage()) + " (" + id + ")")
                .findFirst()
                .orElse(id);
    }

    private String goals(Because because) {
        return composed.askedBy(because).stream()
                .map(AskedGoal::title)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** What is missing of a goal and why; no full stop. */
    public String of(Unmet unmet) {
        boolean whole = unmet.wish().zones().equals(List.of(VehicleIndex.VEHICLE));
        return say(
                "unmet",
                unmet.wish().state(),
                whole ? "" : say("on", zones(unmet.wish().zones())),
                of(unmet.why()));
    }

    /** What to say of a goal that is about zones that the vehicle does not have. */
    public String nowhere() {
        return texts.getString("no-zone");
    }

    private String of(Hindrance why) {
        if (why instanceof Hindrance.Stopped stopped) {
            return stopped(stopped.finding())
                    + stopped.from().map(day -> say("until", day(day))).orElse("");
        }
        if (why instanceof Hindrance.NoStage none) {
            return say("no-stage", none.state());
        }
        if (why instanceof Hindrance.Lacks lacks) {
            return say(lacks.byBay() ? "lacks.bay" : "lacks", title(lacks.stage()), lacks.state());
        }
        if (why instanceof Hindrance.Finds finds) {
            return say("finds", title(finds.stage()), finds.state());
        }
        if (why instanceof Hindrance.NoBay bay) {
            return say("no-bay", title(bay.stage()), bay.bay());
        }
        if (why instanceof Hindrance.Against against) {
            return say(
                    "against",
                    against.states().stream().distinct().map(s -> "'" + s + "'").collect(Collectors.joining(", ")));
        }
        return texts.getString(
                why instanceof Hindrance.NoZone ? "no-zone" : why instanceof Hindrance.TooMany ? "too-many" : "no-way");
    }

    private String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(locale)
                .format(day);
    }

    private String stopped(Finding finding) {
        if (finding.reason() instanceof Reason.RuleSpeaks rule) {
            String read = rule.read().entrySet().stream()
                    .map(e -> e.getKey() + " " + e.getValue())
                    .collect(Collectors.joining(", "));
            return say("rule", rule.title(), rule.why(), read.isEmpty() ? "" : say("read", read));
        }
        return say("stopped", FindingText.title(finding.code(), locale));
    }

    private String title(String stage) {
        Stage known = composed.setting().library().stageById().get(stage);
        return known == null ? "'" + stage + "'" : ZoneNames.inSentence(known.title(), locale);
    }

    /** Zones as people name them. */
    public String zones(List<String> written) {
        return names.of(ZoneChoice.resolve(written, composed.setting().shape()), ZONES_NAMED);
    }

    private String say(String key, Object... values) {
        return new MessageFormat(texts.getString(key), locale).format(values);
    }
}
