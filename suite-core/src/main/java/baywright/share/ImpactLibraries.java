package baywright.share;

import baywright.library.Fact;
import baywright.library.Family;
import baywright.library.Goal;
import baywright.library.Item;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.library.State;
import baywright.library.Surface;
import baywright.money.Fingerprint;
import baywright.script.Wording;
import baywright.share.ImpactChange.How;
import baywright.share.ImpactChange.Kind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/** Two libraries beside each other: what differs, and libraries in between that have some of it. */
final class ImpactLibraries {

    /** The declarations of one kind. */
    private record Sort<T>(
            Kind kind, Function<Library, List<T>> of, Function<T, String> id, BiPredicate<T, T> same, boolean ordered) {

        static <T extends Record> Sort<T> plain(
                Kind kind, Function<Library, List<T>> of, Function<T, String> id, boolean ordered) {
            return new Sort<>(kind, of, id, (a, b) -> Fingerprint.of(a).equals(Fingerprint.of(b)), ordered);
        }

        private Map<String, T> byId(Library library) {
            Map<String, T> all = new LinkedHashMap<>();
            of.apply(library).forEach(one -> all.putIfAbsent(id.apply(one), one));
            return all;
        }

        /** Where a kind's order can show, another order of what both have is a change. */
        void compare(Library before, Library after, List<ImpactChange> changes) {
            Map<String, T> was = byId(before);
            Map<String, T> is = byId(after);
            was.forEach((key, one) -> {
                T now = is.get(key);
                if (now == null) {
                    changes.add(new ImpactChange(kind, key, How.GONE));
                } else if (one != now && !same.test(one, now)) {
                    changes.add(new ImpactChange(kind, key, How.CHANGED));
                }
            });
            is.keySet().stream()
                    .filter(key -> !was.containsKey(key))
                    .forEach(key -> changes.add(new ImpactChange(kind, key, How.NEW)));
            List<String> kept = was.keySet().stream().filter(is::containsKey).toList();
            if (ordered
                    && !kept.equals(
                            is.keySet().stream().filter(was::containsKey).toList())) {
                changes.add(new ImpactChange(Kind.ORDER, kind.name().toLowerCase(Locale.ROOT), How.CHANGED));
            }
        }

        /** The first library's with those of the second that are among the changes. */
        List<T> mixed(Library before, Library after, Collection<ImpactChange> taken) {
            Map<String, T> all = byId(before);
            Map<String, T> others = byId(after);
            for (ImpactChange change : taken) {
                if (change.kind() == kind && others.containsKey(change.id())) {
                    all.put(change.id(), others.get(change.id()));
                } else if (change.kind() == kind) {
                    all.remove(change.id());
                } else if (change.kind() == Kind.ORDER
                        && change.id().equals(kind.name().toLowerCase(Locale.ROOT))) {
                    List<T> ordered = new ArrayList<>();
                    others.keySet().stream().filter(all::containsKey).forEach(key -> ordered.add(all.remove(key)));
                    ordered.addAll(all.values());
                    return ordered;
                }
            }
            return List.copyOf(all.values());
        }
    }

    private static final Sort<State> STATES = Sort.plain(Kind.STATE, Library::states, State::id, true);
    private static final Sort<Surface> SURFACES = Sort.plain(Kind.SURFACE, Library::surfaces, Surface::id, false);
    private static final Sort<Family> FAMILIES = Sort.plain(Kind.FAMILY, Library::families, Family::id, false);
    private static final Sort<Fact> FACTS = Sort.plain(Kind.FACT, Library::facts, Fact::id, false);
    private static final Sort<JobFactor> FACTORS = Sort.plain(Kind.FACTOR, Library::factors, JobFactor::id, true);
    private static final Sort<Item> ITEMS = Sort.plain(Kind.ITEM, Library::items, Item::id, false);
    private static final Sort<Goal> GOALS = Sort.plain(Kind.GOAL, Library::goals, Goal::id, true);
    private static final Sort<Stage> STAGES =
            new Sort<>(Kind.STAGE, Library::stages, Stage::id, ImpactLibraries::saysTheSame, false);
    private static final Sort<Rule> RULES =
            new Sort<>(Kind.RULE, Library::rules, Rule::id, ImpactLibraries::saysTheSame, true);

    private static final List<Sort<?>> ALL =
            List.of(STAGES, RULES, STATES, ITEMS, FAMILIES, FACTS, FACTORS, SURFACES, GOALS);

    private ImpactLibraries() {}

    /** Everything that differs in meaning, by kind and id; neither places nor layout count. */
    static List<ImpactChange> changes(Library before, Library after) {
        List<ImpactChange> changes = new ArrayList<>();
        ALL.forEach(sort -> sort.compare(before, after, changes));
        return changes.stream().sorted().toList();
    }

    /** What is not made of a script is the same only where it is one and the same. */
    private static boolean saysTheSame(Stage before, Stage after) {
        Optional<String> was = before.terms().wording().map(Wording::text);
        return was.isPresent() && was.equals(after.terms().wording().map(Wording::text));
    }

    private static boolean saysTheSame(Rule before, Rule after) {
        Optional<String> was = before.judge().wording().map(Wording::text);
        return was.isPresent()
                && was.equals(after.judge().wording().map(Wording::text))
                && Objects.equals(head(before), head(after));
    }

    private static String head(Rule rule) {
        return Fingerprint.of(rule.title(), rule.reason(), rule.at(), rule.asks());
    }

    /** The first library with some of the changes that make the second of it. */
    static Library with(Library before, Library after, Collection<ImpactChange> taken) {
        return Library.of(
                        STATES.mixed(before, after, taken),
                        SURFACES.mixed(before, after, taken),
                        FAMILIES.mixed(before, after, taken),
                        FACTS.mixed(before, after, taken),
                        FACTORS.mixed(before, after, taken),
                        ITEMS.mixed(before, after, taken),
                        STAGES.mixed(before, after, taken),
                        RULES.mixed(before, after, taken),
                        after.hash())
                .withGoals(GOALS.mixed(before, after, taken));
    }
}
