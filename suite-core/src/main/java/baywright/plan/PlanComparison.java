package baywright.plan;

import baywright.vehicle.Shape;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Two plans for one vehicle side by side.
 *
 * @param rows steps of both in order; steps of one stage that could be the same stand in one row
 */
public record PlanComparison(List<Row> rows) {

    /** How the two sides of a row differ. */
    public enum Kind {
        SAME,
        /** The same stage with other zones, inputs, priority, start or amounts. */
        CHANGED,
        /** The same step stands elsewhere in the other plan. */
        MOVED,
        LEFT_ONLY,
        RIGHT_ONLY
    }

    /** A step of the left plan, of the right one, or of both. */
    public record Row(Optional<Step> left, Optional<Step> right, Kind kind) {}

    private static final int STAGE = 1;
    private static final int ZONES = 2;
    private static final int ALL = 4;

    public PlanComparison {
        rows = List.copyOf(rows);
    }

    /** Sets two plans beside each other so that as many steps as possible face an equal one; neither ids matter nor how zones are written. */
    public static PlanComparison of(Plan left, Plan right, Shape shape) {
        List<Step> a = left.steps();
        List<Step> b = right.steps();
        List<Step> meantA = a.stream().map(s -> meant(s, shape)).toList();
        List<Step> meantB = b.stream().map(s -> meant(s, shape)).toList();
        int[][] best = new int[a.size() + 1][b.size() + 1];
        for (int i = a.size() - 1; i >= 0; i--) {
            for (int j = b.size() - 1; j >= 0; j--) {
                int alike = alike(meantA.get(i), meantB.get(j));
                best[i][j] =
                        Math.max(alike == 0 ? 0 : alike + best[i + 1][j + 1], Math.max(best[i + 1][j], best[i][j + 1]));
            }
        }
        List<Row> rows = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            int alike = i < a.size() && j < b.size() ? alike(meantA.get(i), meantB.get(j)) : 0;
            if (alike > 0 && best[i][j] == alike + best[i + 1][j + 1]) {
                Kind kind = alike == ALL ? Kind.SAME : Kind.CHANGED;
                rows.add(new Row(Optional.of(a.get(i++)), Optional.of(b.get(j++)), kind));
            } else if (j == b.size() || (i < a.size() && best[i + 1][j] >= best[i][j + 1])) {
                rows.add(new Row(Optional.of(a.get(i++)), Optional.empty(), Kind.LEFT_ONLY));
            } else {
                rows.add(new Row(Optional.empty(), Optional.of(b.get(j++)), Kind.RIGHT_ONLY));
            }
        }
        markMoved(rows, shape);
        return new PlanComparison(rows);
    }

    /** The step with its zones one by one; zones that the vehicle does not have stay as they are written. */
    private static Step meant(Step step, Shape shape) {
        List<String> zones = ZoneChoice.resolve(step.zones(), shape);
        return zones.isEmpty() ? step : Steps.withZones(step, zones);
    }

    private static int alike(Step a, Step b) {
        if (!a.stage().equals(b.stage())) {
            return 0;
        }
        if (!a.zones().equals(b.zones())) {
            return STAGE;
        }
        return same(a, b) ? ALL : ZONES;
    }

    private static boolean same(Step a, Step b) {
        return a.priority() == b.priority()
                && a.at().equals(b.at())
                && a.drivers().equals(b.drivers())
                && a.with().keySet().equals(b.with().keySet())
                && a.with().keySet().stream()
                        .allMatch(k ->
                                a.with().get(k).raw().equals(b.with().get(k).raw()));
    }

    private static void markMoved(List<Row> rows, Shape shape) {
        List<Integer> taken = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).kind() != Kind.LEFT_ONLY) {
                continue;
            }
            Step left = meant(rows.get(i).left().orElseThrow(), shape);
            for (int j = 0; j < rows.size(); j++) {
                Row other = rows.get(j);
                if (other.kind() == Kind.RIGHT_ONLY
                        && !taken.contains(j)
                        && alike(left, meant(other.right().orElseThrow(), shape)) == ALL) {
                    rows.set(i, new Row(rows.get(i).left(), Optional.empty(), Kind.MOVED));
                    rows.set(j, new Row(Optional.empty(), other.right(), Kind.MOVED));
                    Collections.addAll(taken, i, j);
                    break;
                }
            }
        }
    }

    /** How many rows differ in some way; a moved step counts once. */
    public int differences() {
        return (int) rows.stream()
                .filter(r -> r.kind() != Kind.SAME)
                .filter(r -> r.kind() != Kind.MOVED || r.left().isPresent())
                .count();
    }
}
