package baywright.plan;

import baywright.library.StageTerms;
import baywright.library.StageTerms.Need;
import baywright.script.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Finds the line of the library that a finding of one plan goes back to. */
public final class FindingPlaces {

    private final List<Step> steps;
    private final List<CompiledStep> compiled;

    public FindingPlaces(Setting setting, Plan plan) {
        steps = plan.steps();
        compiled = new ArrayList<>(Prover.forSetting(setting).compile(plan));
    }

    /** The line of the stage or the rule; empty when it is not a line of the library that is at fault. */
    public Optional<Place> of(Finding finding) {
        Reason reason = finding.reason();
        if (reason instanceof Reason.RuleSpeaks r) {
            return Optional.of(r.place());
        }
        if (reason instanceof Reason.NeedUnmet r) {
            return need(r.step(), n -> !n.absent() && n.anyOf().equals(r.anyOf()));
        }
        if (reason instanceof Reason.MustNotHold r) {
            return need(r.step(), n -> n.absent() && n.anyOf().contains(r.state()));
        }
        if (reason instanceof Reason.TooSoon r) {
            return standing(r.after());
        }
        if (reason instanceof Reason.TooLate r) {
            return standing(r.after());
        }
        return reason instanceof Reason.LeftStanding r ? standing(r.step()) : Optional.empty();
    }

    private Optional<Place> need(String step, Predicate<Need> wanted) {
        return terms(step)
                .flatMap(t -> Stream.concat(t.needs().stream(), t.prefers().stream()))
                .filter(wanted)
                .map(n -> n.origin().place())
                .findFirst();
    }

    private Optional<Place> standing(String step) {
        return terms(step)
                .flatMap(t -> t.standing().stream())
                .map(s -> s.origin().place())
                .findFirst();
    }

    private Stream<StageTerms> terms(String step) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).id().equals(step)) {
                return compiled.get(i).parts().stream().map(part -> part.terms().terms);
            }
        }
        return Stream.empty();
    }
}
