package baywright.safety;

import static baywright.safety.Cases.DAY;
import static baywright.safety.Cases.MONDAY;
import static baywright.safety.Cases.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SafetyCheckTest {

    private static final JobSafety AT_EIGHT = machine("8");

    private static JobSafety machine(String level) {
        return JobSafety.NONE.with("s1", new JobSafety.StepSafety(0, Optional.of(number(level)), Optional.empty()));
    }

    private static Cases compounding() {
        return new Cases().step("heavy-compound", "surface:paint");
    }

    private static List<Finding> of(SafetyReport report, String code) {
        return report.findings().stream().filter(f -> f.code().equals(code)).toList();
    }

    private static SafetyReason.Dose dose(SafetyReport report) {
        return (SafetyReason.Dose) of(report, SafetyCodes.VIBRATION).get(0).reason();
    }

    // the trade's own case: heavy compounding of 12.5 m² by one person in a day, likely time, trigger share 0.65
    // (common
    // practice, no source); points by UK HSE L140
    @Test
    void aDayOfHeavyCompoundingIsWarnedOfAtFiveAndStoppedAtEight() {
        Map<String, BigDecimal> area = Map.of("m2", number("12.5"));
        SafetyReport atFive = compounding().drivers(area).check();
        assertThat(atFive.days().get(0).vibrationPoints()).isCloseTo(203, within(0.5));
        assertThat(of(atFive, SafetyCodes.VIBRATION))
                .extracting(Finding::severity)
                .containsExactly(Severity.WARN);
        assertThat(dose(atFive).points()).isEqualByComparingTo("203");
        SafetyReport atEight = compounding().drivers(area).job(AT_EIGHT).check();
        assertThat(atEight.days().get(0).vibrationPoints()).isCloseTo(520, within(0.5));
        assertThat(of(atEight, SafetyCodes.VIBRATION))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        assertThat(atEight.holds()).isFalse();
    }

    // Directive 2002/44/EC, art. 3(1): 480 hands-on minutes at 2.5 m/s² and full trigger are the action value to the
    // dot
    @ParameterizedTest
    @EnumSource(Comparison.class)
    void exactlyAtTheActionValueTheSettingDecides(Comparison comparison) {
        SafetySettings settings = vibration(comparison, 1);
        Cases exact = new Cases()
                .stage("rub", "time { attended 480.min, 480.min, 480.min }", "hazards { risk 'vibration', 2.5.ms2 }")
                .step("rub", "bonnet")
                .settings(settings);
        assertThat(exact.check().days().get(0).dailyVibration()).isCloseTo(2.5, within(1e-9));
        assertThat(of(exact.check(), SafetyCodes.VIBRATION)).hasSize(comparison == Comparison.AT_OR_ABOVE ? 1 : 0);
    }

    private static SafetySettings vibration(Comparison comparison, double share) {
        SafetySettings usual = SafetySettings.USUAL;
        return new SafetySettings(
                new SafetySettings.VibrationRule(2.5, 5, comparison, share),
                usual.noise(),
                usual.day(),
                usual.air(),
                usual.climate());
    }

    @Test
    void toolsOfADayAddUp() {
        SafetyReport report = new Cases()
                .stage("a", "time { attended 150.min, 150.min, 150.min }", "hazards { risk 'vibration', 4.ms2 }")
                .stage("b", "time { attended 60.min, 60.min, 60.min }", "hazards { risk 'vibration', 3.ms2 }")
                .stage("c", "time { attended 15.min, 15.min, 15.min }", "hazards { risk 'vibration', 20.ms2 }")
                .step("a", "bonnet")
                .step("b", "bonnet")
                .step("c", "bonnet")
                .settings(vibration(Comparison.EXCEEDS, 1))
                .check();
        // EU guide to good practice on hand-arm vibration (2008), 2.4.2 (example from memory)
        assertThat(report.days().get(0).dailyVibration()).isCloseTo(4.3157, within(1e-3));
        assertThat(of(report, SafetyCodes.VIBRATION))
                .extracting(Finding::severity)
                .containsExactly(Severity.WARN);
        assertThat(dose(report).value()).isEqualByComparingTo("4.3");
    }

    @Test
    void aPlanThatProvesAndBreaksTheLimitIsStoppedWithThreeWaysOutThatProve() {
        SafetyCase all = compounding().job(AT_EIGHT).build();
        assertThat(all.proof().holds()).as(all.proof().findings().toString()).isTrue();
        SafetyReport report = SafetyCheck.of(all);
        assertThat(report.holds()).isFalse();
        assertThat(report.remedies()).hasSize(3);
        assertThat(report.remedies().get(0)).isInstanceOf(Remedy.Share.class);
        assertThat(report.remedies().get(1)).isInstanceOf(Remedy.Split.class);
        assertThat(report.remedies().get(2)).isInstanceOf(Remedy.Gentler.class);
        for (Remedy remedy : report.remedies()) {
            SafetyCase changed = all.with(remedy.applyTo(all.plan(), all.job()));
            assertThat(changed.proof().holds()).as(remedy.toString()).isTrue();
            assertThat(SafetyCheck.of(changed).holds()).as(remedy.toString()).isTrue();
        }
    }

    @Test
    void whatAWayOutWouldGiveIsWhatItGives() {
        SafetyCase all = compounding().job(AT_EIGHT).build();
        for (Remedy remedy : SafetyCheck.of(all).remedies()) {
            SafetyReport after = SafetyCheck.after(all, remedy);
            assertThat(after.holds()).as(remedy.toString()).isTrue();
            assertThat(after).isEqualTo(SafetyCheck.withoutRemedies(all.with(remedy.applyTo(all.plan(), all.job()))));
            assertThat(DoseShare.worst(after.days(), all.settings())
                            .orElseThrow()
                            .share())
                    .isLessThan(1);
        }
    }

    @Test
    void aLevelIsTracedToItsLineUntilTheJobSaysItsOwn() {
        Cases two =
                new Cases().stage("rub", "hazards {", "    risk 'noise', 80.dB", "    risk 'vibration', 3.ms2", "}");
        SafetyCase all = two.step("rub", "bonnet").build();
        assertThat(SafetyCheck.levelLine(all, "s1", Agent.VIBRATION).orElseThrow())
                .satisfies(place -> {
                    assertThat(place.file()).isEqualTo("own/rub.groovy");
                    assertThat(place.line()).isEqualTo(7);
                });
        assertThat(SafetyCheck.levelLine(two.job(AT_EIGHT).build(), "s1", Agent.VIBRATION))
                .isEmpty();
        assertThat(SafetyCheck.levelLine(all, "s9", Agent.NOISE)).isEmpty();
    }

    @Test
    void eachDayOfWorkSaysWhatItsStepsAskOfTheWeather() {
        SafetyCase all = new Cases()
                .stage("coat", "climate { between 10.C, 25.C }")
                .stage("rub", "hazards { risk 'dust' }")
                .step("rub", "bonnet")
                .step("coat", Optional.of(MONDAY.plusDays(1)), "bonnet")
                .build();
        List<DayBounds> days = SafetyCheck.climate(all);
        assertThat(days).extracting(DayBounds::day).containsExactly(DAY, DAY.plusDays(1));
        assertThat(days.get(0).steps()).isEmpty();
        assertThat(days.get(1).steps()).singleElement().satisfies(s -> {
            assertThat(s.step()).isEqualTo("s2");
            assertThat(s.bounds().coldest().orElseThrow().inBase()).isEqualByComparingTo("10");
        });
    }

    @Test
    void aSecondVibratingStepMayWaitForTheNextDay() {
        SafetyCase all = new Cases()
                .stage("a", "time { attended 200.min, 200.min, 200.min }", "hazards { risk 'vibration', 7.ms2 }")
                .step("a", "bonnet")
                .step("a", "roof")
                .settings(vibration(Comparison.EXCEEDS, 1))
                .build();
        Remedy move = SafetyCheck.of(all).remedies().get(1);
        assertThat(move).isEqualTo(new Remedy.Move("s2", MONDAY.plusDays(1)));
        assertThat(SafetyCheck.of(all.with(move.applyTo(all.plan(), all.job()))).holds())
                .isTrue();
    }

    @Test
    void sharingHalvesEachPersonsPoints() {
        double alone = compounding().check().days().get(0).vibrationPoints();
        SafetyReport shared = compounding()
                .job(JobSafety.NONE.with("s1", new JobSafety.StepSafety(2, Optional.empty(), Optional.empty())))
                .check();
        assertThat(shared.days()).hasSize(2);
        assertThat(shared.days())
                .allSatisfy(d -> assertThat(d.vibrationPoints()).isCloseTo(alone / 2, within(1e-6)));
    }

    @Test
    void workBeyondADayGoesOnTheNextMorning() {
        SafetyReport report = new Cases()
                .stage("a", "time { attended 600.min, 600.min, 600.min }", "hazards { risk 'vibration', 4.ms2 }")
                .step("a", "bonnet")
                .check();
        assertThat(report.days()).extracting(PersonDay::day).containsExactly(DAY, DAY.plusDays(1));
        assertThat(report.days().get(0).vibration().get(0).hours()).isCloseTo(8 * 0.65, within(1e-6));
        assertThat(report.days().get(1).vibration().get(0).hours()).isCloseTo(2 * 0.65, within(1e-6));
    }

    /** A fixed start on the next day says when the first step is to be done: ten hours, on the first. */
    @Test
    void theClockOfThePlanCountsUpToAFixedStart() {
        Cases two = new Cases()
                .stage("a", "time { attended 600.min, 600.min, 600.min }", "hazards { risk 'vibration', 4.ms2 }")
                .step("a", "bonnet")
                .step("a", Optional.of(MONDAY.plusDays(1)), "roof");
        SafetyReport report = two.check();
        assertThat(report.days()).extracting(PersonDay::day).containsExactly(DAY, DAY.plusDays(1), DAY.plusDays(2));
        assertThat(report.days())
                .extracting(d -> d.vibration().get(0).hours())
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(10 * 0.65, within(1e-6)),
                        second -> assertThat(second).isCloseTo(8 * 0.65, within(1e-6)),
                        third -> assertThat(third).isCloseTo(2 * 0.65, within(1e-6)));
    }

    @Test
    void vehiclesAlikeFollowOneUponTheOther() {
        Cases one = new Cases()
                .stage("a", "time { attended 100.min, 100.min, 100.min }", "hazards { risk 'vibration', 4.ms2 }")
                .step("a", "bonnet");
        double points = one.check().days().get(0).vibrationPoints();
        assertThat(one.vehicles(3).check().days().get(0).vibrationPoints()).isCloseTo(3 * points, within(1e-9));
    }

    // Directive 2003/10/EC, art. 3(2): the limit under the protector, the action values without
    @Test
    void noiseIsJudgedWithAndWithoutProtector() {
        Cases bare = new Cases()
                .stage("roar", "time { attended 35.min, 35.min, 35.min, per: 'm2' }", "hazards { risk 'noise', 90.dB }")
                .step("roar", "surface:paint");
        assertThat(of(bare.check(), SafetyCodes.NOISE))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        assertThat(bare.check().remedies()).hasSize(3);
        Cases worn = new Cases()
                .stage(
                        "roar",
                        "time { attended 480.min, 480.min, 480.min }",
                        "hazards { risk 'noise', 90.dB; wear 'ear defenders' }")
                .step("roar", "bonnet");
        assertThat(of(worn.check(), SafetyCodes.NOISE))
                .extracting(Finding::severity)
                .containsExactly(Severity.WARN);
        assertThat(worn.check().days().get(0).protectedNoise()).isCloseTo(75, within(1e-9));
    }

    // the trade's own case: a stage of the shop's own with acid and no rinse, then iron remover on the wheels. That the
    // pair
    // gives off a toxic gas is general chemistry
    @Test
    void acidThenIronRemoverWithoutARinseMeet() {
        String[] acid = {
            "after { sets 'live', 'wet' }",
            "uses { item 'acid-wheel-cleaner', 25.ml, per: 'wheel' }",
            "hazards { from 'acid-wheel-cleaner' }"
        };
        SafetyReport report = new Cases()
                .stage("own-acid", acid)
                .step("own-acid", "surface:wheel")
                .step("iron-removal", "surface:wheel")
                .check();
        Finding met = of(report, SafetyCodes.KEEP_APART).get(0);
        assertThat(met.severity()).isEqualTo(Severity.STOP);
        assertThat(met.step()).hasValue("s2");
        assertThat(met.zones()).hasSize(4);
        SafetyReport rinsed = new Cases()
                .stage("own-acid", acid)
                .step("own-acid", "surface:wheel")
                .step("final-rinse", "surface:wheel")
                .step("iron-removal", "surface:wheel")
                .check();
        assertThat(of(rinsed, SafetyCodes.KEEP_APART)).isEmpty();
        SafetyReport elsewhere = new Cases()
                .stage("own-acid", acid)
                .step("own-acid", "surface:wheel")
                .step("iron-removal", "surface:paint")
                .check();
        Finding beside = of(elsewhere, SafetyCodes.KEEP_APART).get(0);
        assertThat(beside.zones()).isEmpty();
        assertThat(((SafetyReason.Meets) beside.reason()).where()).isEqualTo("together");
        SafetyReport rinsedElsewhere = new Cases()
                .stage("own-acid", acid)
                .step("own-acid", "surface:wheel")
                .step("final-rinse", "surface:wheel")
                .step("iron-removal", "surface:paint")
                .check();
        assertThat(of(rinsedElsewhere, SafetyCodes.KEEP_APART)).isEmpty();
    }

    // EUH031, EUH032 and EUH206 as Regulation (EC) No 1272/2008, annex II, words them
    @Test
    void aGassingItemAndAnAcidInOneBayOnOneDayAreStopped() {
        Cases day = new Cases()
                .item("bleach", List.of("EUH031"), "hypochlorite")
                .stage("bleach-it", "uses { item 'bleach', 25.ml }", "place { bay 'wash' }")
                .stage("rinse-it", "after { sets 'rinsed' }", "place { bay 'wash' }")
                .stage("acid-it", "uses { item 'acid-wheel-cleaner', 25.ml }", "place { bay 'wash' }");
        Finding met = of(
                        day.step("bleach-it", "bonnet")
                                .step("rinse-it", "bonnet")
                                .step("acid-it", "roof")
                                .check(),
                        SafetyCodes.KEEP_APART)
                .get(0);
        SafetyReason.Meets meets = (SafetyReason.Meets) met.reason();
        assertThat(meets.where()).isEqualTo("day");
        assertThat(meets.why()).isEqualTo("Contact with acids liberates toxic gas.");
        assertThat(List.of(meets.first(), meets.second())).containsExactly("bleach", "Wheel cleaner, acid");
        SafetyReport nextDay = new Cases()
                .item("bleach", List.of("EUH031"), "hypochlorite")
                .stage("bleach-it", "uses { item 'bleach', 25.ml }", "place { bay 'wash' }")
                .stage("acid-it", "uses { item 'acid-wheel-cleaner', 25.ml }", "place { bay 'wash' }")
                .step("bleach-it", "bonnet")
                .step("acid-it", Optional.of(MONDAY.plusDays(1)), "roof")
                .check();
        assertThat(of(nextDay, SafetyCodes.KEEP_APART)).isEmpty();
    }

    // REACH, annex XVII, entry 74 (from memory)
    @Test
    void isocyanatesAskForATrainedPerson() {
        Cases two = new Cases()
                .item("two-pack-lacquer", List.of("H226", "EUH204"))
                .stage("spray", "uses { item 'two-pack-lacquer', 25.ml }")
                .step("spray", "bonnet");
        assertThat(of(two.check(), SafetyCodes.TRAINED_PERSON))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        two.people(new Worker("p1", "One", List.of(Worker.TWO_PACK)));
        assertThat(of(two.check(), SafetyCodes.TRAINED_PERSON)).isEmpty();
    }

    @Test
    void cautionsStayUntilANamedPersonAnswersForThem() {
        Cases wheels = new Cases().found("booked-in").step("wheels-off-clean", "surface:wheel");
        assertThat(of(wheels.check(), SafetyCodes.ACKNOWLEDGE))
                .extracting(f -> ((SafetyReason.NotAcknowledged) f.reason()).caution())
                .containsExactly(Caution.JACKS, Caution.OLD_LININGS);
        assertThat(wheels.check().holds()).isFalse();
        wheels.job(new JobSafety(
                List.of(
                        new JobSafety.Acknowledgement("jacks", "Maren Thistlewick", MONDAY),
                        new JobSafety.Acknowledgement("old-linings", "Maren Thistlewick", MONDAY)),
                List.of(),
                Map.of()));
        assertThat(wheels.check().holds()).isTrue();
        assertThat(of(wheels.check(), SafetyCodes.ACKNOWLEDGED)).hasSize(2);
    }

    @Test
    void oldPaintHighVoltageHydrofluoricAndAirbagsAreCautions() {
        assertThat(cautions(compounding().facts(Map.of("paint", "single-stage"))))
                .containsExactly(Caution.OLD_PAINT);
        assertThat(cautions(compounding())).isEmpty();
        Cases engine = new Cases().step("engine-bay-clean", "engine-bay");
        assertThat(cautions(engine)).isEmpty();
        assertThat(cautions(engine.facts(Map.of("drive", "high-voltage")))).containsExactly(Caution.HIGH_VOLTAGE);
        assertThat(cautions(new Cases()
                        .item("strong-acid", List.of("H314"), "acid", "hydrofluoric")
                        .stage("etch", "uses { item 'strong-acid', 25.ml }")
                        .step("etch", "bonnet")))
                .containsExactly(Caution.HYDROFLUORIC);
        assertThat(cautions(
                        new Cases().stage("steam", "hazards { risk 'airbag' }").step("steam", "bonnet")))
                .containsExactly(Caution.AIRBAG);
    }

    private static List<Caution> cautions(Cases all) {
        return of(all.check(), SafetyCodes.ACKNOWLEDGE).stream()
                .map(f -> ((SafetyReason.NotAcknowledged) f.reason()).caution())
                .toList();
    }

    @Test
    void onePersonAloneIsWarnedAndTooFewAreStopped() {
        Worker one = new Worker("p1", "One", List.of());
        Cases air = new Cases().stage("fume", "hazards { risk 'harmful-air' }").step("fume", "bonnet");
        assertThat(of(air.check(), SafetyCodes.LONE_WORK)).isEmpty();
        assertThat(of(air.people(one).check(), SafetyCodes.LONE_WORK)).hasSize(1);
        Cases heavy = new Cases().stage("carry", "crew { people 2 }").step("carry", "bonnet");
        assertThat(of(heavy.check(), SafetyCodes.TOO_FEW_PEOPLE)).isEmpty();
        assertThat(of(heavy.people(one).check(), SafetyCodes.TOO_FEW_PEOPLE))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
    }

    private static JobSafety air(String temperature, String humidity, String surface) {
        JobSafety.DayClimate day = new JobSafety.DayClimate(
                DAY,
                number(temperature),
                number(humidity),
                Optional.of(surface).filter(s -> !s.isEmpty()).map(Cases::number));
        return new JobSafety(List.of(), List.of(day), Map.of());
    }

    private static Cases laying() {
        return new Cases()
                .stage("lay", "climate { between 15.C, 25.C; humidity 40.percent, 65.percent }")
                .step("lay", "bonnet");
    }

    // ISO 8502-4 and ISO 12944-7 (from memory): 22 °C and 65 % need 18.12 °C
    @Test
    void aSurfaceWithinThreeKelvinOfTheDewPointIsWarnedOf() {
        assertThat(of(laying().job(air("22", "65", "18.0")).check(), SafetyCodes.DEW_POINT))
                .hasSize(1);
        assertThat(of(laying().job(air("22", "65", "18.2")).check(), SafetyCodes.DEW_POINT))
                .isEmpty();
    }

    // margins of 2 °C and 5 %: common practice, no source
    @Test
    void climateOutsideABoundStopsAndNearItWarns() {
        assertThat(of(laying().job(air("14.9", "50", "")).check(), SafetyCodes.CLIMATE))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        assertThat(of(laying().job(air("15", "50", "")).check(), SafetyCodes.CLIMATE))
                .extracting(Finding::severity)
                .containsExactly(Severity.WARN);
        assertThat(of(laying().job(air("20", "50", "")).check(), SafetyCodes.CLIMATE))
                .isEmpty();
        assertThat(of(laying().job(air("20", "65.5", "")).check(), SafetyCodes.CLIMATE))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
        assertThat(of(laying().job(air("20", "61", "")).check(), SafetyCodes.CLIMATE))
                .extracting(Finding::severity)
                .containsExactly(Severity.WARN);
        assertThat(of(laying().check(), SafetyCodes.CLIMATE)).isEmpty();
    }

    // The formula of dilution turned round: 100 ml/h of propan-2-ol in 392.75 m³/h, mixing factor 5, leave 400 ppm;
    // limit EH40/2005 (from
    // memory)
    @Test
    void solventOfADayAgainstItsLimit() {
        SafetySettings usual = SafetySettings.USUAL;
        SafetySettings settings = new SafetySettings(
                usual.vibration(),
                usual.noise(),
                usual.day(),
                new SafetySettings.AirRule(
                        "uk",
                        5,
                        Map.of("wash", 392.75),
                        Map.of("panel-wipe-liquid", new SafetySettings.Solvent("propan-2-ol", 100))),
                usual.climate());
        assertThat(vapour("799", settings)).containsExactly(Severity.WARN);
        assertThat(vapour("805", settings)).containsExactly(Severity.STOP);
        assertThat(vapour("390", settings)).isEmpty();
        assertThat(vapour("805", usual)).isEmpty();
    }

    private static List<Severity> vapour(String millilitres, SafetySettings settings) {
        SafetyReport report = new Cases()
                .stage(
                        "wipe",
                        "time { attended 60.min, 60.min, 60.min }",
                        "uses { item 'panel-wipe-liquid', " + millilitres + ".ml }",
                        "place { bay 'wash' }")
                .step("wipe", "bonnet")
                .settings(settings)
                .check();
        return of(report, SafetyCodes.SOLVENT_AIR).stream()
                .map(Finding::severity)
                .toList();
    }

    @Test
    void everyFindingHasASentence() {
        SafetyCase all = new Cases()
                .found("booked-in")
                .step("wheels-off-clean", "surface:wheel")
                .step("heavy-compound", "surface:paint")
                .job(new JobSafety(
                        List.of(new JobSafety.Acknowledgement("jacks", "Maren Thistlewick", MONDAY)),
                        List.of(new JobSafety.DayClimate(DAY, number("2"), number("95"), Optional.empty())),
                        Map.of()))
                .people(new Worker("p1", "One", List.of()))
                .build();
        FindingText text = new FindingText(all.setting(), all.plan(), Locale.UK);
        SafetyReport report = SafetyCheck.of(all);
        assertThat(report.findings())
                .hasSizeGreaterThan(4)
                .allSatisfy(f -> assertThat(text.of(f)).isNotBlank().doesNotContain("{", "}"));
        assertThat(report).isEqualTo(SafetyCheck.of(all));
    }
}
