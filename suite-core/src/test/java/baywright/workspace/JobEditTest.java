package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.plan.Plan;
import baywright.safety.JobSafety;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobEditTest {

    private static final Job BLANK =
            JobEdit.blank("estate", "Estate, one step", "estate").job();

    @Test
    void aBlankJobIsWhatAFileWithNothingButItsVehicleSays() {
        String text = "{\"schema\": \"baywright/job/1\", \"id\": \"estate\", \"title\": \"Estate, one step\","
                + " \"vehicle\": {\"shape\": \"estate\"}}";
        Report report = new Report(new Source("job.json", text));
        assertThat(JobJson.read(report).orElseThrow().job()).isEqualTo(BLANK);
    }

    @Test
    void whatIsNotChangedStays() {
        Job changed = JobEdit.of(BLANK)
                .customer("W. Oxlade")
                .cap(Optional.of(BigDecimal.TEN))
                .wishes(List.of("gone: tar"))
                .job();
        assertThat(JobEdit.of(changed)
                        .customer("")
                        .cap(Optional.empty())
                        .wishes(List.of())
                        .job())
                .isEqualTo(BLANK);
        assertThat(changed.wishes()).containsExactly("gone: tar");
    }

    @ParameterizedTest
    @CsvSource({"'Müller, estate',muller-estate", "'  Two-year coat!',two-year-coat", "'奥迪',job", "'',job"})
    void idsAreMadeOfWords(String title, String id) {
        assertThat(JobEdit.idFor(title, Set.of())).isEqualTo(id);
        assertThat(JobEdit.idFor(title, Set.of(id))).isEqualTo(id + "-2");
        assertThat(JobEdit.idFor(title, Set.of(id, id + "-2"))).isEqualTo(id + "-3");
    }

    /** The parts of a record of the job that an edit does not name are those of the job, whichever there are. */
    @Test
    void anEditLosesNoPartOfTheJob() {
        Job full = new Job(
                "estate",
                "Estate",
                "W. Oxlade",
                new Job.Vehicle("estate", "twelve years old", "green", Optional.empty(), Map.of()),
                2,
                Optional.of(LocalDateTime.of(2026, 12, 7, 8, 0)),
                Optional.of(LocalDateTime.of(2026, 12, 9, 8, 0)),
                Optional.of(BigDecimal.TEN),
                Optional.of("detailing"),
                List.of("gone: tar"),
                List.of(),
                Survey.NOTHING.withFact("hardness", "hard"),
                new Plan(List.of()),
                BigDecimal.valueOf(5),
                JobSafety.NONE,
                Optional.of("de"),
                BigDecimal.valueOf(3));

        assertThat(JobEdit.of(full).job()).isEqualTo(full);
        assertThat(JobEdit.of(full).title("Other").job().discountPercent()).isEqualTo(BigDecimal.valueOf(3));
        assertThat(full.withPlan(full.plan())).isEqualTo(full);
        assertThat(full.withSurvey(full.survey())).isEqualTo(full);
        assertThat(full.withPlan(full.plan(), full.safety())).isEqualTo(full);
    }

    @Test
    void anIdOfALongTitleStillFits() {
        String id = JobEdit.idFor("a long title ".repeat(20), Set.of());
        assertThat(Fields.isId(id)).isTrue();
        assertThat(JobEdit.idFor("a long title ".repeat(20), Set.of(id)))
                .satisfies(second -> assertThat(Fields.isId(second)).isTrue());
    }

    @Test
    void wordsAboutSafetyAreHeldToWhatTheFileMayHold() {
        LocalDateTime day = LocalDateTime.of(2026, 12, 7, 8, 0);
        JobSafety answered = JobSafety.NONE.acknowledged(new JobSafety.Acknowledgement("jacks", "M. Thistle", day));
        assertThat(JobEdit.of(BLANK).safety(answered).job().safety()).isEqualTo(answered);
        JobSafety nobody = JobSafety.NONE.acknowledged(new JobSafety.Acknowledgement("jacks", "  ", day));
        assertThatThrownBy(() -> JobEdit.of(BLANK).safety(nobody).job()).hasMessageContaining("name of the person");
        JobSafety damp = JobSafety.NONE.with(new JobSafety.DayClimate(
                day.toLocalDate(), BigDecimal.valueOf(20), BigDecimal.valueOf(101), Optional.empty()));
        assertThatThrownBy(() -> JobEdit.of(BLANK).safety(damp).job()).hasMessageContaining("above 0, at most 100");
        JobSafety hot = JobSafety.NONE.with(new JobSafety.DayClimate(
                day.toLocalDate(), BigDecimal.valueOf(20), BigDecimal.TEN, Optional.of(BigDecimal.valueOf(91))));
        assertThatThrownBy(() -> JobEdit.of(BLANK).safety(hot).job()).hasMessageContaining("surface");
    }

    @Test
    void whatNoFileMayHoldIsRefused() {
        LocalDateTime day = LocalDateTime.of(2026, 12, 7, 8, 0);
        assertThatThrownBy(() -> JobEdit.of(BLANK).title(" ").job()).hasMessageContaining("title");
        assertThatThrownBy(() -> JobEdit.of(BLANK).vehicles(0).job()).hasMessageContaining("1 to 1000");
        assertThatThrownBy(() -> JobEdit.of(BLANK)
                        .arrives(Optional.of(day))
                        .wanted(Optional.of(day))
                        .job())
                .hasMessageContaining("later time");
        assertThatThrownBy(() -> JobEdit.of(BLANK)
                        .arrives(Optional.of(day.withYear(1999)))
                        .job())
                .hasMessageContaining("2000 to 2100");
        assertThatThrownBy(() -> JobEdit.of(BLANK)
                        .cap(Optional.of(BigDecimal.valueOf(-1)))
                        .job())
                .hasMessageContaining("from 0");
        assertThatThrownBy(() -> JobEdit.of(BLANK).id("No id").job()).hasMessageContaining("hyphens");
        assertThat(JobEdit.of(BLANK)
                        .arrives(Optional.of(day))
                        .wanted(Optional.of(day.plusMinutes(1)))
                        .job()
                        .wanted())
                .isPresent();
    }

    @Test
    void onAnotherShapeFindingsOnZonesThatItHasNotAreLeftOut() {
        Survey survey = Survey.NOTHING
                .withFact("hardness", "hard")
                .withZone("roof", ZoneSurvey.NOTHING.withNotes(List.of("hail")))
                .withZone("bonnet", ZoneSurvey.NOTHING.withUnreadable(true));
        Shape open = new Shape(
                "convertible",
                "Convertible",
                BigDecimal.ONE,
                List.of(new Zone("bonnet", "Bonnet", "paint", "steel", Map.of(), List.of())));
        Job moved = JobEdit.onShape(BLANK.withSurvey(survey), open);
        assertThat(moved.vehicle().shape()).isEqualTo("convertible");
        assertThat(moved.survey().zones()).containsOnlyKeys("bonnet");
        assertThat(moved.survey().facts()).containsEntry("hardness", "hard");
    }

    @Test
    void takingAFindingAwayLeavesNothingBehind() {
        Survey once = Survey.NOTHING.withZone("roof", ZoneSurvey.NOTHING.withFact("repaint", "none"));
        assertThat(once.zone("roof").facts()).containsEntry("repaint", "none");
        assertThat(once.withZone("roof", once.zone("roof").withFact("repaint", "")))
                .isEqualTo(Survey.NOTHING);
        assertThat(Survey.NOTHING.withFact("colour", "dark").withFact("colour", ""))
                .isEqualTo(Survey.NOTHING);
    }

    @Test
    void whatIsPastedIsReadLikeAFile() {
        Shape car = new Shape(
                "car", "Car", BigDecimal.ONE, List.of(new Zone("roof", "Roof", "paint", "steel", Map.of(), List.of())));
        ReadingsFile read = ReadingsFile.ofText("clipboard", "zone;um\nroof;112,5\n", ReadingsForm.UNSAID, car);
        assertThat(read.byZone().get("roof").get(0).micrometres()).isEqualByComparingTo("112.5");
        assertThat(read.byZone().get("roof").get(0).source()).isEqualTo("clipboard:2");
        assertThat(ReadingsFile.ofText("clipboard", "zone;um\nroff;112,5\n", ReadingsForm.UNSAID, car)
                        .problems())
                .singleElement()
                .asString()
                .startsWith("clipboard:2:1");
    }
}
