package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/**
 * least and most waits after Bartusch, Möhring, Radermacher, Annals of Operations Research 16 (1988) 201, on a wipe
 * of 20 minutes, a coat of 90 that starts at most 60 after it, a lamp of 45 that starts 30 to 40 after the coat, and a
 * hand-over at least 720 after the coat; minutes.
 */
class SimpleClockTest {

    private static Stages coating() {
        return new Stages()
                .states("cured")
                .stage(terms("wipe").takes(20).stands(0, 60))
                .stage(terms("coat").takes(90).stands(30, 40).arrives("cured", 720))
                .stage(terms("lamp").takes(45))
                .stage(terms("hand-over").needs("cured").takes(15));
    }

    private static final Step WIPE = step("s1", "wipe", "bonnet");
    private static final Step COAT = step("s2", "coat", "bonnet");
    private static final Step LAMP = step("s3", "lamp", "bonnet");
    private static final Step HAND_OVER = step("s4", "hand-over", "bonnet");

    @Test
    void earliestStartsKeepEveryWait() {
        Proof proof = coating().prove(WIPE, COAT, LAMP, HAND_OVER);

        assertThat(proof.clock()).extracting(s -> s.start().toPlainString()).containsExactly("0", "20", "140", "830");
        assertThat(proof.findings()).isEmpty();
    }

    /** The paper pulls the wipe along to 120; the simple clock does not move a step back and reports the wait instead. */
    @Test
    void aLongestWaitThatAFixedStartBreaksIsReported() {
        Proof late = coating().prove(WIPE, at(COAT, 200), LAMP, HAND_OVER);
        assertThat(late.findings())
                .extracting(Finding::reason)
                .containsExactly(new Reason.TooLate("s2", "s1", BigDecimal.valueOf(180), BigDecimal.valueOf(60), ""));

        Proof pulled = coating().prove(at(WIPE, 120), at(COAT, 200), LAMP, HAND_OVER);
        assertThat(pulled.findings()).isEmpty();
        assertThat(pulled.clock())
                .extracting(s -> s.start().toPlainString())
                .containsExactly("120", "200", "320", "1010");
    }

    /** A least wait of 75 against a longest of 60 cannot be kept by any start. */
    @Test
    void waitsThatContradictEachOtherAreNeverBothKept() {
        Stages stages = coating()
                .states("aired")
                .stage(terms("air").arrives("aired", 75).stands(0, 60))
                .stage(terms("coat-aired").needs("aired").takes(90));

        for (long start = 0; start <= 200; start += 5) {
            assertThat(stages.prove(step("s1", "air", "bonnet"), at(step("s2", "coat-aired", "bonnet"), start))
                            .holds())
                    .isFalse();
        }
        assertThat(stages.prove(step("s1", "air", "bonnet"), step("s2", "coat-aired", "bonnet"))
                        .findings())
                .extracting(Finding::code)
                .containsExactly("too-late");
    }
}
