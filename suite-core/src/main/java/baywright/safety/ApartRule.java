package baywright.safety;

import baywright.library.Item;
import baywright.library.StageTerms;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Items that must not meet: on a zone without a rinse between, by what stages declare; in one bay on one day, by the
 * statements EUH031, EUH032 and EUH206 beside an acid. What a rule of the library stops already is not said again.
 */
final class ApartRule {

    private static final String RULE_FORBIDS = "rule-forbids";
    private static final String RINSED = "rinsed";
    private static final String ACID = "acid";
    private static final List<String> GASSING = List.of("EUH031", "EUH032", "EUH206");

    private record Poured(Item item, StepWork by) {}

    private final SafetyCase all;
    private final Hazards hazards;
    private final List<Finding> findings = new ArrayList<>();

    ApartRule(SafetyCase all) {
        this.all = all;
        hazards = new Hazards(all);
    }

    List<Finding> check(List<DayBook.Stint> stints) {
        onZones();
        inBays(stints);
        return findings;
    }

    private void onZones() {
        Map<String, List<Poured>> onZone = new LinkedHashMap<>();
        for (StepWork work : all.work().steps()) {
            List<Item> items = hazards.items(work);
            Map<SafetyReason, Set<String>> met = new LinkedHashMap<>();
            for (StepWork.Part part : work.parts()) {
                for (String zone : part.zones()) {
                    List<Poured> there = onZone.computeIfAbsent(zone, z -> new ArrayList<>());
                    items.forEach(i -> there.add(new Poured(i, work)));
                    pairs(work, there)
                            .forEach(r -> met.computeIfAbsent(r, x -> new LinkedHashSet<>())
                                    .add(zone));
                    if (sets(part.terms(), RINSED)) {
                        there.clear();
                    }
                }
            }
            met.forEach((reason, zones) -> report(work, List.copyOf(zones), reason));
        }
    }

    /** Pairs of which one is this step's and the other stands on the zone or is poured by the same step. */
    private List<SafetyReason> pairs(StepWork work, List<Poured> there) {
        List<SafetyReason> pairs = new ArrayList<>();
        for (int i = 0; i < there.size(); i++) {
            for (int j = i + 1; j < there.size(); j++) {
                Poured before = there.get(i);
                Poured now = there.get(j);
                if (now.by().equals(work)) {
                    apart(before, now)
                            .ifPresent(why -> pairs.add(new SafetyReason.Meets(
                                    before.item().title(),
                                    now.item().title(),
                                    before.by().step(),
                                    "zone",
                                    why)));
                }
            }
        }
        return pairs;
    }

    private Optional<String> apart(Poured a, Poured b) {
        return declared(a.by(), a.item(), b.item())
                .or(() -> declared(b.by(), b.item(), a.item()))
                .or(() -> stated(a.item(), b.item()))
                .or(() -> stated(b.item(), a.item()));
    }

    /** A stage that keeps something apart speaks for its own hazardous items. */
    private static Optional<String> declared(StepWork work, Item own, Item other) {
        return Hazards.terms(work).stream()
                .flatMap(t -> t.hazards().keepApart().stream())
                .filter(k -> other.id().equals(k.what()) || other.groups().contains(k.what()))
                .filter(k -> !own.groups().isEmpty() && !own.groups().contains(k.what()))
                .map(StageTerms.Apart::why)
                .findFirst();
    }

    private static Optional<String> stated(Item gassing, Item acid) {
        return gassing.hazards().stream()
                .filter(GASSING::contains)
                .filter(c -> acid.groups().contains(ACID) && !gassing.groups().contains(ACID))
                .findFirst()
                .flatMap(c -> Statements.in(Locale.ENGLISH).text(c));
    }

    private void inBays(List<DayBook.Stint> stints) {
        Map<LocalDate, Map<String, List<Poured>>> inBay = new LinkedHashMap<>();
        Set<SafetyReason> said = new LinkedHashSet<>();
        for (DayBook.Stint stint : stints) {
            List<Poured> there = inBay.computeIfAbsent(stint.day(), d -> new LinkedHashMap<>())
                    .computeIfAbsent(hazards.bay(stint.work()), b -> new ArrayList<>());
            for (Item item : hazards.items(stint.work())) {
                for (Poured before : there) {
                    stated(item, before.item())
                            .or(() -> stated(before.item(), item))
                            .ifPresent(why -> {
                                SafetyReason reason = new SafetyReason.Meets(
                                        before.item().title(),
                                        item.title(),
                                        before.by().step(),
                                        "bay",
                                        why);
                                if (said.add(reason)) {
                                    report(stint.work(), List.of(), reason);
                                }
                            });
                }
                there.add(new Poured(item, stint.work()));
            }
        }
    }

    private void report(StepWork work, List<String> zones, SafetyReason reason) {
        boolean said = all.proof().findings().stream()
                .filter(f -> f.code().equals(RULE_FORBIDS) && f.step().equals(Optional.of(work.step())))
                .anyMatch(f -> zones.isEmpty() || f.zones().stream().anyMatch(zones::contains));
        if (!said) {
            findings.add(new Finding(SafetyCodes.KEEP_APART, Severity.STOP, Optional.of(work.step()), zones, reason));
        }
    }

    private static boolean sets(StageTerms terms, String state) {
        return terms.effects().stream().anyMatch(e -> e.sets() && e.state().equals(state));
    }
}
