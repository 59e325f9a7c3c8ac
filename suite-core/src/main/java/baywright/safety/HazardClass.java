package baywright.safety;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One class and category with its label elements (Regulation (EC) No 1272/2008, annex I, parts 2 to 5).
 *
 * @param id         such as {@code Flam. Liq. 2}
 * @param hazard     title of the class
 * @param codes      its H codes
 * @param pictograms its pictograms
 * @param signal     its signal word
 * @param agrees     whether the UN table says the same
 */
public record HazardClass(
        String id, String hazard, List<String> codes, List<Pictogram> pictograms, Signal signal, boolean agrees) {

    /** Every class and category, in the annex's order. */
    public static final List<HazardClass> ALL = read();

    public HazardClass {
        codes = List.copyOf(codes);
        pictograms = List.copyOf(pictograms);
    }

    private static List<HazardClass> read() {
        String text = new String(Resources.bytes("ghs/clp-class-label-elements.csv"), StandardCharsets.UTF_8);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(new StringReader(text))) {
            List<HazardClass> all = new ArrayList<>();
            for (CSVRecord row : parser) {
                all.add(new HazardClass(
                        row.get("class_category"),
                        row.get("hazard_class"),
                        split(row.get("h_codes")),
                        split(row.get("pictograms")).stream()
                                .map(Pictogram::valueOf)
                                .toList(),
                        signal(row.get("signal_word")),
                        row.get("agrees_with_un_rev10_table").equals("yes")));
            }
            return List.copyOf(all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> split(String cell) {
        return cell.isEmpty() ? List.of() : Arrays.asList(cell.split("\\+", -1));
    }

    private static Signal signal(String word) {
        return switch (word) {
            case "Danger" -> Signal.DANGER;
            case "Warning" -> Signal.WARNING;
            default -> Signal.NONE;
        };
    }

    /**
     * The class with this id.
     *
     * @throws IllegalArgumentException when there is none; the message names it
     */
    public static HazardClass of(String id) {
        return ALL.stream()
                .filter(c -> c.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no hazard class is called '" + id + "'"));
    }

    /**
     * The classes that a product's statements speak of. Where a code stands for several categories, the gravest; an
     * aerosol's is that of the flammability statement beside it.
     *
     * @param codes H codes with or without suffix letters, single or joined by {@code +}; others are passed over
     */
    public static List<HazardClass> ofCodes(List<String> codes) {
        List<String> single = codes.stream()
                .filter(c -> c.startsWith("H"))
                .flatMap(c -> Arrays.stream(c.split("\\+", -1)))
                .map(c -> c.substring(0, Math.min(c.length(), 4)))
                .distinct()
                .toList();
        List<HazardClass> found = new ArrayList<>();
        for (String code : single) {
            Optional<HazardClass> gravest = code.equals("H229")
                    ? Optional.of(of(aerosol(single)))
                    : ALL.stream().filter(c -> c.codes.contains(code)).max(Comparator.comparing(HazardClass::signal));
            gravest.filter(c -> !found.contains(c)).ifPresent(found::add);
        }
        return found;
    }

    private static String aerosol(List<String> codes) {
        if (codes.contains("H222")) {
            return "Aerosol 1";
        }
        return codes.contains("H223") ? "Aerosol 2" : "Aerosol 3";
    }

    boolean is(String prefix) {
        return id.startsWith(prefix);
    }
}
