package baywright.document;

import baywright.plan.StepWork;
import baywright.plan.ZoneNames;
import baywright.site.WorkedJob;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import baywright.workspace.Shop;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What a quote does not include: what this plan leaves out, then what no quote of the shop includes. */
final class Exclusions {

    private static final String PAINT = "paint";
    private static final String VEHICLE = "vehicle";

    private final Shop shop;
    private final WorkedJob worked;
    private final Shape shape;
    private final ZoneNames zones;
    private final Texts texts;

    Exclusions(Shop shop, WorkedJob worked, Shape shape, ZoneNames zones, Texts texts) {
        this.shop = shop;
        this.worked = worked;
        this.shape = shape;
        this.zones = zones;
        this.texts = texts;
    }

    List<String> all() {
        List<String> all = new ArrayList<>();
        notPolished(all);
        notCounted(all);
        notTouched(all);
        if (shop.quote().notIncluded().isEmpty()) {
            for (int n = 1; texts.find("not." + n).isPresent(); n++) {
                all.add(texts.of("not." + n));
            }
        } else {
            all.addAll(shop.quote().notIncluded());
        }
        return all;
    }

    /** Paint that stays as it is while the rest is machined. */
    private void notPolished(List<String> all) {
        Set<String> machined = new LinkedHashSet<>();
        worked.work().steps().stream()
                .flatMap(work -> work.removals().stream())
                .filter(removal -> removal.micrometres().likely().signum() > 0)
                .forEach(removal -> machined.add(removal.zone()));
        List<String> left = shape.zones().stream()
                .filter(zone -> zone.surface().equals(PAINT))
                .map(Zone::id)
                .filter(id -> !machined.contains(id))
                .toList();
        if (!left.isEmpty()) {
            all.add(machined.isEmpty() ? texts.of("not.any-polish") : texts.of("not.polished", named(left)));
        }
    }

    /** Counted faults on zones where no step takes them by their count. */
    private void notCounted(List<String> all) {
        Map<String, List<String>> left = new TreeMap<>();
        for (Zone zone : shape.zones()) {
            worked.setting().survey().zone(zone.id()).counts().forEach((driver, count) -> {
                if (count.signum() > 0 && worked.work().steps().stream().noneMatch(w -> mends(w, driver, zone.id()))) {
                    left.computeIfAbsent(driver, d -> new ArrayList<>()).add(zone.id());
                }
            });
        }
        left.forEach((driver, ids) ->
                all.add(texts.of("not.counted", texts.find("things." + driver).orElse(driver), named(ids))));
    }

    private static boolean mends(StepWork work, String driver, String zone) {
        return work.attended().stream()
                .anyMatch(line -> line.trail().driver().equals(driver)
                        && line.trail().zones().contains(zone));
    }

    /** Zones that no step works on. */
    private void notTouched(List<String> all) {
        Set<String> touched = new LinkedHashSet<>();
        worked.work().steps().forEach(work -> touched.addAll(work.zones()));
        Map<String, String> left = new LinkedHashMap<>();
        shape.zones().stream()
                .filter(zone -> !zone.surface().equals(VEHICLE) && !touched.contains(zone.id()))
                .forEach(zone -> left.put(zone.id(), zone.title()));
        if (!left.isEmpty()) {
            all.add(texts.of("not.touched", named(List.copyOf(left.keySet()))));
        }
    }

    private String named(List<String> ids) {
        return zones.of(ids, Integer.MAX_VALUE - 1);
    }
}
