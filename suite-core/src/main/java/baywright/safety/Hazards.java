package baywright.safety;

import baywright.library.Item;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.library.StageTerms.Risk;
import baywright.plan.Bay;
import baywright.plan.StepWork;
import baywright.script.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What one step brings along. */
final class Hazards {

    private static final String EAR = "ear ";
    private static final String EQUIPMENT = "equipment:";

    private final SafetyCase all;

    Hazards(SafetyCase all) {
        this.all = all;
    }

    /** Items poured or used and those whose statements the stage names, each once. */
    List<Item> items(StepWork work) {
        Set<String> ids = new LinkedHashSet<>();
        work.uses().forEach(u -> ids.add(u.item()));
        terms(work).forEach(t -> t.hazards().from().forEach(f -> ids.add(f.id())));
        List<Item> items = new ArrayList<>();
        ids.forEach(id ->
                Optional.ofNullable(all.setting().library().itemById().get(id)).ifPresent(items::add));
        return items;
    }

    static List<StageTerms> terms(StepWork work) {
        return work.parts().stream().map(StepWork.Part::terms).toList();
    }

    /** Kinds of physical danger, each once. */
    static List<String> risks(StepWork work) {
        return terms(work).stream()
                .flatMap(t -> t.hazards().risks().stream())
                .map(Risk::kind)
                .distinct()
                .toList();
    }

    static boolean hasRisk(StepWork work, String kind) {
        return risks(work).contains(kind);
    }

    /** Protection that the stage asks for. */
    static List<String> wear(StepWork work) {
        return terms(work).stream()
                .flatMap(t -> t.hazards().wear().stream())
                .map(StageTerms.Named::id)
                .distinct()
                .toList();
    }

    static boolean earsCovered(StepWork work) {
        return wear(work).stream().anyMatch(w -> (w + " ").startsWith(EAR));
    }

    /** Level of a machine: the job's own, else the highest that the stage's parts give. */
    OptionalDouble level(StepWork work, Agent agent) {
        JobSafety.StepSafety own = all.job().step(work.step());
        var given = agent == Agent.VIBRATION ? own.vibration() : own.noise();
        if (given.isPresent() && hasRisk(work, agent.risk())) {
            return OptionalDouble.of(given.get().doubleValue());
        }
        return terms(work).stream()
                .flatMap(t -> t.hazards().risks().stream())
                .filter(r -> r.kind().equals(agent.risk()))
                .flatMap(r -> r.level().stream())
                .mapToDouble(q -> q.inBase().doubleValue())
                .max();
    }

    /** The line of a script that gives the level that counts; empty where the job gives it or no line does. */
    Optional<Place> levelLine(StepWork work, Agent agent) {
        JobSafety.StepSafety own = all.job().step(work.step());
        if ((agent == Agent.VIBRATION ? own.vibration() : own.noise()).isPresent()) {
            return Optional.empty();
        }
        return terms(work).stream()
                .flatMap(t -> t.hazards().risks().stream())
                .filter(r -> r.kind().equals(agent.risk()) && r.level().isPresent())
                .max(Comparator.comparing(r -> r.level().get().inBase()))
                .map(r -> r.origin().place());
    }

    static String bayKind(StepWork work) {
        return terms(work).isEmpty() ? "" : terms(work).get(0).where().bay();
    }

    /** Id of the first bay of the shop that is of the step's kind; empty: none or any. */
    String bay(StepWork work) {
        return place(work).map(Bay::id).orElse("");
    }

    /** The first bay of the shop that is of the step's kind. */
    Optional<Bay> place(StepWork work) {
        return places(work).stream().findFirst();
    }

    /** The bays of the shop that are of the step's kind. */
    List<Bay> places(StepWork work) {
        String kind = bayKind(work);
        return all.setting().bays().stream()
                .filter(b -> kind.isEmpty() || b.kind().contains(kind))
                .toList();
    }

    /** What is kept apart from other things by its selectors, such as {@code group:acid}, each under words for people. */
    record Thing(String title, boolean isItem, Set<String> tokens) {
        /** Whether one of the selectors fits; a piece of equipment also by a part of its name. */
        boolean fits(List<String> selectors) {
            for (String selector : selectors) {
                if (tokens.contains(selector) || (selector.startsWith(EQUIPMENT) && isCalled(selector))) {
                    return true;
                }
            }
            return false;
        }

        private boolean isCalled(String selector) {
            String name = selector.substring(EQUIPMENT.length());
            return tokens.stream().anyMatch(t -> t.startsWith(EQUIPMENT) && t.contains(name));
        }
    }

    /** Items, equipment and dangers of a step. */
    List<Thing> things(StepWork work) {
        List<Thing> things = new ArrayList<>();
        items(work).forEach(item -> things.add(thing(item)));
        terms(work).stream()
                .flatMap(t -> t.where().equipment().stream())
                .map(StageTerms.Named::id)
                .distinct()
                .forEach(e -> things.add(new Thing(e, false, Set.of(EQUIPMENT + e))));
        Set<String> rest = new LinkedHashSet<>(List.of("stage:" + work.stage(), "family:" + work.family()));
        risks(work).forEach(risk -> rest.add("risk:" + risk));
        Stage stage = all.setting().library().stageById().get(work.stage());
        things.add(new Thing(stage == null ? work.stage() : stage.title(), false, rest));
        return things;
    }

    static Thing thing(Item item) {
        Set<String> tokens = new LinkedHashSet<>(List.of("item:" + item.id()));
        item.groups().forEach(g -> tokens.add("group:" + g));
        item.hazards().forEach(h -> tokens.add("hazard:" + h));
        return new Thing(item.title(), true, tokens);
    }
}
