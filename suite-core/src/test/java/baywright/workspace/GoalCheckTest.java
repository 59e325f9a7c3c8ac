package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoalCheckTest {

    private static final String WISHES = "\"wishes\": [\"no swirls\", \"clear lamps\"],";

    private static final Library LIBRARY =
            LibraryLoader.load(Map.of("all.groovy", """
                            state 'polished', means: 'polished'
                            state 'shade', means: 'no sun', scope: 'condition'
                            surface 'paint', means: 'painted panels'
                            goal('one-step-finish') {
                                title 'One-step finish'
                                wants 'polished', on: ['paint']
                            }
                            """), List.of()).library();

    @TempDir
    private Path folder;

    private List<String> problems(String goals) {
        Mill mill = Mill.in(folder);
        mill.write(Mill.JOB, mill.text(Mill.JOB).replace(WISHES, "\"goals\": [" + goals + "],"));
        Workspace workspace = mill.open();
        return workspace.goalProblems(workspace.job("green-estate").orElseThrow(), LIBRARY).stream()
                .map(FileProblem::toString)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"goal": "one-step-finsh"}                           | 18:22: goals[0].goal: 'one-step-finsh' is no goal of the library; nearest is 'one-step-finish'
                    {"goal": "shine"}                                    | 18:22: goals[0].goal: 'shine' is no goal of the library; give one of one-step-finish
                    {"states": ["polishd"], "zones": ["bonnet"]}         | 18:25: goals[0].states[0]: 'polishd' is no state of the library; nearest is 'polished'
                    {"states": ["shade"], "zones": ["bonnet"]}           | 18:25: goals[0].states[0]: 'shade' is given by the bay, no work brings it about; want a state of zones or of the vehicle
                    {"goal": "one-step-finish", "zones": ["-bonet"]}     | 18:51: goals[0].zones[0]: 'bonet' is no zone of the shape 'estate'; nearest is 'bonnet'
                    {"goal": "one-step-finish", "zones": ["surface:pant"]} | 18:51: goals[0].zones[0]: 'pant' is no surface of the library; nearest is 'paint'
                    """)
    void saysWhereAGoalNamesWhatIsNotThere(String goal, String says) {
        assertThat(problems(goal)).containsExactly("jobs/green-estate/job.json:" + says);
    }

    @Test
    void aJobWithoutGoalsIsToldWhatToWrite() {
        assertThat(problems(""))
                .singleElement()
                .asString()
                .endsWith(
                        "goals: the job says no goals, so there is nothing to compose from; add some, such as \"goals\":"
                                + " [{\"goal\": \"one-step-finish\", \"priority\": \"must\"}]");
    }

    @Test
    void soundGoalsHaveNoProblem() {
        assertThat(problems("{\"goal\": \"one-step-finish\"}, {\"states\": [\"polished\"], \"zones\": [\"bonnet\"]}"))
                .isEmpty();
    }
}
