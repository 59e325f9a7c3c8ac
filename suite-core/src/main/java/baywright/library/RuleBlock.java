package baywright.library;

import static baywright.script.Word.word;

import baywright.library.Rule.Severity;
import baywright.script.Call;
import baywright.script.Node;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Scope;
import baywright.script.Type;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code rule('…') { }}: notes what it says; its conditions are read once all stages are known. */
final class RuleBlock extends Blocks {

    /** What a rule's conditions may hold: no words, only values. */
    static final Section CONDITION = new Section(
            "condition",
            "in 'forbids { }', 'warns { }' and 'notes { }'",
            "One condition, true or false, about the step at hand and one of its zones: what it finds as it begins, what was"
                    + " done before, what comes later. Besides the functions above it may ask `film.least`, `film.sure` (the least, less what the gauge may be off), `film.mean`,"
                    + " `film.most`, `film.count`, `film.wanted` (readings there should be), `film.readable`, `film.budget`, `film.plannedLikely`, `film.plannedMost`"
                    + " (µm), `zone.id`, `zone.surface`, `zone.substrate`, `vehicle.shape`, `step.stage`, `step.family`,"
                    + " `step.start` (minutes of the day), `step.day` (0 on the day the work begins), and the limits of the"
                    + " step's climate `step.coldest`, `step.warmest`, `step.driest`, `step.dampest`. What is not known is"
                    + " `null`; a comparison with it is false.",
            List.of());

    static final Section SECTION = new Section(
            "rule",
            "in 'rule(…) { }'",
            "What the library forbids or warns about beyond what stages need and refuse. The first of its conditions that"
                    + " is true speaks.",
            List.of(
                    word("title")
                            .since("1.2")
                            .takes("words", Type.TEXT)
                            .means("the rule in a few words for people")
                            .example("title 'No abrasive under 60 µm'"),
                    word("reason")
                            .since("1.2")
                            .takes("words", Type.TEXT)
                            .means("why; a finding shows it")
                            .example("reason 'not enough clear coat is left to cut into'"),
                    word("at")
                            .since("1.2")
                            .named("families", Type.IDS.naming("family"))
                            .named("stages", Type.IDS.naming("stage"))
                            .named("except", Type.IDS.naming("stage"))
                            .named("surfaces", Type.IDS.naming("surface"))
                            .means("which steps it concerns: of these families and these stages, but not of those in"
                                    + " 'except:'. 'surfaces:' looks only at zones of these surfaces; a step on the vehicle as a"
                                    + " whole is then looked at on every zone of them")
                            .example("at families: ['sanding'], surfaces: ['paint']"),
                    verdict("forbids", "stops the plan where the condition is true")
                            .example("forbids { film.least < setting('film-stop') }"),
                    verdict("warns", "warns where the condition is true").example("warns { holds('masked') }"),
                    verdict("notes", "tells where the condition is true, no more")
                            .example("notes { !film.readable }")));

    private static Word verdict(String name, String means) {
        return word(name).opens(CONDITION.name()).means(means).since("1.2");
    }

    /** A condition with what it comes to. */
    record Line(Severity severity, Node.Block block, Scope scope) {}

    private final String id;
    private final Place place;
    private final boolean replaces;
    private String title = "";
    private String reason = "";
    private boolean placed;
    private final List<Value> families = new ArrayList<>();
    private final List<Value> stages = new ArrayList<>();
    private final List<Value> except = new ArrayList<>();
    private final List<Value> surfaces = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    RuleBlock(String id, Place place, boolean replaces) {
        super(SECTION.name());
        this.id = id;
        this.place = place;
        this.replaces = replaces;
    }

    @Override
    public void accept(Call call) {
        if (refusedInCondition(call)) {
            return;
        }
        switch (call.word().name()) {
            case "title" -> {
                onlyOnce(call);
                title = call.text("words");
            }
            case "reason" -> {
                onlyOnce(call);
                reason = call.text("words");
            }
            case "at" -> {
                onlyOnce(call);
                placed = true;
                families.addAll(call.list("families"));
                stages.addAll(call.list("stages"));
                except.addAll(call.list("except"));
                surfaces.addAll(call.list("surfaces"));
            }
            default ->
                lines.add(new Line(
                        Severity.valueOf(call.word().name().toUpperCase(Locale.ROOT)),
                        call.block().orElseThrow(),
                        call.scope()));
        }
    }

    /** Notes what a rule must say and this one does not. */
    void judge(Problems problems) {
        if (title.isEmpty()) {
            problems.error(place, "incomplete", "rule '" + id + "' has no title", "title");
        }
        if (reason.isEmpty()) {
            problems.error(place, "incomplete", "rule '" + id + "' gives no reason", "reason");
        }
        if (families.isEmpty() && stages.isEmpty()) {
            String more = placed ? "names neither families nor stages" : "does not say which steps it concerns";
            problems.error(place, "incomplete", "rule '" + id + "' " + more, "at");
        }
        if (lines.isEmpty()) {
            problems.error(
                    place, "incomplete", "rule '" + id + "' neither forbids nor warns nor notes anything", "forbids");
        }
    }

    String id() {
        return id;
    }

    Place place() {
        return place;
    }

    boolean replaces() {
        return replaces;
    }

    String title() {
        return title;
    }

    String reason() {
        return reason;
    }

    List<Value> families() {
        return families;
    }

    List<Value> stages() {
        return stages;
    }

    List<Value> except() {
        return except;
    }

    List<Value> surfaces() {
        return surfaces;
    }

    List<Line> lines() {
        return lines;
    }
}
