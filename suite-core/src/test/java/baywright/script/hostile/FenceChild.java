package baywright.script.hostile;

import baywright.script.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The program of a child process that loads every script of the set with no more memory to spare than the fence
 * promises to stay within. Writes one line per script: its name and whether it was refused as the index says. Arguments: the report and an empty
 * folder.
 */
public final class FenceChild {

    /** Memory that one load may take beyond what the idle program holds, in bytes. */
    private static final long ALLOWED = 64L << 20;

    private static final int BLOCK = 1 << 20;

    private FenceChild() {}

    public static void main(String[] arguments) throws Exception {
        Loading loading = new Loading(Path.of(arguments[1]));
        for (int i = 0; i < 3; i++) {
            Files.writeString(loading.hostile(), Loading.GOOD.replace("good", "warm"));
            loading.load();
        }
        List<byte[]> ballast = ballast();
        List<String> lines = new ArrayList<>();
        for (HostileScript script : HostileScript.all()) {
            script.writeTo(loading.hostile(), 9);
            lines.add(script.name() + "\t" + outcome(script, loading));
        }
        lines.add("ballast\t" + ballast.size());
        Files.write(Path.of(arguments[0]), lines);
    }

    private static String outcome(HostileScript script, Loading loading) throws Exception {
        try {
            List<Problem> errors = loading.load().errors();
            return errors.stream().anyMatch(script::isRefusedBy) ? "refused" : "not refused: " + errors;
        } catch (OutOfMemoryError e) {
            return "out of memory";
        }
    }

    /** Fills the heap until only the allowed memory is left. */
    private static List<byte[]> ballast() {
        List<byte[]> ballast = new ArrayList<>();
        while (spare() > ALLOWED) {
            ballast.add(new byte[BLOCK]);
        }
        return ballast;
    }

    private static long spare() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.maxMemory() - (runtime.totalMemory() - runtime.freeMemory());
    }
}
