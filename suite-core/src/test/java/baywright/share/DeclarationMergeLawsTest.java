package baywright.share;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.share.Clash.Side;
import baywright.share.Shelf.Edit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must hold whatever two sides make of the same scripts. */
class DeclarationMergeLawsTest {

    /** A base and what two sides have made of it. */
    private static final class Case {
        private final Map<String, String> base;
        private final Shelf ours;
        private final Shelf theirs;
        private final Shelf both;
        private final List<Edit> edits = new ArrayList<>();

        Case(long seed, boolean apart) {
            Random random = new Random(seed);
            Shelf shelf = Shelf.random(random);
            base = shelf.texts();
            ours = shelf.copy();
            theirs = shelf.copy();
            both = shelf.copy();
            for (int i = 0; i < 5; i++) {
                edit(ours, shelf.edit(random, "x"), apart);
                edit(theirs, shelf.edit(random, "y"), apart);
            }
        }

        private void edit(Shelf side, Edit edit, boolean apart) {
            boolean touched = edits.stream()
                    .anyMatch(e -> e.stage().equals(edit.stage())
                            && (e.line().equals(edit.line())
                                    || e.line().isEmpty()
                                    || edit.line().isEmpty()));
            if (!apart || !touched) {
                side.make(edit);
                both.make(edit);
                edits.add(edit);
            }
        }
    }

    @Property(tries = 30)
    void whatOneSideAloneChangedIsTakenLetterByLetter(@ForAll long seed) {
        Case made = new Case(seed, false);
        Map<String, String> ours = spoilt(made.ours.texts(), new Random(seed));
        for (Merged merged : List.of(
                DeclarationMerge.of(made.base, ours, made.base),
                DeclarationMerge.of(made.base, made.base, ours),
                DeclarationMerge.of(made.base, ours, ours))) {
            assertThat(merged.texts()).isEqualTo(ours);
            assertThat(merged.clashes()).isEmpty();
        }
    }

    /** Line ends, a mark, a missing last line end, blanks and comments in all sorts of places. */
    private static Map<String, String> spoilt(Map<String, String> texts, Random random) {
        Map<String, String> spoilt = new HashMap<>();
        texts.forEach((name, text) -> spoilt.put(
                name,
                switch (random.nextInt(6)) {
                    case 0 -> text.replace("\n", "\r\n");
                    case 1 -> "\uFEFF" + text;
                    case 2 -> text.stripTrailing();
                    case 3 -> text.replaceFirst("\\{\n", "{ // odd\n\n");
                    case 4 ->
                        text.replaceFirst("\n    time \\{\n", "\n\n    /* two\n lines */ time {\n") + "\n// the end";
                    default -> text;
                }));
        return spoilt;
    }

    @Property(tries = 50)
    void editsOfDifferentThingsAreAllThere(@ForAll long seed) {
        Case made = new Case(seed, true);
        Merged merged = DeclarationMerge.of(made.base, made.ours.texts(), made.theirs.texts());
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.problems()).isEmpty();
        assertThat(Shelf.said(merged.texts())).isEqualTo(Shelf.said(made.both.texts()));
    }

    @Property(tries = 30)
    void swappingTheSidesSwapsTheClashesAndNothingElse(@ForAll long seed) {
        Case made = new Case(seed, false);
        Merged one =
                DeclarationMerge.of(made.base, made.ours.texts(), made.theirs.texts(), c -> Optional.of(Side.OURS));
        Merged other =
                DeclarationMerge.of(made.base, made.theirs.texts(), made.ours.texts(), c -> Optional.of(Side.THEIRS));
        assertThat(one.texts()).isEqualTo(other.texts());
        assertThat(one.clashes())
                .extracting(Clash::name)
                .containsExactlyInAnyOrderElementsOf(
                        other.clashes().stream().map(Clash::name).toList());
    }

    /** Each line that a side has and the base has not is in the result or in a clash. */
    @Property(tries = 30)
    void nothingThatASideSaysIsLost(@ForAll long seed) {
        Case made = new Case(seed, false);
        Merged merged = DeclarationMerge.of(made.base, made.ours.texts(), made.theirs.texts());
        Set<String> told = Stream.concat(
                        merged.texts().values().stream(),
                        merged.clashes().stream()
                                .flatMap(c -> Stream.of(c.ours(), c.theirs()))
                                .flatMap(Optional::stream)
                                .map(Clash.Written::text))
                .flatMap(String::lines)
                .map(DeclarationMergeLawsTest::bare)
                .collect(Collectors.toSet());
        Set<String> before = made.base.values().stream()
                .flatMap(String::lines)
                .map(DeclarationMergeLawsTest::bare)
                .collect(Collectors.toSet());
        Stream.of(made.ours, made.theirs)
                .flatMap(s -> s.texts().values().stream())
                .flatMap(String::lines)
                .map(DeclarationMergeLawsTest::bare)
                .filter(line -> !before.contains(line))
                .forEach(line -> assertThat(told).contains(line));
    }

    private static String bare(String line) {
        return line.replaceFirst("  // by feel$", "").strip();
    }
}
