package baywright.plan;

import static baywright.plan.Stages.MONDAY_AT_EIGHT;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Composition.PutOff;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Work that a rule forbids on the first days. */
class ComposeDelayTest {

    /** Every day but Sunday, at half past eight. */
    private static final List<LocalDateTime> MORNINGS = LongStream.rangeClosed(1, 60)
            .mapToObj(MONDAY_AT_EIGHT.toLocalDate()::plusDays)
            .filter(day -> day.getDayOfWeek().getValue() < 7)
            .map(day -> day.atTime(8, 30))
            .toList();

    private static Stages freshUntil(int day) {
        return new Stages()
                .states("polished", "waxed", "noted")
                .perishing("wiped", 60)
                .stage(terms("polish").on("paint").sets("polished").takes(60))
                .stage(terms("note").on("paint").needs("polished").sets("noted").takes(5))
                .stage(terms("wipe").on("paint").needs("noted").sets("wiped").takes(10))
                .stage(terms("wax")
                        .on("paint")
                        .needs("polished")
                        .prefers("wiped")
                        .sets("waxed")
                        .takes(20))
                .forbids(
                        "fresh paint",
                        "wax",
                        "step.day",
                        "",
                        now -> ((BigDecimal) now).compareTo(BigDecimal.valueOf(day)) < 0);
    }

    private static Composition compose(Stages stages, Optional<LocalDateTime> done) {
        Composer.Options options =
                new Composer.Options(true, Costing.MINUTES, new Delays(MORNINGS, done), Optional.empty(), () -> false);
        return Composer.compose(
                stages.setting(),
                List.of(Wish.must("polished", "bonnet"), new Wish("waxed", List.of("bonnet"), Step.Priority.MUST)),
                options);
    }

    private static List<String> starts(Composition composition) {
        return composition.plan().steps().stream()
                .map(s -> s.stage() + s.at().map(at -> " " + at).orElse(""))
                .toList();
    }

    @Test
    void itIsPutOffToTheFirstMorningOnWhichItMayBeWithWhatWouldNotHaveLasted() {
        Composition composition = compose(freshUntil(10), Optional.of(MONDAY_AT_EIGHT.plusDays(11)));

        assertThat(composition.composed()).isTrue();
        assertThat(composition.unmet()).isEmpty();
        assertThat(starts(composition)).containsExactly("polish", "note", "wipe 2026-12-17T08:30", "wax");
        PutOff put = composition.putOff().get(0);
        assertThat(put.step()).isEqualTo("s3");
        assertThat(put.forStep()).isEqualTo("s4");
    }

    /** The tenth day is a Thursday, the thirteenth a Sunday. */
    @Test
    void aDayOnWhichTheShopIsClosedIsPassedOver() {
        Composition composition = compose(freshUntil(13), Optional.of(MONDAY_AT_EIGHT.plusDays(20)));

        assertThat(starts(composition)).contains("wipe 2026-12-21T08:30");
    }

    @Test
    void whereThereIsNoTimeForItTheDayIsNamedFromWhichItCouldBe() {
        Stages stages = freshUntil(10);
        Composition tooSoon = compose(stages, Optional.of(MONDAY_AT_EIGHT.plusDays(9)));
        Composition nobodySaid = compose(stages, Optional.empty());

        for (Composition composition : List.of(tooSoon, nobodySaid)) {
            assertThat(starts(composition)).containsExactly("polish");
            assertThat(composition.putOff()).isEmpty();
            Hindrance why = composition.unmet().get(0).why();
            assertThat(why)
                    .isInstanceOfSatisfying(
                            Hindrance.Stopped.class,
                            stopped -> assertThat(stopped.from()).contains(LocalDate.of(2026, 12, 17)));
        }
        GoalComposition composed = new GoalComposition(stages.setting(), List.of(), tooSoon);
        assertThat(new ComposeText(composed, Locale.UK).of(tooSoon.unmet().get(0)))
                .isEqualTo("'waxed' on bonnet: a rule forbids it: fresh paint (because);"
                        + " from 17 December 2026 on it would not");
    }

    @Test
    void whatNoDayChangesIsNotPutOff() {
        Composition composition = compose(freshUntil(1000), Optional.of(MONDAY_AT_EIGHT.plusDays(50)));

        assertThat(starts(composition)).containsExactly("polish");
        assertThat(composition.unmet().get(0).why())
                .isInstanceOfSatisfying(
                        Hindrance.Stopped.class,
                        stopped -> assertThat(stopped.from()).isEmpty());
    }

    /** The law: what is put off proves, begins on an open morning not before its day, and ends in time; or it is not had. */
    @Property(tries = 60)
    void nothingIsPutOffBeyondItsTime(
            @ForAll @IntRange(min = 0, max = 20) int day, @ForAll @IntRange(max = 20) int done) {
        LocalDateTime latest = MONDAY_AT_EIGHT.plusDays(done);
        Composition composition = compose(freshUntil(day), Optional.of(latest));

        LocalDateTime may = MORNINGS.stream()
                .filter(m ->
                        !m.toLocalDate().isBefore(MONDAY_AT_EIGHT.toLocalDate().plusDays(day)))
                .findFirst()
                .orElseThrow();
        // wiped and waxed within half an hour
        boolean can = day == 0 || !may.plusMinutes(30).isAfter(latest);
        assertThat(composition.unmet().isEmpty()).isEqualTo(can);
        assertThat(composition.putOff().isEmpty()).isEqualTo(day == 0 || !can);
        if (can && day > 0) {
            assertThat(composition.plan().steps()).anyMatch(s -> s.at().equals(Optional.of(may)));
        }
        assertThat(composition.proof().holds()).isTrue();
    }
}
