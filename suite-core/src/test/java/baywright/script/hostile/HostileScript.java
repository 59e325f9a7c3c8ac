package baywright.script.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import baywright.script.Problem;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One script of the set, a row of {@code hostile/index.tsv}.
 *
 * @param name    path below {@code hostile}; its folder is the technique
 * @param danger  what it does to a program that runs it
 * @param place   where the loader must refuse it, as {@code line:column}; {@code 0:0} for the whole file
 * @param message how the refusal starts
 * @param what    what the script does, for the reader
 */
public record HostileScript(String name, Danger danger, String place, String message, String what) {

    public static List<HostileScript> all() {
        List<HostileScript> all = new ArrayList<>();
        for (String line : read("index.tsv").lines().skip(1).toList()) {
            String[] cells = line.split("\t", -1);
            if (cells.length != 5) {
                throw new IllegalStateException("index.tsv wants five cells in a row, got: " + line);
            }
            all.add(new HostileScript(cells[0], Danger.of(cells[1]), cells[2], cells[3], cells[4]));
        }
        return all;
    }

    String technique() {
        return name.substring(0, name.indexOf('/'));
    }

    /** Whether what was seen is what the index says; exhaustion of time, stack and memory stand for each other. */
    boolean isShownBy(Danger seen) {
        return seen == danger || (seen.exhausts() && danger.exhausts());
    }

    /** The start of the loader's refusal as the terminal shows it. */
    String refusal() {
        String file = Loading.HOSTILE + (place.equals("0:0") ? "" : ":" + place);
        return file + ": " + message;
    }

    /** Whether this is the refusal that the index wants; a script may have other faults besides. */
    boolean isRefusedBy(Problem problem) {
        return problem.toString().startsWith(refusal());
    }

    /** Writes the script as it would lie on the disk. */
    public void writeTo(Path file, int port) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            Template.write(read(name), port, out);
        }
    }

    @Override
    public String toString() {
        return name;
    }

    private static String read(String name) {
        try (InputStream in = HostileScript.class.getResourceAsStream("/hostile/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the index names a script that is not there: " + name);
            }
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
