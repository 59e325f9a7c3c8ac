package baywright.plan;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which zones a step's list means. An entry is a zone's id, {@code surface:paint} for every zone with that surface, or
 * either with {@code -} in front to leave those out. What is left out stays out wherever it was written.
 *
 * @param zones   ids chosen, each once, in the vehicle's order
 * @param unknown ids as written that name no zone, without the {@code -}
 * @param empty   surfaces asked for that no zone of the vehicle has
 */
public record ZoneChoice(List<String> zones, List<String> unknown, List<String> empty) {

    private static final String SURFACE = "surface:";

    public ZoneChoice {
        zones = List.copyOf(zones);
        unknown = List.copyOf(unknown);
        empty = List.copyOf(empty);
    }

    /** Reads the list as a step writes it. */
    public static ZoneChoice of(List<String> written, Shape shape) {
        Set<String> in = new LinkedHashSet<>();
        Set<String> out = new LinkedHashSet<>();
        Set<String> unknown = new LinkedHashSet<>();
        Set<String> empty = new LinkedHashSet<>();
        for (String entry : written) {
            boolean without = entry.startsWith("-");
            String name = without ? entry.substring(1) : entry;
            Set<String> target = without ? out : in;
            if (name.startsWith(SURFACE)) {
                String surface = name.substring(SURFACE.length());
                List<String> having = shape.zones().stream()
                        .filter(z -> z.surface().equals(surface))
                        .map(Zone::id)
                        .toList();
                target.addAll(having);
                if (having.isEmpty()) {
                    empty.add(surface);
                }
            } else if (shape.zone(name).isPresent()) {
                target.add(name);
            } else {
                unknown.add(name);
            }
        }
        List<String> zones = new ArrayList<>();
        for (Zone zone : shape.zones()) {
            if (in.contains(zone.id()) && !out.contains(zone.id())) {
                zones.add(zone.id());
            }
        }
        return new ZoneChoice(zones, List.copyOf(unknown), List.copyOf(empty));
    }

    /** The ids chosen, in the vehicle's order; what names no zone is passed over. */
    public static List<String> resolve(List<String> written, Shape shape) {
        return of(written, shape).zones();
    }

    /**
     * The shortest list that means these zones: a whole surface in one word, one that lacks a zone or two with {@code -}.
     *
     * @param ids zones; those that the vehicle does not have are passed over
     */
    public static List<String> written(Collection<String> ids, Shape shape) {
        Map<String, List<String>> bySurface = new LinkedHashMap<>();
        shape.zones()
                .forEach(zone -> bySurface
                        .computeIfAbsent(zone.surface(), s -> new ArrayList<>())
                        .add(zone.id()));
        List<String> written = new ArrayList<>();
        bySurface.forEach((surface, zones) -> {
            List<String> in = zones.stream().filter(ids::contains).toList();
            List<String> out = zones.stream().filter(z -> !ids.contains(z)).toList();
            if (zones.size() > 1 && out.size() + 1 < in.size()) {
                written.add(SURFACE + surface);
                out.forEach(z -> written.add("-" + z));
            } else {
                written.addAll(in);
            }
        });
        return written;
    }
}
