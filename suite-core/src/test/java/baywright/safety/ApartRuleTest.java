package baywright.safety;

import static baywright.safety.Cases.MONDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What must not be in one bay at one time. Pairs and minutes: common practice, no source. */
class ApartRuleTest {

    private static final String LIT = "place { bay 'lit' }";
    private static final String TEN = "time { attended 10.min, 10.min, 10.min }";

    /** A wipe with solvent, a warm lamp, and plain work of a quarter of an hour. */
    private static Cases bay() {
        return new Cases()
                .stage("wipe", TEN, "uses { item 'panel-wipe-liquid', 20.ml }", LIT)
                .stage("lamp", TEN, "hazards { risk 'radiation' }", "place { bay 'lit'; equipment 'infrared lamp' }")
                .stage("wash-lamp", TEN, "hazards { risk 'radiation' }", "place { bay 'wash' }")
                .stage("machine", TEN, "place { bay 'lit'; equipment 'dual-action polisher, 15 to 21 mm throw' }")
                .stage("look", "time { attended 16.min, 16.min, 16.min }", LIT);
    }

    private static List<Finding> apart(SafetyReport report) {
        return report.findings().stream()
                .filter(f -> f.code().equals(SafetyCodes.KEEP_APART))
                .toList();
    }

    @Test
    void aLampSoonAfterSolventIsStopped() {
        SafetyCase all = bay().step("wipe", "bonnet").step("lamp", "roof").build();
        Finding met = apart(SafetyCheck.of(all)).get(0);
        assertThat(met.severity()).isEqualTo(Severity.STOP);
        assertThat(met.step()).hasValue("s2");
        assertThat(new FindingText(all.setting(), all.plan(), Locale.UK).of(met))
                .isEqualTo("lamp (s2): infrared lamp comes into Lit bay while Panel wipe of wipe (s1) is still about"
                        + " (the vapour catches fire; let the bay air first)");
    }

    @Test
    void aLampAfterAQuarterOfAnHourOrInAnotherBayOrBeforeTheSolventIsNot() {
        assertThat(apart(bay().step("wipe", "bonnet")
                        .step("look", "bonnet")
                        .step("lamp", "roof")
                        .check()))
                .isEmpty();
        assertThat(apart(bay().step("wipe", "bonnet").step("wash-lamp", "roof").check()))
                .isEmpty();
        assertThat(apart(bay().step("lamp", "roof").step("wipe", "bonnet").check()))
                .isEmpty();
    }

    @Test
    void aMachineIsNoFlameAndMayFollow() {
        assertThat(apart(bay().step("wipe", "bonnet").step("machine", "roof").check()))
                .isEmpty();
    }

    private static Cases hall() {
        return new Cases().bay(new Bay("hall", "Hall", List.of("lit", "clean"), List.of("cool", "lit", "still")));
    }

    /** Minutes: common practice, no source. */
    @Test
    void dustOfAnotherJobBesideACoatingIsWarnedOf() {
        Booked coating = other(hall().step("ceramic-coating", "bonnet"));
        SafetyCase dust = hall().step("compound", "roof").build();
        assertThat(apart(SafetyCheck.of(dust.beside(List.of(coating)))))
                .filteredOn(f -> ((SafetyReason.Meets) f.reason()).why().startsWith("airborne dust"))
                .extracting(Finding::severity)
                .containsExactly(Severity.WARN);
        SafetyCase tomorrow =
                hall().step("compound", Optional.of(MONDAY.plusDays(1)), "roof").build();
        assertThat(apart(SafetyCheck.of(tomorrow.beside(List.of(coating))))).isEmpty();
    }

    private static Booked other(Cases cases) {
        return Booked.of("vans", "Six vans", cases.build());
    }

    @Test
    void anotherJobInTheBayAtThatTimeIsWarnedOf() {
        SafetyCase wipe = bay().step("wipe", "bonnet").build();
        Booked lamp = other(bay().step("lamp", "bonnet"));
        SafetyCase both = wipe.beside(List.of(lamp));
        List<Finding> met = apart(SafetyCheck.of(both));
        assertThat(met).extracting(Finding::severity).containsExactly(Severity.WARN);
        assertThat(new FindingText(both.setting(), both.plan(), Locale.UK).of(met.get(0)))
                .contains("in the job 'Six vans'", "lamp (s1)", "Panel wipe");
        Booked machine = other(bay().step("machine", "bonnet"));
        assertThat(apart(SafetyCheck.of(wipe.beside(List.of(machine))))).hasSize(1);
        Booked tomorrow = other(bay().step("lamp", Optional.of(MONDAY.plusDays(1)), "bonnet"));
        assertThat(apart(SafetyCheck.of(wipe.beside(List.of(tomorrow))))).isEmpty();
        Booked elsewhere = other(bay().step("wash-lamp", "bonnet"));
        assertThat(apart(SafetyCheck.of(wipe.beside(List.of(elsewhere))))).isEmpty();
    }

    /** By a timetable nobody guesses when the other job is in the bay: it stops like a step of one's own. */
    @Test
    void anotherJobThatIsTimedTooStops() {
        SafetyCase wipe = bay().step("wipe", "bonnet").build().timed(List.of(at("s1", 8)));
        SafetyCase lamp = bay().step("lamp", "bonnet").build();
        assertThat(severities(wipe, lamp.timed(List.of(at("s1", 8))))).containsExactly(Severity.STOP);
        assertThat(severities(wipe, lamp.timed(List.of(at("s1", 12))))).isEmpty();
        assertThat(severities(wipe, lamp)).containsExactly(Severity.WARN);
    }

    private static Spell at(String step, int hour) {
        return new Spell(
                step,
                MONDAY.toLocalDate().atTime(hour, 0),
                MONDAY.toLocalDate().atTime(hour, 10),
                1,
                List.of("maren"),
                "lit");
    }

    private static List<Severity> severities(SafetyCase one, SafetyCase other) {
        return apart(SafetyCheck.of(one.beside(List.of(Booked.of("vans", "Six vans", other))))).stream()
                .map(Finding::severity)
                .toList();
    }

    @Test
    void aLithiumPackNearHeatOfAnotherJobIsSeen() {
        Cases pack = bay().stage("trim", TEN, "place { bay 'lit'; equipment 'cordless trimmer' }")
                .step("trim", "bonnet");
        Booked heat = other(
                new Cases().stage("steam", TEN, "hazards { risk 'heat' }", LIT).step("steam", "bonnet"));
        assertThat(apart(pack.check())).isEmpty();
        assertThat(apart(SafetyCheck.of(pack.build().beside(List.of(heat)))))
                .extracting(f -> ((SafetyReason.Meets) f.reason()).second())
                .containsExactly("cordless trimmer");
    }

    /** What stands open on one part of the vehicle meets what is poured on another, until the first is rinsed. */
    @Test
    void whatStandsOpenIsAboutUntilItIsRinsed() {
        String[] acid = {
            TEN, "after { sets 'live' }", "uses { item 'acid-wheel-cleaner', 25.ml }", "place { bay 'wash' }"
        };
        Cases open = new Cases()
                .stage("acid-it", acid)
                .stage("plain", TEN, "place { bay 'wash' }")
                .step("acid-it", "surface:wheel")
                .step("plain", "roof")
                .step("iron-removal", "bonnet");
        assertThat(apart(open.check()))
                .extracting(f -> ((SafetyReason.Meets) f.reason()).where())
                .containsExactly("together");
        Cases rinsed = new Cases()
                .stage("acid-it", acid)
                .step("acid-it", "surface:wheel")
                .step("final-rinse", "surface:wheel")
                .step("iron-removal", "bonnet");
        assertThat(apart(rinsed.check())).isEmpty();
    }

    @Test
    void aShopHasPairsOfItsOwn() {
        SafetySettings usual = SafetySettings.USUAL;
        List<ApartPair> pairs = new ArrayList<>(usual.apart());
        pairs.removeIf(p -> p.id().equals("solvent-and-ignition"));
        pairs.add(new ApartPair(
                "dust-and-wipe",
                List.of("stage:machine"),
                List.of("item:panel-wipe-liquid"),
                ApartPair.Within.DAY,
                0,
                Severity.WARN,
                "dust settles on it"));
        SafetySettings own = new SafetySettings(
                usual.vibration(), usual.noise(), usual.day(), usual.air(), usual.climate(), pairs, usual.light());
        List<Finding> met = apart(bay().step("machine", "roof")
                .step("wipe", "bonnet")
                .step("lamp", "roof")
                .settings(own)
                .check());
        assertThat(met).extracting(Finding::severity).containsExactly(Severity.WARN);
        assertThat(((SafetyReason.Meets) met.get(0).reason()).why()).isEqualTo("dust settles on it");
    }

    @Test
    void aSelectorThatSelectsNothingIsRefused() {
        assertThatThrownBy(() ->
                        new ApartPair("odd", List.of("acid"), List.of(), ApartPair.Within.DAY, 0, Severity.WARN, ""))
                .hasMessageContaining("'acid'")
                .hasMessageContaining("group:acid");
    }
}
