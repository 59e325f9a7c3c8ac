package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.script.hostile.HostileScript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code stages check} on folders from elsewhere, as its user sees it. */
class StagesCheckTest {

    private static final Path SHIPPED = Path.of("..", "stage-scripts");

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder.resolve("settings"), folder);
    }

    /** One script of each technique. */
    private static Map<String, HostileScript> sample() {
        Map<String, HostileScript> sample = new LinkedHashMap<>();
        for (HostileScript script : HostileScript.all()) {
            sample.putIfAbsent(script.name().replaceAll("/.*", ""), script);
        }
        return sample;
    }

    /** The way to the reference stands below the first problem about a word, and no second time. */
    @Test
    void aProblemLeadsToTheReferenceOfItsWord() throws IOException {
        Path script =
                Files.writeString(Files.createDirectories(folder.resolve("set")).resolve("wrong.groovy"), """
                stage('wrong') {
                    title 'Wrong'
                    time {
                        attended 5, 6, 7
                        attended 3, 4, 5
                    }
                }
                """);

        Desk.Answer answer = desk.answerTo("stages", "check", script.getParent().toString());

        assertThat(answer.out()).containsOnlyOnce("    about 'attended': baywright stages explain attended\n");
        assertThat(desk.answerTo("stages", "explain", "attended").status()).isEqualTo(ExitStatus.FINE);
        assertThat(desk.answerTo("stages", "check", "--json", script.getParent().toString())
                        .out())
                .contains("\"word\" : \"attended\"");
    }

    /** All of them in one folder, some of them with the same ids: each is refused where it is refused alone. */
    @Test
    void theWholeHostileSetInOneFolderIsRefusedPlaceByPlace() throws IOException {
        Path scripts = folder.resolve("set");
        for (HostileScript script : HostileScript.all()) {
            Path file = scripts.resolve(script.name());
            Files.createDirectories(file.getParent());
            script.writeTo(file, 9);
        }

        Desk.Answer answer = desk.answerTo("stages", "check", scripts.toString());

        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        Set<String> lines = answer.out().lines().collect(Collectors.toSet());
        assertThat(HostileScript.all()).hasSizeGreaterThan(400).allSatisfy(script -> {
            String place = script.name() + (script.place().equals("0:0") ? "" : ":" + script.place());
            assertThat(lines).anyMatch(line -> line.contains(place + ": "));
        });
        assertThat(answer.out()).doesNotContain("\u001b", "\tat ");
    }

    @Test
    void eachHostileScriptByItselfIsBadInputAtItsPlace() throws IOException {
        for (HostileScript script : sample().values()) {
            Path alone = Files.createDirectories(folder.resolve("alone"));
            script.writeTo(alone.resolve("script.groovy"), 9);

            Desk.Answer answer = desk.answerTo("stages", "check", alone.toString());

            String place = script.place().equals("0:0") ? "" : ":" + script.place();
            assertThat(answer.status()).as(script.name()).isEqualTo(ExitStatus.BAD_INPUT);
            assertThat(answer.out()).contains("script.groovy" + place + ": ");
        }
    }

    @Test
    void everyShippedScriptIsAccepted() {
        Desk.Answer answer = desk.answerTo("stages", "check", SHIPPED.toString());

        assertThat(answer.status()).as(answer.out()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out()).contains("The examples reach every declaration of every stage.");
    }

    /** Four lines of time, one behind an input that no example sets: three of four are 75 %. */
    @Test
    void aLineThatNoExampleReachesIsShownWithTheShareThatIsReached() throws IOException {
        Path scripts = Files.createDirectories(folder.resolve("own"));
        Files.copy(SHIPPED.resolve("shapes.json"), scripts.resolve("shapes.json"));
        Files.writeString(scripts.resolve("a.groovy"), """
                surface 'paint', means: 'body panels'
                family 'wash', title: 'Washing'
                stage('rub') {
                    title 'Rubbing'
                    family 'wash'
                    worksOn 'paint'
                    inputs { yesNo 'twice', usual: false }
                    time {
                        attended 1.min, 1.min, 1.min
                        attended 2.min, 2.min, 2.min
                        attended 3.min, 3.min, 3.min
                        if (twice) { attended 4.min, 4.min, 4.min }
                    }
                    example 'once', on: 'saloon', attended: 6.min..6.min
                }
                """);

        Desk.Answer answer = desk.answerTo("stages", "check", scripts.toString());

        assertThat(answer.status()).as(answer.out()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .contains("rub: its examples reach 75 % of 4 declarations; one is never reached:", "a.groovy:12:")
                .doesNotContain("every declaration");
        assertThat(desk.answerTo("--json", "stages", "check", scripts.toString())
                        .out())
                .contains("\"percent\" : 75", "a.groovy:12:");
    }

    @Test
    void anExampleThatComesOutOtherwiseIsAFailedCheckAndNoBadInput() throws IOException {
        Path scripts = Files.createDirectories(folder.resolve("own"));
        Files.copy(SHIPPED.resolve("shapes.json"), scripts.resolve("shapes.json"));
        Files.writeString(scripts.resolve("a.groovy"), """
                surface 'paint', means: 'body panels'
                family 'wash', title: 'Washing'
                stage('rub') {
                    title 'Rubbing'
                    family 'wash'
                    worksOn 'paint'
                    time { attended 1.min, 2.min, 3.min, per: 'vehicle' }
                    example 'never so long', on: 'saloon', attended: 500.min..600.min
                }
                """);

        Desk.Answer answer = desk.answerTo("stages", "check", scripts.toString());

        assertThat(answer.status()).as(answer.out()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out()).contains("a.groovy:8:5");
    }
}
