package baywright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the rooms of the core to their arrows: each uses only what stands before it. */
class ArrowsTest {

    /** Each room with the rooms it may use. A new room is entered here first. */
    private static final Map<String, Set<String>> MAY_USE = new LinkedHashMap<>();

    static {
        room("quantity");
        room("fit");
        room("script", "quantity");
        room("vehicle", "quantity");
        room("library", "quantity", "script");
        room("editor", "quantity", "script", "library");
        room("plan", "quantity", "script", "vehicle", "library");
        room("chance", "quantity");
        room("money", "quantity", "chance", "script", "vehicle", "library", "plan");
        room("safety", "quantity", "script", "vehicle", "library", "plan");
        room("schedule", "quantity", "chance", "script", "vehicle", "library", "plan");
        room("workspace", "quantity", "script", "vehicle", "library", "plan", "money", "safety", "schedule");
        room("pack", "quantity", "script", "library", "workspace");
        room(
                "site",
                "quantity",
                "fit",
                "chance",
                "script",
                "vehicle",
                "library",
                "plan",
                "money",
                "safety",
                "schedule",
                "workspace",
                "pack");
        room(
                "share",
                "quantity",
                "fit",
                "chance",
                "script",
                "vehicle",
                "library",
                "editor",
                "plan",
                "money",
                "safety",
                "schedule",
                "workspace",
                "pack",
                "site");
        room("remote", "quantity", "script", "library", "workspace", "pack", "site", "share");
        room(
                "document",
                "quantity",
                "script",
                "vehicle",
                "library",
                "plan",
                "money",
                "safety",
                "schedule",
                "workspace",
                "pack",
                "site",
                "share");
        room(
                "cli",
                "quantity",
                "chance",
                "script",
                "vehicle",
                "library",
                "plan",
                "money",
                "safety",
                "schedule",
                "workspace",
                "pack",
                "site",
                "share",
                "remote",
                "document",
                "editor");
    }

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("baywright");

    private static void room(String name, String... uses) {
        MAY_USE.put(name, Set.of(uses));
    }

    @Test
    void everyRoomHasItsArrows() {
        assertThat(rooms(CORE)).isSubsetOf(MAY_USE.keySet());
    }

    @Test
    void roomsUseOnlyWhatStandsBeforeThem() {
        MAY_USE.keySet().forEach(room -> arrowsOf(room).check(CORE));
    }

    @Test
    void noRoomsUseEachOtherInACircle() {
        slices().matching("baywright.(*)..").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void onlyTheLanguageKnowsGroovy() {
        noClasses()
                .that()
                .resideOutsideOfPackage("baywright.script..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("groovy..", "org.codehaus.groovy..", "org.apache.groovy..")
                .check(CORE);
    }

    /** Photos on paper have to be decoded and made small: one class does that, without a screen. */
    @Test
    void onlySharingKnowsGit() {
        noClasses()
                .that()
                .resideOutsideOfPackage("baywright.remote..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.jgit..")
                .check(CORE);
    }

    @Test
    void theCoreKnowsNoScreen() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "java.applet..", "javax.print..")
                .check(CORE);
        noClasses()
                .that()
                .haveNameNotMatching("baywright\\.document\\.(Picture(\\$.*)?)")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.imageio..")
                .check(CORE);
    }

    @Test
    void onlyTheCommandLinePrints() {
        NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(CORE.that(outside("cli")));
    }

    /** Shows that the rules can fail: a class made for it breaks one. */
    @Test
    void aBackwardArrowIsFound() {
        JavaClasses withBreach =
                new ClassFileImporter().importPackages("baywright.quantity", "baywright.plan", "baywright.library");
        assertThat(arrowsOf("quantity").evaluate(withBreach).getFailureReport().getDetails())
                .anyMatch(line -> line.contains("BackwardArrow") && line.contains("Plan"));
    }

    private static ArchRule arrowsOf(String room) {
        List<String> others = MAY_USE.keySet().stream()
                .filter(other -> !other.equals(room) && !MAY_USE.get(room).contains(other))
                .map(other -> "baywright." + other + "..")
                .collect(Collectors.toList());
        return noClasses()
                .that()
                .resideInAPackage("baywright." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others.toArray(String[]::new))
                .allowEmptyShould(true);
    }

    private static DescribedPredicate<JavaClass> outside(String room) {
        return JavaClass.Predicates.resideOutsideOfPackage("baywright." + room + "..");
    }

    private static Set<String> rooms(JavaClasses classes) {
        return classes.stream()
                .map(c -> c.getPackageName().split("\\."))
                .filter(parts -> parts.length > 1)
                .map(parts -> parts[1])
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
