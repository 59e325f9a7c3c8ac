package baywright.plan;

import baywright.library.Fact;
import baywright.library.InputValues;
import baywright.library.Library;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The surveyed facts of each zone: the vehicle's, overlaid by the zone's own, with what the shape itself tells
 * ({@code size}, {@code substrate}) where the library declares such a fact and the survey says nothing. Zones with the
 * same facts share a number.
 */
final class FactSheet {

    static final String SIZE = "size";

    private static final Place SURVEY = Place.ofFile("survey");
    private static final String SUBSTRATE = "substrate";

    private final Map<String, Fact> declared = new TreeMap<>();
    private final List<Map<String, Value>> sheets = new ArrayList<>();
    private final int[] sheetOfRow;
    private final BigDecimal size;
    private final List<Finding> bad = new ArrayList<>();

    FactSheet(Library library, VehicleIndex vehicle, Survey survey) {
        library.facts().forEach(f -> declared.putIfAbsent(f.id(), f));
        Shape shape = vehicle.shape();
        size = shape.size();
        Map<String, Value> whole = new TreeMap<>();
        if (declared.containsKey(SIZE)) {
            whole.put(SIZE, Value.of(size, SURVEY));
        }
        whole.putAll(read(survey.facts(), List.of()));
        Map<Map<String, Object>, Integer> numbers = new HashMap<>();
        sheetOfRow = new int[vehicle.rows()];
        for (int row = 0; row < sheetOfRow.length; row++) {
            Map<String, Value> sheet = row == vehicle.vehicle() ? whole : ofZone(vehicle.id(row), whole, shape, survey);
            Map<String, Object> raws = new TreeMap<>();
            sheet.forEach((id, value) -> raws.put(id, value.raw()));
            Integer known = numbers.putIfAbsent(raws, sheets.size());
            if (known == null) {
                sheetOfRow[row] = sheets.size();
                sheets.add(Map.copyOf(sheet));
            } else {
                sheetOfRow[row] = known;
            }
        }
    }

    private Map<String, Value> ofZone(String id, Map<String, Value> whole, Shape shape, Survey survey) {
        Map<String, Value> sheet = new TreeMap<>(whole);
        Optional<Zone> zone = shape.zone(id);
        if (zone.isPresent() && declared.containsKey(SUBSTRATE) && !whole.containsKey(SUBSTRATE)) {
            fit(declared.get(SUBSTRATE), zone.get().substrate()).ifPresent(v -> sheet.put(SUBSTRATE, v));
        }
        sheet.putAll(read(survey.zone(id).facts(), List.of(id)));
        return sheet;
    }

    private Map<String, Value> read(Map<String, String> facts, List<String> zones) {
        Map<String, Value> read = new TreeMap<>();
        for (Map.Entry<String, String> entry : new TreeMap<>(facts).entrySet()) {
            Fact fact = declared.get(entry.getKey());
            Optional<Value> value = fact == null ? Optional.empty() : fit(fact, entry.getValue());
            if (value.isPresent()) {
                read.put(entry.getKey(), value.get());
            } else {
                bad.add(badFact(entry.getKey(), entry.getValue(), fact, zones));
            }
        }
        return read;
    }

    private static Optional<Value> fit(Fact fact, String text) {
        return InputValues.fit(fact, Value.of(text, SURVEY));
    }

    private Finding badFact(String id, String met, Fact fact, List<String> zones) {
        String nearest = Nearest.to(fact == null ? id : met, fact == null ? declared.keySet() : fact.choices())
                .orElse("");
        String wanted = fact == null ? "" : InputValues.wanted(fact);
        return new Finding(
                Codes.BAD_FACT, Severity.STOP, Optional.empty(), zones, new Reason.BadFact(id, met, wanted, nearest));
    }

    /** Facts and values that the library does not know, as findings. */
    List<Finding> bad() {
        return bad;
    }

    int sheetOf(int row) {
        return sheetOfRow[row];
    }

    Map<String, Value> facts(int sheet) {
        return sheets.get(sheet);
    }

    Optional<Fact> fact(String id) {
        return Optional.ofNullable(declared.get(id));
    }

    boolean isFact(String name) {
        return declared.containsKey(name);
    }

    /** What a fact is on a sheet, as text: surveyed, else usual, else empty. */
    String text(int sheet, String id) {
        Value value = sheets.get(sheet).get(id);
        if (value != null) {
            return Texts.of(value);
        }
        Fact fact = declared.get(id);
        return fact == null ? "" : fact.usual();
    }

    boolean isSurveyed(int sheet, String id) {
        return sheets.get(sheet).containsKey(id);
    }

    BigDecimal size() {
        return size;
    }
}
