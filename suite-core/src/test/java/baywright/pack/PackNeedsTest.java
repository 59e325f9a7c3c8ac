package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class PackNeedsTest {

    private static List<String> lines(PackNeeds needs) {
        return needs.refusals().stream().map(Throwable::getMessage).toList();
    }

    private static PackNeeds coming(Manifest... packs) {
        return new PackNeeds(List.of(packs), List.of(), false);
    }

    @Test
    void eachPackStandsBehindWhatItNeeds() {
        PackNeeds needs = coming(
                Packs.manifest("a-wash", "1.0.0", "z-base ^1.0.0", "m-chem >=1.0.0 <3.0.0"),
                Packs.manifest("m-chem", "2.5.0", "z-base ^1.2.0"),
                Packs.manifest("z-base", "1.4.0"));

        assertThat(needs.refusals()).isEmpty();
        assertThat(needs.inOrder()).extracting(Manifest::id).containsExactly("z-base", "m-chem", "a-wash");
    }

    @Test
    void whatIsInUseServesAsWell() {
        PackNeeds needs = new PackNeeds(
                List.of(Packs.manifest("wash", "1.0.0", "base ^1.0.0")),
                List.of(Packs.manifest("base", "1.1.0")),
                false);

        assertThat(needs.inOrder()).extracting(Manifest::name).containsExactly("base@1.1.0", "wash@1.0.0");
    }

    @Test
    void aMissingPackIsToldWithItsRange() {
        PackNeeds needs = coming(Packs.manifest("wash", "1.0.0", "base ^1.0.0"));

        assertThat(lines(needs))
                .containsExactly("wash@1.0.0: the pack needs base ^1.0.0, and there is no such pack; get it as well");
        assertThatThrownBy(needs::inOrder).isSameAs(needs.refusals().get(0));
    }

    @Test
    void clashingVersionsAreToldForEachThatCannotUseThem() {
        PackNeeds needs = coming(
                Packs.manifest("wash", "1.0.0", "base ^1.0.0"),
                Packs.manifest("wheels", "3.0.0", "base ^2.0.0"),
                Packs.manifest("base", "2.1.0"));

        assertThat(lines(needs))
                .containsExactly(
                        "wash@1.0.0: the pack needs base ^1.0.0, and base is there in version 2.1.0; get one that"
                                + " both can use");
    }

    /** Taking a later base must not break what is in use and was not asked. */
    @Test
    void aPackInUseCanClashWithOneThatComes() {
        PackNeeds needs = new PackNeeds(
                List.of(Packs.manifest("base", "2.0.0")),
                List.of(Packs.manifest("base", "1.9.0"), Packs.manifest("wash", "1.0.0", "base ^1.0.0")),
                false);

        assertThat(lines(needs)).singleElement().asString().startsWith("wash@1.0.0: the pack needs base ^1.0.0,");
    }

    @Test
    void aCircleIsToldOnceWithItsWay() {
        PackNeeds needs = coming(
                Packs.manifest("a", "1.0.0", "b ^1.0.0"),
                Packs.manifest("b", "1.0.0", "c ^1.0.0"),
                Packs.manifest("c", "1.0.0", "b ^1.0.0"));

        assertThat(lines(needs))
                .containsExactly(
                        "b: these packs need each other in a circle: b → c → b; ask their makers to part what they"
                                + " share");
    }

    @Test
    void anEarlierVersionIsTakenOnlyWhenAsked() {
        List<Manifest> coming = List.of(Packs.manifest("wash", "1.3.0-rc.1"));
        List<Manifest> held = List.of(Packs.manifest("wash", "1.3.0"));

        assertThat(lines(new PackNeeds(coming, held, false)))
                .containsExactly(
                        "wash: version 1.3.0-rc.1 is older than 1.3.0, which is in use; say --downgrade if that is"
                                + " meant");
        assertThat(new PackNeeds(coming, held, true).inOrder())
                .extracting(Manifest::name)
                .containsExactly("wash@1.3.0-rc.1");
        assertThat(new PackNeeds(held, held, false).refusals()).isEmpty();
    }

    @Test
    void twoVersionsOfOnePackAreRefused() {
        assertThat(lines(coming(Packs.manifest("wash", "1.0.0"), Packs.manifest("wash", "2.0.0"))))
                .containsExactly("wash: the pack is there in the versions 1.0.0 and 2.0.0; keep one of them");
    }
}
