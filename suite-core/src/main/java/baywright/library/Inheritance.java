package baywright.library;

import baywright.library.FileBlock.Met;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problems;
import baywright.script.Value;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which stages are like which, and what follows for their problems. */
final class Inheritance {

    private static final int DEEPEST = 8;

    private final Declared<Met> stages;
    private final Map<String, Problems> problemsOf;
    private final Map<String, Lineage> lines = new LinkedHashMap<>();

    /**
     * Follows every {@code like:}; where it leads nowhere or round in a circle that is noted once.
     *
     * @param stages     all stages
     * @param problemsOf problems of the file that each stage stands in
     */
    Inheritance(Declared<Met> stages, Map<String, Problems> problemsOf) {
        this.stages = stages;
        this.problemsOf = problemsOf;
        for (Met met : stages.all()) {
            line(met).ifPresent(l -> lines.put(met.id(), new Lineage(l)));
        }
    }

    /** Every stage whose {@code like:} leads to an end, with those that it is like. */
    List<Lineage> lines() {
        return List.copyOf(lines.values());
    }

    /** Of a stage whose id another one has already: it is read like any, to find what else is wrong with it. */
    Lineage ofSecond(Met second, Problems problems) {
        if (second.like().isEmpty()) {
            return new Lineage(second);
        }
        String like = second.likeId();
        stages.require(like, second.like().get().place(), problems, "stage");
        List<Met> line = new ArrayList<>();
        Optional.ofNullable(lines.get(like)).ifPresent(l -> {
            line.addAll(l.others());
            line.add(l.own());
        });
        line.add(second);
        return new Lineage(line);
    }

    /** Whether all is known that a stage has from others. */
    boolean isComplete(Met met) {
        return met.like().isEmpty() || lines.containsKey(met.likeId());
    }

    private Optional<List<Met>> line(Met own) {
        List<Met> line = new ArrayList<>(List.of(own));
        Set<String> seen = new HashSet<>(Set.of(own.id()));
        Met at = own;
        while (at.like().isPresent()) {
            Value like = at.like().get();
            String next = at.likeId();
            if (!stages.has(next)) {
                if (line.size() == 1) {
                    note(own, "unknown-stage", "no stage is called '" + next + "'" + Nearest.hint(next, stages.ids()));
                }
                return Optional.empty();
            }
            at = stages.get(next);
            if (!seen.add(next)) {
                noteCircle(own, next);
                return Optional.empty();
            }
            line.add(0, at);
            if (line.size() > DEEPEST) {
                note(
                        own,
                        "limit",
                        "a stage is like another at most " + DEEPEST + " deep; " + like.raw() + " is deeper");
                return Optional.empty();
            }
        }
        return Optional.of(line);
    }

    private void note(Met met, String code, String message) {
        problemsOf.get(met.id()).error(met.like().orElseThrow().place(), code, message, "stage");
    }

    /** Notes a circle at that of its stages which comes first. */
    private void noteCircle(Met own, String member) {
        List<String> circle = new ArrayList<>();
        String at = member;
        do {
            circle.add(at);
            at = stages.get(at).likeId();
        } while (!at.equals(member));
        String first = circle.stream().sorted().findFirst().orElseThrow();
        if (own.id().equals(first)) {
            List<String> shown = new ArrayList<>();
            int start = circle.indexOf(first);
            for (int i = 0; i <= circle.size(); i++) {
                shown.add("'" + circle.get((start + i) % circle.size()) + "'");
            }
            note(own, "contradiction", "stages are like each other in a circle: " + String.join(" like ", shown));
        }
    }

    /**
     * Says of every stage what is wrong with it alone: what is wrong with a stage that it is like stays with that one,
     * and what only shows in the two together is said where it says what it is like.
     *
     * @param drafts all stages with all that was noted of them
     * @param broken ids of stages in files that could not be read as a whole
     * @return problems of each stage; a stage with an error cannot be used
     */
    Map<String, Problems> settled(List<StageDraft> drafts, Set<String> broken) {
        Map<String, StageDraft> byId = new LinkedHashMap<>();
        drafts.forEach(d -> byId.put(d.stage().id(), d));
        Map<String, Problems> settled = new LinkedHashMap<>();
        List<Place> places = stages.all().stream().map(Met::place).toList();
        lines.forEach((id, line) -> settled.put(id, settled(byId.get(id), line, byId, places)));
        Set<String> lost = new HashSet<>(broken);
        stages.ids().stream()
                .filter(id -> !settled.containsKey(id) || settled.get(id).errors() > 0)
                .forEach(lost::add);
        for (Met met : stages.all()) {
            leftOut(met, lost).ifPresent(other -> {
                settled.computeIfAbsent(met.id(), k -> new Problems())
                        .error(
                                met.like().orElseThrow().place(),
                                "left-out",
                                "stage '" + met.id() + "' is left out, since '" + other
                                        + "', which it is like, has an error",
                                "stage");
            });
        }
        return settled;
    }

    private static Problems settled(StageDraft draft, Lineage line, Map<String, StageDraft> byId, List<Place> places) {
        if (line.others().isEmpty()) {
            return draft.problems();
        }
        List<Place> ofFile = places.stream()
                .filter(p -> p.file().equals(line.own().place().file()))
                .toList();
        Set<Problem> known = new HashSet<>();
        line.others().forEach(m -> known.addAll(byId.get(m.id()).problems().sorted()));
        Value like = line.own().like().orElseThrow();
        Problems own = new Problems();
        for (Problem problem : draft.problems().sorted()) {
            if (line.isOwn(problem.place(), ofFile)) {
                own.add(problem);
            } else if (!known.contains(problem)) {
                own.add(new Problem(
                        like.place(),
                        problem.severity(),
                        problem.code(),
                        "like '" + like.raw() + "', of which " + problem.place() + " does not fit here: "
                                + problem.message(),
                        problem.word()));
            }
        }
        return own;
    }

    /** The nearest stage that a stage is like and that is lost; empty when it is lost by itself or not at all. */
    private Optional<String> leftOut(Met met, Set<String> lost) {
        Set<String> seen = new HashSet<>(Set.of(met.id()));
        if (lost.contains(met.id()) && !onlyByOthers(met)) {
            return Optional.empty();
        }
        String at = met.likeId();
        while (!at.isEmpty() && seen.add(at) && stages.has(at)) {
            if (lost.contains(at)) {
                return Optional.of(at);
            }
            at = stages.get(at).likeId();
        }
        return Optional.empty();
    }

    /** Whether a stage without a line of its own leads into trouble that is noted elsewhere. */
    private boolean onlyByOthers(Met met) {
        boolean inCircle = false;
        Set<String> seen = new HashSet<>();
        for (String at = met.likeId();
                !at.isEmpty() && stages.has(at) && seen.add(at);
                at = stages.get(at).likeId()) {
            inCircle |= at.equals(met.id());
        }
        return !lines.containsKey(met.id()) && !inCircle && stages.has(met.likeId());
    }
}
