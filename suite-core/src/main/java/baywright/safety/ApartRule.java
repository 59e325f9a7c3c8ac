package baywright.safety;

import baywright.library.Item;
import baywright.library.StageTerms;
import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Things that must not meet: items on a zone without a rinse between, by what stages declare and by the site's pairs; items,
 * equipment and dangers in one bay on one day or at one time, by the site's pairs, also with other jobs of the shop. What a
 * rule of the library stops already is not said again.
 */
final class ApartRule {

    private static final String RULE_FORBIDS = "rule-forbids";
    private static final String RINSED = "rinsed";
    private static final List<String> GASSING = List.of("EUH031", "EUH032", "EUH206");

    private record Poured(Item item, StepWork by) {}

    /** What has been said of a step: a pair once, whatever brings it. */
    private record Said(String step, String pair) {}

    private final SafetyCase all;
    private final Hazards hazards;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<Said> said = new HashSet<>();
    private final IdentityHashMap<Item, Parts> parts = new IdentityHashMap<>();

    ApartRule(SafetyCase all) {
        this.all = all;
        hazards = new Hazards(all);
    }

    List<Finding> check(List<DayBook.Stint> stints) {
        onZones();
        inBays(Presence.of(all, stints));
        return findings;
    }

    // on a zone

    /** Most zones of a vehicle see the same steps, so what two steps bring together is looked at once. */
    private void onZones() {
        List<StepWork> works = all.work().steps();
        List<List<Poured>> poured = works.stream().map(this::poured).toList();
        Map<String, List<Integer>> onZone = new HashMap<>();
        for (int now = 0; now < works.size(); now++) {
            StepWork work = works.get(now);
            List<Poured> own = poured.get(now);
            Map<Integer, List<SafetyReason>> known = new HashMap<>();
            Map<SafetyReason, Set<String>> met = new LinkedHashMap<>();
            for (StepWork.Part part : work.parts()) {
                boolean rinses = sets(part.terms(), RINSED);
                for (String zone : part.zones()) {
                    List<Integer> there = onZone.computeIfAbsent(zone, z -> new ArrayList<>());
                    if (!own.isEmpty()) {
                        there.add(now);
                        for (int before : there) {
                            boolean itself = before == now;
                            known.computeIfAbsent(before, n -> pairs(poured.get(n), own, itself))
                                    .forEach(r -> met.computeIfAbsent(r, x -> new LinkedHashSet<>())
                                            .add(zone));
                        }
                    }
                    if (rinses) {
                        there.clear();
                    }
                }
            }
            met.forEach((reason, zones) -> report(work, List.copyOf(zones), Severity.STOP, reason));
        }
    }

    private List<Poured> poured(StepWork work) {
        return hazards.items(work).stream().map(item -> new Poured(item, work)).toList();
    }

    /**
     * Pairs of which one is poured by a step and the other stands there.
     *
     * @param same whether both are what one step pours
     */
    private List<SafetyReason> pairs(List<Poured> there, List<Poured> own, boolean same) {
        List<SafetyReason> pairs = new ArrayList<>();
        for (int i = 0; i < there.size(); i++) {
            for (int j = same ? i + 1 : 0; j < own.size(); j++) {
                Poured before = there.get(i);
                Poured now = own.get(j);
                apart(before, now)
                        .ifPresent(why -> pairs.add(new SafetyReason.Meets(
                                before.item().title(),
                                now.item().title(),
                                before.by().step(),
                                "zone",
                                "",
                                "",
                                why)));
            }
        }
        return pairs;
    }

    private Optional<String> apart(Poured a, Poured b) {
        return declared(a.by(), a.item(), b.item())
                .or(() -> declared(b.by(), b.item(), a.item()))
                .or(() -> paired(a, b));
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

    private Optional<String> paired(Poured a, Poured b) {
        List<ApartPair> pairs = all.settings().apart();
        Parts first = parts(a.item());
        Parts second = parts(b.item());
        for (int p = 0; p < pairs.size(); p++) {
            ApartPair pair = pairs.get(p);
            if (pair.severity() == Severity.STOP && first.meet(second, p)) {
                said.add(new Said(b.by().step(), pair.id()));
                return Optional.of(why(pair, Hazards.thing(a.item()), Hazards.thing(b.item())));
            }
        }
        return Optional.empty();
    }

    private Parts parts(Item item) {
        return parts.computeIfAbsent(
                item, i -> Parts.of(List.of(Hazards.thing(i)), all.settings().apart()));
    }

    // in a bay

    /** Which pairs things bring the first and which the second of, by their places in the site's list. */
    record Parts(BitSet first, BitSet second) {
        static Parts of(List<Hazards.Thing> things, List<ApartPair> pairs) {
            BitSet first = new BitSet(pairs.size());
            BitSet second = new BitSet(pairs.size());
            for (int p = 0; p < pairs.size(); p++) {
                for (Hazards.Thing thing : things) {
                    if (thing.fits(pairs.get(p).first())) {
                        first.set(p);
                    }
                    if (thing.fits(pairs.get(p).second())) {
                        second.set(p);
                    }
                }
            }
            return new Parts(first, second);
        }

        /** Whether the things of both may be a pair. */
        boolean canMeet(Parts other, int pair) {
            return (first.get(pair) && other.second.get(pair)) || (second.get(pair) && other.first.get(pair));
        }

        /** Whether one thing and another are a pair: what is both parts of it meets neither. */
        boolean meet(Parts other, int pair) {
            return canMeet(other, pair) && !(first.get(pair) && other.first.get(pair));
        }

        boolean hasPart(int pair) {
            return first.get(pair) || second.get(pair);
        }
    }

    /** A presence with the parts of pairs that it brings. */
    record Brought(Presence presence, Parts parts) {
        boolean canMeet(Brought other, int pair) {
            return parts.canMeet(other.parts, pair);
        }

        boolean hasPart(int pair) {
            return parts.hasPart(pair);
        }
    }

    /** A step brings the same whenever it comes. */
    static List<Brought> brought(List<Presence> presences, List<ApartPair> pairs) {
        IdentityHashMap<List<Hazards.Thing>, Parts> known = new IdentityHashMap<>();
        return presences.stream()
                .map(p -> new Brought(p, known.computeIfAbsent(p.things(), things -> Parts.of(things, pairs))))
                .toList();
    }

    /** Most steps bring neither part of most pairs, so that all steps need not be held against each other. */
    private void inBays(List<Presence> presences) {
        List<ApartPair> pairs = all.settings().apart();
        List<Brought> own = brought(presences, pairs);
        for (int i = 0; i < own.size(); i++) {
            Brought now = own.get(i);
            for (int p = 0; p < pairs.size(); p++) {
                ApartPair pair = pairs.get(p);
                if (!now.hasPart(p)) {
                    continue;
                }
                if (pair.within() == ApartPair.Within.DAY) {
                    within(pair, now.presence(), now.presence(), Optional.empty());
                }
                for (Brought before : own.subList(0, i)) {
                    if (before.canMeet(now, p)) {
                        within(pair, before.presence(), now.presence(), Optional.empty());
                    }
                }
            }
        }
        for (Booked other : all.others()) {
            for (Brought there : other.brought(pairs)) {
                for (Brought now : own) {
                    for (int p = 0; p < pairs.size(); p++) {
                        if (there.canMeet(now, p)) {
                            within(pairs.get(p), there.presence(), now.presence(), Optional.of(other));
                        }
                    }
                }
            }
        }
    }

    private void within(ApartPair pair, Presence there, Presence now, Optional<Booked> other) {
        boolean itself =
                other.isEmpty() && there.work().step().equals(now.work().step());
        // a stage speaks for what it does itself at one time
        if (there.bay().isEmpty()
                || !there.bay().equals(now.bay())
                || (itself && pair.within() == ApartPair.Within.TOGETHER)
                || apartInTime(pair, there, now)) {
            return;
        }
        for (Hazards.Thing first : there.things()) {
            for (Hazards.Thing second : now.things()) {
                boolean one = itself && first.equals(second);
                if (!one && meet(pair, first, second) && together(pair, there, first, now)) {
                    report(pair, there, first, now, second, other);
                    return;
                }
            }
        }
    }

    private static boolean apartInTime(ApartPair pair, Presence there, Presence now) {
        if (pair.within() == ApartPair.Within.DAY) {
            return !there.from().toLocalDate().equals(now.from().toLocalDate());
        }
        return now.from().isAfter(there.to().plusMinutes(pair.minutes()))
                || there.from().isAfter(now.to().plusMinutes(pair.minutes()));
    }

    /** Whether what came first is still about when the other comes; only the pair's first lingers. */
    private static boolean together(ApartPair pair, Presence there, Hazards.Thing brought, Presence now) {
        if (pair.within() == ApartPair.Within.DAY) {
            return true;
        }
        boolean bringsFirst = brought.fits(pair.first());
        LocalDateTime thereTo = bringsFirst ? there.to().plusMinutes(pair.minutes()) : there.to();
        LocalDateTime nowTo = bringsFirst ? now.to() : now.to().plusMinutes(pair.minutes());
        return now.from().isBefore(thereTo) && there.from().isBefore(nowTo);
    }

    private static boolean meet(ApartPair pair, Hazards.Thing a, Hazards.Thing b) {
        return (a.fits(pair.first()) && b.fits(pair.second()) && !b.fits(pair.first()))
                || (b.fits(pair.first()) && a.fits(pair.second()) && !a.fits(pair.first()));
    }

    /** The words of the statement that an item carries, where one says it, else those of the pair. */
    private static String why(ApartPair pair, Hazards.Thing a, Hazards.Thing b) {
        return GASSING.stream()
                .map(c -> "hazard:" + c)
                .filter(pair.first()::contains)
                .filter(c -> a.tokens().contains(c) || b.tokens().contains(c))
                .findFirst()
                .flatMap(c -> Statements.in(Locale.ENGLISH).text(c.substring("hazard:".length())))
                .orElse(pair.why());
    }

    /** A job without a timetable comes when the order of its steps says, which is a guess: it is warned of, not refused. */
    private void report(
            ApartPair pair,
            Presence there,
            Hazards.Thing first,
            Presence now,
            Hazards.Thing second,
            Optional<Booked> other) {
        String job = other.map(Booked::title).orElse("");
        if (!said.add(new Said(now.work().step(), pair.id() + " " + job))
                || said.contains(new Said(now.work().step(), pair.id()))) {
            return;
        }
        String bay = all.setting().bays().stream()
                .filter(b -> b.id().equals(now.bay()))
                .map(Bay::title)
                .findFirst()
                .orElse(now.bay());
        SafetyReason reason = new SafetyReason.Meets(
                first.title(),
                second.title(),
                other.map(o -> o.words(there)).orElse(there.work().step()),
                pair.within().name().toLowerCase(Locale.ROOT),
                bay,
                job,
                why(pair, first, second));
        boolean timed = !all.spells().isEmpty() && other.map(Booked::isTimed).orElse(true);
        boolean lower = other.isPresent() && !timed && pair.severity() == Severity.STOP;
        report(now.work(), List.of(), lower ? Severity.WARN : pair.severity(), reason);
    }

    private void report(StepWork work, List<String> zones, Severity severity, SafetyReason reason) {
        boolean forbidden = all.proof().findings().stream()
                .filter(f -> f.code().equals(RULE_FORBIDS) && f.step().equals(Optional.of(work.step())))
                .anyMatch(f -> zones.isEmpty() || f.zones().stream().anyMatch(zones::contains));
        if (!forbidden) {
            findings.add(new Finding(SafetyCodes.KEEP_APART, severity, Optional.of(work.step()), zones, reason));
        }
    }

    private static boolean sets(StageTerms terms, String state) {
        return terms.effects().stream().anyMatch(e -> e.sets() && e.state().equals(state));
    }
}
