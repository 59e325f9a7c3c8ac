package baywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The folder that the program was started from, with the standard stage scripts and the demo.
 *
 * @param folder its path
 */
record Home(Path folder) {

    static Home ofProcess() {
        return new Home(Path.of(System.getProperty("baywright.home", "")).toAbsolutePath());
    }

    Path stageScripts() {
        return folder.resolve("stage-scripts");
    }

    Path demo() {
        return folder.resolve("demo");
    }

    boolean isWhole() {
        return Files.isDirectory(stageScripts()) && Files.isDirectory(demo());
    }
}
