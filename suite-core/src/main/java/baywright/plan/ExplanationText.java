package baywright.plan;

import baywright.plan.Explanation.Change;
import baywright.plan.Explanation.Giver;
import baywright.plan.Explanation.Kind;
import baywright.plan.Explanation.Link;
import baywright.plan.Explanation.Moment;
import baywright.plan.Explanation.Way;
import baywright.plan.Explanation.Where;
import baywright.script.Place;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

/** Words an explanation for people: one line each, with the titles of stages and zones, no full stops. */
public final class ExplanationText {

    private static final int ZONES_NAMED = 4;
    private static final int STEPS_NAMED = 3;

    private final Locale locale;
    private final ResourceBundle texts;
    private final ZoneNames names;
    private final Map<String, String> steps;

    /** For one plan; a language without texts of its own gets the English ones. */
    public ExplanationText(Setting setting, Plan plan, Locale locale) {
        this.locale = locale;
        names = new ZoneNames(setting.shape(), locale);
        texts = ResourceBundle.getBundle(
                "baywright.plan.explanation",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        steps = StepNames.of(setting, plan, locale);
    }

    /** A step as {@code polish (s4)}. */
    public String step(String id) {
        return steps.getOrDefault(id, id);
    }

    /** What a step relies on: the state, who gave it, and why it is asked for. */
    public String reliesOn(Link link) {
        if (link.kind() == Kind.SHIELDS) {
            return say("shielded." + giver(link), link.state(), by(link), on(link.zones()), link.spared())
                    + places(link);
        }
        String key = (link.gone() ? "gone." : "there.") + giver(link);
        return say(key, link.state(), by(link), on(link.zones()), preferred(link), why(link)) + places(link);
    }

    /** What a later step relies on a step for. */
    public String carries(Link link) {
        if (link.kind() == Kind.SHIELDS) {
            return say("carries.shield", link.state(), step(link.step()), on(link.zones()), link.spared())
                    + places(link);
        }
        String key = link.gone() ? "carries.gone" : "carries.there";
        return say(key, link.state(), step(link.step()), on(link.zones()), preferred(link), why(link)) + places(link);
    }

    /** A state with its zones and the line that makes or ends it. */
    public String where(Where where) {
        return say("where", where.state(), on(where.zones())) + at(where.place());
    }

    /** Who changes a zone: a step that works there, one that spreads there, or time. */
    public String who(Moment moment) {
        return say("way." + moment.way().name().toLowerCase(Locale.ROOT), step(moment.step()));
    }

    /** A state that comes to a zone or goes from it, with who did it where that is not the step itself, and the line. */
    public String change(Moment moment, Change change) {
        String by = moment.way() == Way.ITSELF && !change.by().isEmpty()
                ? say(change.comes() ? "promised" : "made", step(change.by()))
                : "";
        return say(change.comes() ? "comes" : "goes", change.state(), by) + at(change.place());
    }

    /** What a step that works on a zone and changes nothing there does. */
    public String nothing() {
        return texts.getString("nothing");
    }

    /** What of a step a goal of the job asks for, or through which steps it does. */
    public String tie(GoalTies.Tie tie) {
        return tie.wants().isEmpty()
                ? say(
                        "goal.through",
                        goal(tie.goal()),
                        some(tie.through()),
                        at(tie.goal().place()))
                : say(
                        "goal.wants",
                        goal(tie.goal()),
                        wheres(tie.wants()),
                        at(tie.goal().place()));
    }

    /** What a goal lacks when a step is left out, and which steps that serve it stop then. */
    public List<String> loss(Without.GoalLoss loss) {
        List<String> lines = new ArrayList<>();
        if (!loss.loses().isEmpty()) {
            lines.add(say(
                    "goal.loses",
                    goal(loss.goal()),
                    wheres(loss.loses()),
                    at(loss.goal().place())));
        }
        if (!loss.stopped().isEmpty()) {
            lines.add(say(
                    "goal.stopped",
                    goal(loss.goal()),
                    some(loss.stopped()),
                    at(loss.goal().place())));
        }
        return lines;
    }

    /** What of a goal holds in the end on one zone, or what is missing there. */
    public String end(GoalEnd end) {
        List<Where> told = end.met() ? end.holds() : end.lacks();
        String states = told.stream().map(w -> "'" + w.state() + "'").collect(Collectors.joining(", "));
        return say(
                end.met() ? "goal.holds" : "goal.holds.not",
                goal(end.goal()),
                states,
                at(end.goal().place()));
    }

    private String goal(AskedGoal goal) {
        return say(
                "goal",
                goal.title(),
                texts.getString("priority." + goal.priority().name().toLowerCase(Locale.ROOT)));
    }

    /** The states of a goal; those on the same zones together. */
    private String wheres(List<Where> wheres) {
        Map<List<String>, List<String>> statesByZones = new LinkedHashMap<>();
        wheres.forEach(w ->
                statesByZones.computeIfAbsent(w.zones(), z -> new ArrayList<>()).add("'" + w.state() + "'"));
        return statesByZones.entrySet().stream()
                .map(e -> String.join(", ", e.getValue()) + on(e.getKey()))
                .reduce((a, b) -> say("and", a, b))
                .orElse("");
    }

    /** The first few steps by name, the others counted. */
    private String some(List<String> ids) {
        String named = ids.stream().limit(STEPS_NAMED).map(this::step).collect(Collectors.joining(", "));
        return ids.size() <= STEPS_NAMED ? named : say("goal.through.more", named, ids.size() - STEPS_NAMED);
    }

    private static String giver(Link link) {
        return link.giver().name().toLowerCase(Locale.ROOT);
    }

    private String by(Link link) {
        return link.giver() == Giver.STEP ? step(link.by()) : link.by();
    }

    private String preferred(Link link) {
        return link.kind() == Kind.PREFERRED ? texts.getString("preferred") : "";
    }

    private String why(Link link) {
        return link.why().isEmpty() ? "" : say("why", link.why());
    }

    /** The line that asks, and the line that gives. */
    private String places(Link link) {
        String asking = line(link.place());
        return link.giving().map(giving -> say("at.both", asking, line(giving))).orElseGet(() -> say("at", asking));
    }

    private String at(Optional<Place> place) {
        return place.map(p -> say("at", line(p))).orElse("");
    }

    /** A place as {@code stages/wash/contact-wash.groovy:12}. */
    public static String line(Place place) {
        return "stages/" + place.file() + (place.line() == 0 ? "" : ":" + place.line());
    }

    private String on(List<String> zones) {
        return zones.equals(List.of(VehicleIndex.VEHICLE)) ? "" : say("on", names.of(zones, ZONES_NAMED));
    }

    private String say(String key, Object... values) {
        return new MessageFormat(texts.getString(key), locale).format(values);
    }
}
