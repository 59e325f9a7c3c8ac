package baywright.script;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Groovy is a parser here and nothing else, and only four classes know it. */
class GroovyCornerTest {

    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("baywright");

    @Test
    void onlyTheReaderKnowsGroovy() {
        noClasses()
                .that()
                .haveNameNotMatching(
                        "baywright\\.script\\.(BlockFinder|Guard|GroovyReader|TreeMaker|Refused|WatchedParser)(\\$.*)?")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("groovy..", "groovyjarjarantlr4..", "org.codehaus.groovy..", "org.apache.groovy..")
                .check(OURS);
    }

    @Test
    void nothingOfGroovyThatCompilesOrRunsIsUsed() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveNameMatching("groovy\\.lang\\..*|.*\\.CompilationUnit|.*\\.MetaClass.*|.*InvokerHelper")
                .check(OURS);
    }

    @Test
    void theLanguageReachesNeitherReflectionNorProcessesNorTheNetwork() {
        noClasses()
                .that()
                .resideInAPackage("baywright.script")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.lang.reflect..", "java.net..", "javax.script..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.lang.ProcessBuilder")
                .check(OURS);
    }
}
