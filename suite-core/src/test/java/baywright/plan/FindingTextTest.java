package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.safety.SafetyCodes;
import baywright.vehicle.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FindingTextTest {

    /** Codes of the proof and of the rooms above it. */
    private static final List<String> ALL =
            Stream.concat(Codes.ALL.stream(), SafetyCodes.ALL.stream()).toList();

    private static final Path PAGES = Path.of("..", "docs", "findings");

    private static Stages stages() {
        return new Stages()
                .opposites("dry", "wet")
                .opposites("curing", "water-safe")
                .perishing("panel-wiped", 60)
                .states("masked", "clayed")
                .madeOf("decontaminated", "clayed", "masked")
                .condition("lit")
                .bay("hall", "work")
                .stage(terms("final-rinse").sets("wet").takes(5))
                .stage(terms("towel-dry").sets("dry").takes(10))
                .stage(terms("tape-up").needs("dry").sets("masked").takes(10))
                .stage(terms("panel-wipe").sets("panel-wiped").takes(20))
                .stage(terms("coat")
                        .needs("panel-wiped")
                        .sets("curing")
                        .arrives("water-safe", 720)
                        .takes(90))
                .stage(terms("polish").needs("decontaminated"))
                .stage(terms("check").needs("lit").prefers("clayed"))
                .stage(terms("film").refuses("masked"))
                .stage(terms("foam").takes(4).stands(4, 8))
                .stage(terms("hand-over").needs("water-safe").takes(10));
    }

    private static List<String> sentences(Step... steps) {
        return sentences(Survey.NOTHING, steps);
    }

    private static List<String> sentences(Survey survey, Step... steps) {
        Setting setting = stages().setting(survey);
        Plan plan = Stages.plan(steps);
        FindingText text = new FindingText(setting, plan, Locale.UK);
        return Prover.prove(setting, plan).findings().stream().map(text::of).toList();
    }

    @Test
    void theChainIsToldFromTheNearestCauseBack() {
        assertThat(sentences(
                        step("s1", "towel-dry", "bonnet"),
                        step("s2", "final-rinse", "bonnet"),
                        step("s3", "tape-up", "bonnet")))
                .containsExactly("tape up (s3) on bonnet needs 'dry': cleared by final rinse (s2); "
                        + "after towel dry (s1) had set it; nothing sets it again before s3");
        assertThat(sentences(
                        step("s1", "towel-dry", "bonnet"),
                        step("s2", "final-rinse", "bonnet"),
                        step("s3", "tape-up", "bonnet"),
                        step("s4", "towel-dry", "bonnet")))
                .containsExactly("tape up (s3) on bonnet needs 'dry': cleared by final rinse (s2); "
                        + "after towel dry (s1) had set it; set again only later, by towel dry (s4)");
    }

    @Test
    void eachKindOfCauseHasItsWords() {
        assertThat(sentences(step("s1", "tape-up", "bonnet", "boot-lid")))
                .containsExactly("tape up (s1) on bonnet, boot lid needs 'dry': "
                        + "nothing in the plan sets it, and the survey did not find it");
        assertThat(sentences(step("s1", "tape-up", "bonnet"), step("s2", "towel-dry", "bonnet")))
                .containsExactly("tape up (s1) on bonnet needs 'dry': only towel dry (s2) sets it, later");
        assertThat(sentences(step("s1", "panel-wipe", "bonnet"), at(step("s2", "coat", "bonnet"), 95)))
                .containsExactly(
                        "coat (s2) on bonnet needs 'panel-wiped': run out 75 min after panel wipe (s1) set it, lasts 60 min");
        assertThat(sentences(
                        step("s1", "panel-wipe", "bonnet"),
                        step("s2", "coat", "bonnet"),
                        at(step("s3", "hand-over", "vehicle"), 200)))
                .containsExactly("hand over (s3) on bonnet needs 'water-safe': "
                        + "on its way since coat (s2), 10 h 30 min still missing");
        assertThat(sentences(step("s1", "check", "bonnet")))
                .containsExactly(
                        "check (s1) on bonnet needs 'lit': bay 'hall' does not give it",
                        "check (s1) on bonnet goes better with 'clayed': "
                                + "nothing in the plan sets it, and the survey did not find it");
        assertThat(sentences(
                        step("s1", "towel-dry", "bonnet"),
                        step("s2", "tape-up", "bonnet"),
                        step("s3", "film", "bonnet")))
                .containsExactly("film (s3) on bonnet must not find 'masked': set by tape up (s2)");
        assertThat(sentences(
                        step("s1", "towel-dry", "bonnet"),
                        step("s2", "tape-up", "bonnet"),
                        step("s3", "polish", "bonnet")))
                .containsExactly("polish (s3) on bonnet needs 'decontaminated': "
                        + "'clayed' is missing, nothing in the plan sets it, and the survey did not find it");
    }

    @Test
    void timesAndFaultsAreTold() {
        assertThat(sentences(step("s1", "foam", "bonnet"), at(step("s2", "final-rinse", "bonnet"), 5)))
                .containsExactly("final rinse (s2) on bonnet comes 1 min after foam (s1), which needs at least 4 min");
        assertThat(sentences(step("s1", "foam", "bonnet"), at(step("s2", "final-rinse", "bonnet"), 3004)))
                .containsExactly(
                        "final rinse (s2) on bonnet comes 2 d 2 h after foam (s1), which may stand at most 8 min");
        assertThat(sentences(step("s1", "foam", "surface:paint")))
                .containsExactly(
                        "foam (s1) on all painted panels may stand at most 8 min, " + "and no step follows there");
        assertThat(sentences(step("s1", "foma", "bonnet")))
                .containsExactly(
                        "'foma' (s1) asks for the stage 'foma', which the library does not have; nearest is 'foam'");
        assertThat(sentences(step("s1", "foam", "bonet")))
                .containsExactly(
                        "foam (s1) names the zone 'bonet', which the vehicle does not have; nearest is 'bonnet'");
        assertThat(sentences(new Survey(Map.of(), List.of("drry"), Map.of())))
                .containsExactly(
                        "the survey names the state 'drry', which the library does not know; nearest is 'dry'");
    }

    @Test
    void manyZonesAreNamedByGroups() {
        assertThat(sentences(step("s1", "tape-up", "vehicle")))
                .singleElement()
                .asString()
                .contains("on vehicle needs");
        assertThat(sentences(
                        new Survey(Map.of(), List.of("wet"), Map.of()),
                        step("s1", "tape-up", "surface:paint", "windscreen")))
                .singleElement()
                .asString()
                .startsWith("tape up (s1) on all painted panels, windscreen needs");
    }

    @Test
    void everyZoneIsNamedWhenAskedFor() {
        Setting setting = stages().setting(Survey.NOTHING);
        Plan plan = Stages.plan(step("s1", "foam", "surface:paint"));
        FindingText text = new FindingText(setting, plan, Locale.UK, true);
        assertThat(Prover.prove(setting, plan).findings())
                .extracting(text::of)
                .singleElement()
                .asString()
                .startsWith("foam (s1) on bonnet, wing left, wing right, boot lid may stand");
    }

    @Test
    void everyCodeHasATitleInWords() {
        assertThat(ALL)
                .allSatisfy(
                        code -> assertThat(FindingText.title(code, Locale.UK)).isNotBlank());
    }

    @Test
    void everyCodeHasAPageAndEveryPageACode() throws IOException {
        try (Stream<Path> pages = Files.list(PAGES)) {
            assertThat(pages.map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(
                            ALL.stream().map(c -> c + ".md").toList());
        }
        for (String code : ALL) {
            assertThat(Files.readString(PAGES.resolve(code + ".md")))
                    .startsWith("# `" + code + "`: " + FindingText.title(code, Locale.UK) + "\n")
                    .contains("## What it means", "## Why it matters", "## How to mend it");
        }
    }
}
