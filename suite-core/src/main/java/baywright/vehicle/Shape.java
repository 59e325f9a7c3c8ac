package baywright.vehicle;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A kind of vehicle with its zones.
 *
 * @param id    stable kebab-case id such as {@code saloon}
 * @param title words for people
 * @param size  factor on work and items that count by the vehicle; the medium saloon is 1
 * @param zones in the order in which they are shown
 */
public record Shape(String id, String title, BigDecimal size, List<Zone> zones) {

    public Shape {
        zones = List.copyOf(zones);
    }

    public Optional<Zone> zone(String zoneId) {
        for (Zone zone : zones) {
            if (zone.id().equals(zoneId)) {
                return Optional.of(zone);
            }
        }
        return Optional.empty();
    }

    /** The zones by id, in their order. */
    public Map<String, Zone> zonesById() {
        Map<String, Zone> map = new LinkedHashMap<>();
        zones.forEach(z -> map.put(z.id(), z));
        return map;
    }
}
