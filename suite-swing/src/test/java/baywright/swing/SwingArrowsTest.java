package baywright.swing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the window to its arrows: workbenches know the door, the shared parts and the core, never each other nor the shell. */
class SwingArrowsTest {

    /** What every workbench may use. */
    private static final Set<String> SHARED = Set.of("api", "parts", "drawing");

    private static final JavaClasses WINDOW = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("baywright.swing");

    private static Set<String> rooms() {
        return WINDOW.stream()
                .map(c -> c.getPackageName().split("\\."))
                .filter(parts -> parts.length > 2)
                .map(parts -> parts[2])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static ArchRule uses(String room, List<String> not) {
        return noClasses()
                .that()
                .resideInAPackage("baywright.swing." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(not.stream()
                        .map(other -> "baywright.swing." + other + "..")
                        .toArray(String[]::new));
    }

    private static List<String> others(String room) {
        List<String> others = new ArrayList<>(rooms());
        others.remove(room);
        others.removeAll(SHARED);
        // whoever puts the window together starts what the loader of jars has found
        if (room.equals("shell")) {
            others.remove("plugins");
        }
        return others;
    }

    @Test
    void workbenchesKnowNeitherEachOtherNorTheShell() {
        Set<String> workbenches = rooms();
        workbenches.removeAll(SHARED);
        assertThat(workbenches).contains("shell", "start");
        workbenches.forEach(room -> uses(room, others(room)).check(WINDOW));
    }

    @Test
    void theDoorKnowsNothingOfTheWindow() {
        List<String> all = new ArrayList<>(rooms());
        all.remove("api");
        uses("api", all).check(WINDOW);
    }

    /** Shows that the rule can fail: the shell does use the parts. */
    @Test
    void aBreachIsFound() {
        assertThat(uses("shell", List.of("parts")).evaluate(WINDOW).hasViolation())
                .isTrue();
    }
}
