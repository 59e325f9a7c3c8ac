package baywright.plan;

import baywright.library.Rule;
import baywright.library.StageTerms.Need;
import baywright.plan.RuleCheck.Speech;
import baywright.plan.Walk.Failure;
import baywright.plan.Walk.Lapse;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Collects what a walk noted into findings: one for each step and reason, with all its zones, in stable order. */
final class FindingSheet {

    /** What makes one finding; the rows are gathered under it. */
    private record Key(String code, Severity severity, Reason reason) {}

    private static final Comparator<Finding> BY_GRAVITY =
            Comparator.comparing(Finding::severity).thenComparing(Finding::code);

    private final VehicleIndex vehicle;
    private final List<String> ids;
    private final List<Finding> whole = new ArrayList<>();
    private final Map<Integer, List<Finding>> ready = new TreeMap<>();
    private final Map<Integer, Map<Key, BitSet>> gathered = new TreeMap<>();

    FindingSheet(VehicleIndex vehicle, List<String> ids) {
        this.vehicle = vehicle;
        this.ids = ids;
    }

    void add(Finding finding) {
        whole.add(finding);
    }

    void add(int step, Finding finding) {
        ready.computeIfAbsent(step, s -> new ArrayList<>()).add(finding);
    }

    private void gather(int step, String code, Severity severity, Reason reason, int row) {
        rows(step, code, severity, reason).set(row);
    }

    private BitSet rows(int step, String code, Severity severity, Reason reason) {
        return gathered.computeIfAbsent(step, s -> new LinkedHashMap<>())
                .computeIfAbsent(new Key(code, severity, reason), k -> new BitSet());
    }

    /** Failures of one condition that share the list of their causes make one finding. */
    void addFailures(List<Failure> failures, List<List<Cause>> causes) {
        BitSet rows = new BitSet();
        for (int f = 0; f < failures.size(); f++) {
            Failure failure = failures.get(f);
            boolean same = f > 0
                    && causes.get(f) == causes.get(f - 1)
                    && failure.step() == failures.get(f - 1).step()
                    && failure.condition().equals(failures.get(f - 1).condition());
            rows = same ? rows : rows(failure, causes.get(f));
            rows.set(failure.row());
        }
    }

    private BitSet rows(Failure failure, List<Cause> causes) {
        Need need = failure.condition().need();
        String id = ids.get(failure.step());
        boolean wish = failure.condition().wish();
        Severity severity = wish ? Severity.WARN : Severity.STOP;
        if (need.absent()) {
            String state = need.anyOf().size() == 1
                    ? need.anyOf().get(0)
                    : failure.faults().get(0).id();
            Reason reason = new Reason.MustNotHold(id, state, need.why(), causes);
            return rows(failure.step(), wish ? Codes.PREFERS : Codes.MUST_NOT_HOLD, severity, reason);
        }
        Reason reason = new Reason.NeedUnmet(id, need.anyOf(), need.why(), causes);
        return rows(failure.step(), wish ? Codes.PREFERS : Codes.NEED_UNMET, severity, reason);
    }

    void addLapse(Lapse lapse) {
        String id = ids.get(lapse.step());
        BigDecimal bound = Ticks.minutes(lapse.bound());
        if (lapse.after() == Tracks.NOBODY) {
            Reason reason = new Reason.LeftStanding(id, bound, lapse.why());
            gather(lapse.step(), Codes.LEFT_STANDING, Severity.WARN, reason, lapse.row());
            return;
        }
        String after = ids.get(lapse.after());
        BigDecimal waited = Ticks.minutes(lapse.waited());
        if (lapse.late()) {
            Reason reason = new Reason.TooLate(id, after, waited, bound, lapse.why());
            gather(lapse.step(), Codes.TOO_LATE, Severity.STOP, reason, lapse.row());
        } else {
            Reason reason = new Reason.TooSoon(id, after, waited, bound, lapse.why());
            gather(lapse.step(), Codes.TOO_SOON, Severity.STOP, reason, lapse.row());
        }
    }

    /** Speeches of one rule at one step that share the verdict make one finding. */
    void addSpeeches(List<Speech> speeches, HouseRules house) {
        BitSet rows = new BitSet();
        Speech last = null;
        for (Speech speech : speeches) {
            boolean same = last != null
                    && last.step() == speech.step()
                    && last.entry() == speech.entry()
                    && last.verdict().equals(speech.verdict());
            rows = same ? rows : rows(speech, house);
            rows.set(speech.row());
            last = speech;
        }
    }

    /** A rule that the shop has softened speaks more mildly and carries the shop's reason. */
    private BitSet rows(Speech speech, HouseRules house) {
        Rule rule = speech.entry().rule();
        String id = ids.get(speech.step());
        Verdict verdict = speech.verdict();
        if (verdict.spoken().isEmpty()) {
            Reason reason = new Reason.RuleFails(id, rule.id(), verdict.failure());
            return rows(speech.step(), Codes.RULE_FAILS, Severity.STOP, reason);
        }
        String note = house.reason(rule.id());
        Reason reason =
                new Reason.RuleSpeaks(id, rule.id(), rule.title(), rule.reason(), verdict.read(), rule.place(), note);
        return switch (house.of(rule.id(), verdict.spoken().get().severity())) {
            case FORBIDS -> rows(speech.step(), Codes.RULE_FORBIDS, Severity.STOP, reason);
            case WARNS -> rows(speech.step(), Codes.RULE_WARNS, Severity.WARN, reason);
            case NOTES -> rows(speech.step(), Codes.RULE_NOTES, Severity.NOTE, reason);
        };
    }

    /** All findings: those of the whole plan first, then by step, severity, code and first zone. */
    List<Finding> inOrder() {
        List<Finding> all = new ArrayList<>(whole);
        TreeSet<Integer> steps = new TreeSet<>(ready.keySet());
        steps.addAll(gathered.keySet());
        for (int step : steps) {
            List<Finding> ofStep = new ArrayList<>(ready.getOrDefault(step, List.of()));
            List<Map.Entry<Key, BitSet>> groups =
                    new ArrayList<>(gathered.getOrDefault(step, Map.of()).entrySet());
            groups.sort(Comparator.comparing(g -> g.getValue().nextSetBit(0)));
            for (Map.Entry<Key, BitSet> group : groups) {
                Key key = group.getKey();
                List<String> zones =
                        group.getValue().stream().mapToObj(vehicle::id).toList();
                ofStep.add(new Finding(key.code(), key.severity(), Optional.of(ids.get(step)), zones, key.reason()));
            }
            ofStep.sort(BY_GRAVITY);
            all.addAll(ofStep);
        }
        return all;
    }
}
