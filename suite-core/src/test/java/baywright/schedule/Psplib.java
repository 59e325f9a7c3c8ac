package baywright.schedule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Scanner;

/** Reads single-mode files of PSPLIB; see {@code psplib/SOURCE.md}. */
public final class Psplib {

    /** A line of the table of known optima. */
    public record Known(String set, String file, int criticalPath, int optimum) {}

    private Psplib() {}

    static List<Known> known() {
        return text("optima.csv")
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .map(w -> new Known(w[0], w[1], Integer.parseInt(w[3]), Integer.parseInt(w[4])))
                .toList();
    }

    /** The files of a set: {@code j30}, {@code j60} or {@code j120}. */
    public static List<Known> known(String set) {
        return known().stream().filter(k -> k.set().equals(set)).toList();
    }

    /** A file as a project that ends as early as it can; minutes stand for its periods. */
    public static Project project(Known known) {
        return project(text(known.set() + "/" + known.file()));
    }

    private static String text(String name) {
        try (InputStream in = Psplib.class.getResourceAsStream("/psplib/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Project project(String text) {
        List<String> lines = text.lines().toList();
        List<Lag> lags = new ArrayList<>();
        for (int[] row : rows(lines, "PRECEDENCE RELATIONS:")) {
            for (int i = 3; i < row.length; i++) {
                lags.add(Lag.after(row[0] - 1, row[i] - 1));
            }
        }
        List<Activity> activities = new ArrayList<>();
        int horizon = 1;
        for (int[] row : rows(lines, "REQUESTS/DURATIONS:")) {
            List<Need> needs = new ArrayList<>();
            for (int r = 3; r < row.length; r++) {
                if (row[r] > 0) {
                    needs.add(Need.of(r - 3, row[r]));
                }
            }
            activities.add(Activity.of("j" + row[0], row[2], needs.toArray(Need[]::new)));
            horizon += row[2];
        }
        List<Resource> resources = new ArrayList<>();
        int[] capacities = rows(lines, "RESOURCEAVAILABILITIES:").get(0);
        for (int r = 0; r < capacities.length; r++) {
            resources.add(Resource.of("r" + (r + 1), capacities[r]));
        }
        return new Project(activities, resources, lags, List.of(), Goal.end(activities.size() - 1), horizon);
    }

    /** Lines of numbers of a section. */
    private static List<int[]> rows(List<String> lines, String section) {
        List<int[]> rows = new ArrayList<>();
        for (String line : lines.subList(lines.indexOf(section) + 1, lines.size())) {
            if (line.startsWith("***")) {
                break;
            }
            if (!line.isBlank() && new Scanner(line).hasNextInt()) {
                rows.add(Arrays.stream(line.trim().split("\\s+"))
                        .mapToInt(Integer::parseInt)
                        .toArray());
            }
        }
        return rows;
    }
}
