package baywright.editor;

import baywright.library.Fact;
import baywright.library.Family;
import baywright.library.Input;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.library.State;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What ids there are, by the kinds that the vocabulary names ({@code state}, {@code item}, {@code driver} …), with what
 * each means. Made once of a library and then asked at every keystroke. Nobody can change it.
 */
public final class Known {

    /**
     * Something with an id.
     *
     * @param id      its id
     * @param title   in a few words
     * @param detail  everything else, in sentences; may be empty
     * @param choices the texts that a fact may be; else empty
     */
    public record Thing(String id, String title, String detail, List<String> choices) {
        public Thing {
            choices = List.copyOf(choices);
        }
    }

    private static final List<String> DRIVERS =
            List.of("vehicle", "m2", "m", "wheel", "arch", "pane", "panel", "seat", "chip", "spot", "piece");

    private final Map<String, Map<String, Thing>> byKind = new LinkedHashMap<>();

    private Known() {}

    /** Nothing is known. */
    public static Known nothing() {
        return new Known();
    }

    /** What a library declares and what its stages mention. */
    public static Known of(Library library) {
        Known known = nothing();
        library.states().forEach(s -> known.add("state", new Thing(s.id(), s.means(), about(s), List.of())));
        library.surfaces().forEach(s -> known.add("surface", new Thing(s.id(), s.means(), "", List.of())));
        library.families().forEach(f -> known.add("family", new Thing(f.id(), f.title(), about(f), List.of())));
        Stream.concat(library.facts().stream(), Stream.of(LibraryLoader.SIZE))
                .forEach(f -> known.add("fact", new Thing(f.id(), f.means(), about(f), f.choices())));
        library.factors()
                .forEach(f -> known.add("factor", new Thing(f.id(), "reads '" + f.fact() + "'", "", List.of())));
        library.items().forEach(i -> known.add("item", new Thing(i.id(), i.title(), about(i), List.of())));
        library.stages().forEach(s -> known.add("stage", new Thing(s.id(), s.title(), about(s), List.of())));
        DRIVERS.forEach(d -> known.add("driver", bare(d)));
        library.stages().forEach(s -> known.mention(s.usualTerms()));
        return known;
    }

    /** The same with further things of a kind, such as a workspace's vehicle shapes and zones: title by id. */
    public Known with(String kind, Map<String, String> titles) {
        Known more = new Known();
        byKind.forEach((known, things) -> more.byKind.put(known, new LinkedHashMap<>(things)));
        titles.forEach((id, title) -> more.add(kind, new Thing(id, title, "", List.of())));
        return more;
    }

    /** The things of a kind, in order of declaration; empty for a kind that nobody has. */
    public List<Thing> all(String kind) {
        return List.copyOf(byKind.getOrDefault(kind, Map.of()).values());
    }

    /** The thing of a kind with this id, if it is known. */
    public Optional<Thing> find(String kind, String id) {
        return Optional.ofNullable(byKind.getOrDefault(kind, Map.of()).get(id));
    }

    private void add(String kind, Thing thing) {
        byKind.computeIfAbsent(kind, k -> new LinkedHashMap<>()).putIfAbsent(thing.id(), thing);
    }

    private void mention(StageTerms terms) {
        terms.attended().forEach(a -> add("driver", bare(a.per())));
        terms.uses().forEach(u -> add("driver", bare(u.per())));
        terms.hazards().risks().forEach(r -> add("danger", bare(r.kind())));
        Stream.of(terms.crew().skill()).filter(s -> !s.isEmpty()).forEach(s -> add("skill", bare(s)));
        Stream.of(terms.where().bay()).filter(b -> !b.isEmpty()).forEach(b -> add("bay", bare(b)));
    }

    private static Thing bare(String id) {
        return new Thing(id, "", "", List.of());
    }

    private static String about(State state) {
        List<String> parts = new ArrayList<>();
        parts.add(
                switch (state.scope()) {
                    case ZONE -> "each zone has its own";
                    case VEHICLE -> "the vehicle as a whole has it";
                    case CONDITION -> "the bay gives it";
                });
        listed("ends with", state.opposites()).ifPresent(parts::add);
        listed("brings", state.implies()).ifPresent(parts::add);
        listed("holds while these do:", state.madeOf()).ifPresent(parts::add);
        state.lasts().ifPresent(q -> parts.add("lasts " + q));
        return String.join("; ", parts);
    }

    private static String about(Fact fact) {
        String values = fact.kind() == Fact.Kind.CHOICE
                ? "one of '" + String.join("', '", fact.choices()) + "'"
                : fact.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return values + (fact.usual().isEmpty() ? "" : "; usually " + fact.usual());
    }

    private static String about(Family family) {
        return "set-up " + family.setUp() + " a visit";
    }

    private static String about(Item item) {
        String hazards = item.hazards().isEmpty() ? "" : "; " + String.join(", ", item.hazards());
        return "pack of " + item.pack() + " at " + item.price().toPlainString() + hazards
                + (item.note().isEmpty() ? "" : "; " + item.note());
    }

    private static String about(Stage stage) {
        List<String> parts = new ArrayList<>();
        Stream.of(stage.about()).filter(a -> !a.isEmpty()).forEach(parts::add);
        parts.add("family '" + stage.family() + "', revision " + stage.revision());
        listed("inputs", stage.inputs().stream().map(Input::name).toList()).ifPresent(parts::add);
        return String.join("; ", parts);
    }

    private static Optional<String> listed(String before, List<String> ids) {
        return ids.isEmpty() ? Optional.empty() : Optional.of(before + " '" + String.join("', '", ids) + "'");
    }
}
