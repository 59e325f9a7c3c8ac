package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.LibraryLoader.Loaded;
import baywright.script.Place;
import baywright.script.ScriptParser;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What must hold wherever somebody puts the caret. */
class EditingLawsTest {

    private static final List<String> NAMES = List.copyOf(Scripts.shipped().keySet());

    /** Each proposal at a random place of a shipped script leaves it loadable or gives problems with a place and a message. */
    @Property(tries = 25)
    void aTakenProposalLoadsOrIsExplained(
            @ForAll @IntRange(max = 1_000_000) int file, @ForAll @IntRange(max = 1_000_000) int at) {
        String name = NAMES.get(file % NAMES.size());
        String text = Scripts.shipped().get(name);
        List<Proposal> proposals = Completion.at(text, at % (text.length() + 1), Scripts.known());
        for (int i = 0; i < proposals.size(); i += Math.max(1, proposals.size() / 3)) {
            Proposal proposal = proposals.get(i);
            String taken = TextEdit.apply(text, List.of(proposal.edit()));
            proposal.slots()
                    .forEach(s -> assertThat(s.to())
                            .isBetween(s.from(), proposal.edit().with().length()));
            Map<String, String> texts = small(name, taken);
            Loaded loaded = Scripts.load(texts);
            assertThat(loaded.problems()).allSatisfy(p -> {
                assertThat(p.message()).isNotBlank().doesNotContain("\n").doesNotContain("Exception");
                assertThat(p.place().line())
                        .isLessThanOrEqualTo((int) taken.lines().count() + 1);
            });
        }
    }

    /** The script with the declarations that it refers to, without the other stages. */
    private static Map<String, String> small(String name, String text) {
        Map<String, String> texts = new TreeMap<>();
        Scripts.shipped().forEach((n, t) -> {
            if (!n.contains("/") && !n.startsWith("factors")) {
                texts.put(n, t);
            }
        });
        texts.put(name, text);
        return texts;
    }

    /** The words offered in a block, each put on a line of its own, never break the grammar. */
    @Test
    void wordsFitWhereTheyAreOffered() {
        String name = "decontamination/iron-removal.groovy";
        String text = Scripts.shipped().get(name);
        StringBuilder with = new StringBuilder(text);
        int words = 0;
        for (int at = text.lastIndexOf(" {\n"); at >= 0; at = text.lastIndexOf(" {\n", at - 1)) {
            String here = text.substring(0, at + 3) + "\n" + text.substring(at + 3);
            for (Proposal proposal : Completion.at(here, at + 3, Scripts.known())) {
                with.insert(at + 3, proposal.edit().with() + "\n");
                words++;
            }
        }
        assertThat(words).isGreaterThan(40);
        assertThat(ScriptParser.parse(name, with.toString()).problems()).isEmpty();
    }

    @Property(tries = 40)
    void everyOffsetHasAnAnswerForEveryService(
            @ForAll @IntRange(max = 1_000_000) int file,
            @ForAll @IntRange(max = 1_000_000) int cut,
            @ForAll @IntRange(max = 1_000_000) int at) {
        String whole = Scripts.shipped().get(NAMES.get(file % NAMES.size()));
        String text = whole.substring(0, cut % whole.length());
        int offset = at % (text.length() + 1);
        assertThat(Completion.at(text, offset, Scripts.known())).isNotNull();
        assertThat(Hover.at(text, offset, Scripts.known())).isNotNull();
        Outline.of("x", text).forEach(e -> assertThat(e.to()).isBetween(e.from(), text.length()));
        TextPlaces places = new TextPlaces("x", text);
        assertThat(places.offset(places.place(offset))).isLessThanOrEqualTo(offset);
    }

    @Test
    void placesAndOffsetsAgreeWithTheParsersColumns() {
        String text = "a 'é\uD83D\uDE00' x\r\n  b\rc\n";
        TextPlaces places = new TextPlaces("f", text);
        assertThat(places.place(text.indexOf('x'))).isEqualTo(new Place("f", 1, 8));
        assertThat(places.place(text.indexOf('b'))).isEqualTo(new Place("f", 2, 3));
        assertThat(places.place(text.indexOf('c'))).isEqualTo(new Place("f", 3, 1));
        for (char c : "axbc".toCharArray()) {
            assertThat(places.offset(places.place(text.indexOf(c)))).isEqualTo(text.indexOf(c));
        }
    }

    /** A keystroke is answered well within a frame, also in a script of 200 lines and more. */
    @Test
    void completionIsQuick() {
        StringBuilder text = new StringBuilder();
        while (text.toString().lines().count() < 200) {
            text.append(Scripts.shipped().get("decontamination/iron-removal.groovy"));
        }
        int caret = text.lastIndexOf("needs 'washed'") + 8;
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 200; i++) {
            long start = System.nanoTime();
            List<Proposal> proposals = Completion.at(text.toString(), caret, Scripts.known());
            best = Math.min(best, System.nanoTime() - start);
            assertThat(proposals).isNotEmpty();
        }
        assertThat(best).isLessThan(10_000_000);
    }
}
