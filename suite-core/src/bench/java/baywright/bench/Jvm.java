package baywright.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Command lines that start a class of this class path in a Java of its own. */
final class Jvm {

    /** As the launcher starts short commands, without its archive of classes. */
    static final List<String> FLAGS = List.of("-Xshare:auto", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

    private Jvm() {}

    static List<String> command(Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(FLAGS);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(List.of(arguments));
        return command;
    }
}
