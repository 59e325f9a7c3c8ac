package baywright.chance;

import baywright.quantity.ThreePoint;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Published networks, and how their tables are written down here. */
final class Networks {

    private Networks() {}

    /**
     * A network from lines such as {@code E: 1,10,17; B C}: name, three points, predecessors.
     *
     * @param table lines
     */
    static Network of(String table) {
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        table.lines().filter(line -> !line.isBlank()).forEach(line -> {
            String name = line.substring(0, line.indexOf(':')).trim();
            String[] rest = line.substring(line.indexOf(':') + 1).split(";", -1);
            String[] points = rest[0].trim().split(",", -1);
            activities.add(Activity.of(name, ThreePoint.of(points[0], points[1], points[2])));
            if (rest.length > 1 && !rest[1].isBlank()) {
                for (String before : rest[1].trim().split(" ", -1)) {
                    links.add(Link.after(before, name));
                }
            }
        });
        return new Network(activities, links);
    }

    /** A network from arrows such as {@code 1-2: 7}: an arrow waits for all that end where it begins. */
    static Network ofArrows(String... arrows) {
        Map<String, String> times = new LinkedHashMap<>();
        for (String arrow : arrows) {
            times.put(arrow.split(":", -1)[0], arrow.split(":", -1)[1].trim());
        }
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        times.forEach((arrow, time) -> {
            BigDecimal minutes = new BigDecimal(time);
            activities.add(Activity.of(arrow, new ThreePoint(minutes, minutes, minutes)));
            for (String before : times.keySet()) {
                if (before.split("-", -1)[1].equals(arrow.split("-", -1)[0])) {
                    links.add(Link.after(before, arrow));
                }
            }
        });
        return new Network(activities, links);
    }

    /** A problem of Render, Stair, Hanna, Quantitative Analysis for Management. */
    static Network fourteen() {
        return of("""
                A: 5,5,7;
                B: 1,2,5;
                C: 5,5,5; A
                D: 4,8,13; A
                E: 1,10,17; B C
                F: 1,5,7; D
                G: 2,6,9; D
                H: 4,4,6; E F
                I: 2,7,10; G H
                J: 2,4,7; I
                K: 6,10,13; I
                L: 2,6,6; J
                M: 2,2,3; K
                N: 7,7,12; L M
                """);
    }

    /** Render, Stair, Hanna, and Heizer, Render, Operations Management, chapter on project management. */
    static Network eight() {
        return of("""
                A: 1,2,3;
                B: 2,3,4;
                C: 1,2,3; A
                D: 2,4,6; B
                E: 1,4,7; C
                F: 1,2,9; C
                G: 3,4,11; D E
                H: 1,2,3; F G
                """);
    }

    /** Hillier, Lieberman, Introduction to Operations Research, chapter on project management, prototype example. */
    static Network prototype() {
        return of("""
                A: 1,2,3;
                B: 2,3.5,8; A
                C: 6,9,18; B
                D: 4,5.5,10; C
                E: 1,4.5,5; C
                F: 4,4,10; E
                G: 5,6.5,11; D
                H: 5,8,17; E G
                I: 3,7.5,9; C
                J: 3,9,9; F I
                K: 4,4,4; J
                L: 1,5.5,7; J
                M: 1,2,3; H
                N: 5,5.5,9; K L
                """);
    }

    /** So many activities side by side, all with the same estimate. */
    static Network sideBySide(int count, ThreePoint minutes, Loadings loadings) {
        List<Activity> activities = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            activities.add(Activity.of("a" + i, minutes).with(loadings));
        }
        return new Network(activities, List.of());
    }

    /** A made-up network of a given size in which most activities wait for one to three of those shortly before. */
    static Network large(int size) {
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int least = 5 + i * 7 % 20;
            activities.add(Activity.of(
                            "a" + i,
                            ThreePoint.of(
                                    String.valueOf(least),
                                    String.valueOf(least + 3 + i % 5),
                                    String.valueOf(least + 15 + i * 3 % 25)))
                    .with(Loadings.evenly(0.5, List.of("paint" + i % 3)))
                    .with(new Rework(0.06, 0.5))
                    .costing(0.5));
            for (int back = 1; back <= 3 && back <= i; back += 1 + i % 2) {
                links.add(Link.after("a" + (i - back), "a" + i));
            }
        }
        return new Network(activities, links);
    }
}
