package baywright.plan;

import baywright.plan.CompiledTerms.Condition;
import baywright.plan.Explanation.Account;
import baywright.plan.Explanation.Change;
import baywright.plan.Explanation.Giver;
import baywright.plan.Explanation.Kind;
import baywright.plan.Explanation.Link;
import baywright.plan.Explanation.Moment;
import baywright.plan.Explanation.Strip;
import baywright.plan.Explanation.Way;
import baywright.plan.Explanation.Where;
import baywright.script.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Looks on while a plan is walked and notes who gave what to whom. */
final class ExplanationWitness implements Walk.Witness {

    /** A link without its zones; {@code by} is a step, {@link Tracks#SURVEY}, or nobody when a bay gives it. */
    private record Tie(
            int step,
            int by,
            String bay,
            int state,
            Kind kind,
            boolean gone,
            String spared,
            String why,
            Place place,
            Optional<Place> giving) {}

    /** A state that a step makes or ends, with the line. */
    private record Doing(String state, Optional<Place> place) implements Comparable<Doing> {
        @Override
        public int compareTo(Doing other) {
            int byState = state.compareTo(other.state);
            return byState != 0
                    ? byState
                    : place.map(Place::toString)
                            .orElse("")
                            .compareTo(other.place.map(Place::toString).orElse(""));
        }
    }

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final List<CompiledStep> steps;
    private final List<String> ids;
    private final EffectPlaces places;
    private final Walk walk;
    private final Map<Tie, BitSet> ties = new LinkedHashMap<>();
    private final List<Map<Doing, BitSet>> makes = new ArrayList<>();
    private final List<Map<Doing, BitSet>> ends = new ArrayList<>();
    private final List<List<String>> found = new ArrayList<>();
    private final List<List<Moment>> moments = new ArrayList<>();
    private final List<Set<String>> held = new ArrayList<>();

    /** For each row the states that held already when they were last set. */
    private final List<BitSet> renewed = new ArrayList<>();

    ExplanationWitness(Prover prover, Plan plan) {
        states = prover.states();
        vehicle = prover.vehicle();
        steps = prover.compile(plan);
        ids = plan.steps().stream().map(Step::id).toList();
        places = new EffectPlaces(states, vehicle, steps);
        walk = prover.walkable(plan, steps);
        for (int row = 0; row < vehicle.rows(); row++) {
            Set<String> names = walk.tracks().namesOn(row);
            held.add(names);
            found.add(List.copyOf(names));
            moments.add(new ArrayList<>());
            renewed.add(new BitSet());
        }
        steps.forEach(s -> {
            makes.add(new TreeMap<>());
            ends.add(new TreeMap<>());
        });
        walk.watchedBy(this);
        walk.run();
    }

    // ---- what is relied on

    @Override
    public void met(int step, int row, Condition condition, long[] everywhere, String bay) {
        if (condition.need().absent()) {
            missed(step, row, condition);
            return;
        }
        for (long[] alternative : condition.alternatives()) {
            if (Bits.contains(everywhere, alternative)) {
                bits(alternative).forEach(state -> there(step, row, state, condition, bay));
                return;
            }
        }
    }

    @Override
    public void missed(int step, int row, Condition condition) {
        for (long[] alternative : condition.alternatives()) {
            for (int state : bits(alternative)) {
                if (condition.need().absent()) {
                    gone(step, row, state, condition);
                } else {
                    there(step, row, state, condition, "");
                }
            }
        }
    }

    private static List<Integer> bits(long[] set) {
        return BitSet.valueOf(set).stream().boxed().toList();
    }

    private void there(int step, int row, int state, Condition condition, String bay) {
        Tracks tracks = walk.tracks();
        if (states.isCondition(state)) {
            if (!bay.isEmpty()) {
                tie(step, Tracks.NOBODY, bay, state, condition, row);
            }
            return;
        }
        for (int home : homes(row, state)) {
            int by = tracks.setBy(home, state);
            if (tracks.holds(home, state) && by != Tracks.NOBODY) {
                tie(step, by, "", state, condition, home);
            }
        }
    }

    /** What never was there was ended by nobody, and who ends only what it began itself is not relied on for that. */
    private void gone(int step, int row, int state, Condition condition) {
        Tracks tracks = walk.tracks();
        for (int home : homes(row, state)) {
            int by = tracks.clearedBy(home, state);
            boolean ownDoing =
                    tracks.setBy(home, state) == by && !renewed.get(home).get(state);
            if (by >= 0 && !tracks.holds(home, state) && !ownDoing) {
                tie(step, by, "", state, condition, home);
            }
        }
    }

    private int[] homes(int row, int state) {
        if (row == vehicle.vehicle() && states.isZoneScope(state)) {
            return vehicle.real();
        }
        return new int[] {walk.tracks().home(row, state)};
    }

    private void tie(int step, int by, String bay, int state, Condition condition, int row) {
        boolean gone = condition.need().absent();
        Kind kind = condition.wish() ? Kind.PREFERRED : gone ? Kind.REFUSED : Kind.NEEDED;
        Place place = condition.need().origin().place();
        Optional<Place> giving = by < 0 ? Optional.empty() : places.of(by, row, state, !gone);
        tie(new Tie(step, by, bay, state, kind, gone, "", condition.need().why(), place, giving), row);
    }

    private void tie(Tie tie, int row) {
        ties.computeIfAbsent(tie, t -> new BitSet()).set(row);
    }

    /** The shield is relied on only where the effect would have changed something. */
    @Override
    public void spared(int step, int row, CompiledTerms.Change change, long[] sparing) {
        if (!wouldChange(row, change)) {
            return;
        }
        Tracks tracks = walk.tracks();
        String spared = states.id(change.state());
        for (int state : bits(sparing)) {
            int home = tracks.home(row, state);
            int by = tracks.setBy(home, state);
            if (by != Tracks.NOBODY && !states.isCondition(state)) {
                Optional<Place> giving = by < 0 ? Optional.empty() : places.of(by, home, state, true);
                Place place = change.effect().unlessPlace();
                tie(new Tie(step, by, "", state, Kind.SHIELDS, false, spared, "", place, giving), row);
            }
        }
    }

    private boolean wouldChange(int row, CompiledTerms.Change change) {
        Tracks tracks = walk.tracks();
        long[] on = change.sets() ? states.brings(change.state()) : new long[states.width()];
        long[] off = change.sets() ? states.ends(change.state()) : states.clears(change.state());
        return bits(on).stream().anyMatch(s -> !tracks.holds(tracks.home(row, s), s))
                || bits(off).stream().anyMatch(s -> tracks.holds(tracks.home(row, s), s));
    }

    // ---- what comes and goes

    @Override
    public void before(int step) {
        note(step, true, walk.starts[step]);
    }

    @Override
    public void after(int step) {
        note(step, false, walk.ends[step]);
    }

    /** Compares with the last look; on a copy, as bringing every row up to the time would change the walk. */
    private void note(int step, boolean before, long at) {
        Tracks now = new Tracks(states, vehicle);
        now.copyFrom(walk.tracks());
        for (int row = 0; row < vehicle.rows(); row++) {
            now.settle(row, at);
        }
        for (int row = 0; row < vehicle.rows(); row++) {
            Set<String> has = now.namesOn(row);
            changes(step, before, row, held.get(row), has, now);
            held.set(row, has);
        }
    }

    private void changes(int step, boolean before, int row, Set<String> had, Set<String> has, Tracks now) {
        List<Change> own = new ArrayList<>();
        List<Change> byItself = new ArrayList<>();
        for (int state = 0; state < states.count(); state++) {
            String id = states.id(state);
            if (!before && now.setBy(row, state) == step) {
                renewed.get(row).set(state, had.contains(id));
            }
            boolean comes = has.contains(id) && !had.contains(id);
            if (comes || (had.contains(id) && !has.contains(id))) {
                int part = changed(state, row, comes, step, now);
                int by = comes ? now.setBy(row, part) : ender(row, part, now);
                Change change = new Change(id, comes, by < 0 ? "" : ids.get(by), place(by, row, part, comes, now));
                boolean does = by == step && !before && (comes || !now.hasPerished(row, part));
                (does ? own : byItself).add(change);
                if (does) {
                    (comes ? makes : ends)
                            .get(step)
                            .computeIfAbsent(new Doing(id, change.place()), d -> new BitSet())
                            .set(row);
                }
            }
        }
        if (!byItself.isEmpty()) {
            moments.get(row).add(new Moment(ids.get(step), Way.ITSELF, byItself));
        }
        boolean works = !before && Arrays.stream(steps.get(step).rows()).anyMatch(r -> r == row);
        if (works || !own.isEmpty()) {
            moments.get(row).add(new Moment(ids.get(step), works ? Way.WORKS : Way.SPREADS, own));
        }
    }

    /** The plain state that decided over a worked-out one, one that the step changed before all others. */
    private int changed(int state, int row, boolean comes, int step, Tracks now) {
        int last = states.parts(state)[0];
        for (int part : states.parts(state)) {
            if (now.holds(row, part) == comes) {
                last = part;
                if ((comes ? now.setBy(row, part) : ender(row, part, now)) == step) {
                    return part;
                }
            }
        }
        return last;
    }

    /** Who ended a state, or last made one that has run out. */
    private static int ender(int row, int state, Tracks now) {
        return now.hasPerished(row, state) ? now.setBy(row, state) : now.clearedBy(row, state);
    }

    private Optional<Place> place(int by, int row, int state, boolean comes, Tracks now) {
        if (!comes && now.hasPerished(row, state)) {
            return Optional.of(states.place(state));
        }
        return by < 0 ? Optional.empty() : places.of(by, row, state, comes);
    }

    // ---- when it is done

    Explanation explanation() {
        List<Account> accounts = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            int step = i;
            accounts.add(new Account(
                    ids.get(i),
                    links(t -> t.step() == step),
                    links(t -> t.by() == step),
                    where(makes.get(i)),
                    where(ends.get(i)),
                    where(lasting(i)),
                    serves(i)));
        }
        List<Strip> strips = new ArrayList<>();
        for (int row = 0; row < vehicle.rows(); row++) {
            strips.add(new Strip(vehicle.id(row), found.get(row), moments.get(row)));
        }
        return new Explanation(accounts, strips);
    }

    private Map<Doing, BitSet> lasting(int step) {
        Map<Doing, BitSet> lasting = new TreeMap<>();
        for (int row = 0; row < vehicle.rows(); row++) {
            for (int state = 0; state < states.count(); state++) {
                if (walk.tracks().holds(row, state) && walk.tracks().setBy(row, state) == step) {
                    Doing doing = new Doing(states.id(state), places.of(step, row, state, true));
                    lasting.computeIfAbsent(doing, d -> new BitSet()).set(row);
                }
            }
        }
        return lasting;
    }

    /** Follows the ties forward; a step relies only on earlier ones. */
    private List<String> serves(int step) {
        BitSet on = new BitSet();
        on.set(step);
        BitSet carrying = new BitSet();
        for (int i = step; i < steps.size(); i++) {
            for (Tie tie : on.get(i) ? ties.keySet() : Set.<Tie>of()) {
                if (tie.by() == i && tie.step() != i) {
                    on.set(tie.step());
                    carrying.set(i);
                }
            }
        }
        on.andNot(carrying);
        on.clear(step);
        return on.stream().mapToObj(ids::get).toList();
    }

    private List<Link> links(Predicate<Tie> wanted) {
        List<Link> links = new ArrayList<>();
        ties.forEach((tie, rows) -> {
            if (wanted.test(tie)) {
                Giver giver = !tie.bay().isEmpty() ? Giver.BAY : tie.by() >= 0 ? Giver.STEP : Giver.SURVEY;
                links.add(new Link(
                        ids.get(tie.step()),
                        states.id(tie.state()),
                        tie.kind(),
                        tie.gone(),
                        tie.spared(),
                        giver,
                        giver == Giver.STEP ? ids.get(tie.by()) : tie.bay(),
                        zones(rows),
                        tie.why(),
                        tie.place(),
                        tie.giving()));
            }
        });
        return links;
    }

    private List<Where> where(Map<Doing, BitSet> byState) {
        List<Where> all = new ArrayList<>();
        byState.forEach((doing, rows) -> all.add(new Where(doing.state(), zones(rows), doing.place())));
        return all;
    }

    private List<String> zones(BitSet rows) {
        return rows.stream().mapToObj(vehicle::id).toList();
    }
}
