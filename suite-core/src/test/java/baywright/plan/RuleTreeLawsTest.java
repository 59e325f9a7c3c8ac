package baywright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Rule;
import baywright.library.Rule.Ask;
import baywright.library.Rule.At;
import baywright.library.Rule.Reach;
import baywright.library.Rule.Severity;
import baywright.library.Rule.Spoken;
import baywright.plan.RuleBook.Asked;
import baywright.plan.RuleBook.Entry;
import baywright.plan.RuleBook.Kind;
import baywright.plan.RuleBook.Question;
import baywright.script.Place;
import baywright.vehicle.Shape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A rule that asks for one answer at a time, and keeps what it made of them, says what it says of all answers at once. */
class RuleTreeLawsTest {

    private static final int QUESTIONS = 5;
    private static final int ANSWERS = 3;

    /** Which question comes next, and whether another comes, depends on the answers so far, in a way that the seed picks. */
    private static Optional<Spoken> judge(long seed, List<Object> answers) {
        long now = seed;
        Set<Integer> read = new HashSet<>();
        do {
            int next = Math.floorMod(Objects.hash(now, "question"), QUESTIONS);
            read.add(next);
            now = Objects.hash(now, answers.get(next));
        } while (Math.floorMod(now, 3) > 0 && read.size() < QUESTIONS);
        return Math.floorMod(now, 2) == 0
                ? Optional.empty()
                : Optional.of(new Spoken(Severity.WARNS, read.stream().sorted().toList()));
    }

    private static Rule rule(long seed) {
        List<Ask> asks = IntStream.range(0, QUESTIONS)
                .mapToObj(q -> new Ask("count", List.of("w" + q), "", Reach.ZONE, false))
                .toList();
        At everywhere = new At(List.of(), List.of(), List.of(), List.of());
        return new Rule("r", "R", "why", everywhere, asks, a -> judge(seed, a), Place.ofFile("rules"));
    }

    private static Entry entry(Rule rule) {
        List<Asked> questions = IntStream.range(0, QUESTIONS)
                .mapToObj(q -> new Asked(q, new Question(Kind.COUNT, q, "", "", Reach.ZONE, false)))
                .toList();
        return new Entry(rule, questions, new VehicleIndex(new Shape("none", "None", BigDecimal.ONE, List.of())));
    }

    @Property(tries = 300)
    void askedOneByOneAndRememberedItSaysTheSame(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int times) {
        Rule rule = rule(seed);
        Entry entry = entry(rule);
        Random random = new Random(seed);
        for (int time = 0; time < times; time++) {
            long[] codes = random.longs(QUESTIONS, 0, ANSWERS).toArray();
            List<Object> all = new ArrayList<>();
            for (long code : codes) {
                all.add(BigDecimal.valueOf(code));
            }
            BitSet asked = new BitSet();

            Verdict verdict = entry.of(
                    q -> {
                        asked.set(q);
                        return codes[q];
                    },
                    List.of());

            assertThat(verdict).isEqualTo(Verdict.of(rule, all));
            verdict.spoken().ifPresent(s -> assertThat(s.read()).allMatch(asked::get));
        }
    }
}
