package baywright.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What to do after a mishap with a product: precautionary statements of Regulation (EC) No 1272/2008 for its hazard
 * statements, chosen by the UN table. Revision 10 of that table already uses newer codes for medical help; they are put back
 * to those of the regulation.
 *
 * @param firstAid codes for people
 * @param spill    codes for fire and spill
 * @param use      codes for use and storage
 */
public record Precautions(List<String> firstAid, List<String> spill, List<String> use) {

    private static final Map<String, String> BACK = Map.of(
            "P316", "P310",
            "P317", "P313",
            "P318", "P308+P313",
            "P319", "P314",
            "P302+P361+P354", "P303+P361+P353",
            "P305+P354+P338", "P305+P351+P338",
            "P301+P316", "P301+P310",
            "P301+P317", "P301+P312",
            "P333+P317", "P333+P313",
            "P337+P317", "P337+P313");

    private static final Map<String, String> BACK_TOO =
            Map.of("P332+P317", "P332+P313", "P342+P316", "P342+P311", "P265", "P264");

    /** Point to a label for the rest; a sheet that is not the label cannot say it. */
    private static final Set<String> ON_THE_LABEL = Set.of("P320", "P321", "P501", "P401");

    private static final int HELP_FROM = 300;
    private static final int FIRE_FROM = 370;
    private static final int STORE_FROM = 400;

    public Precautions {
        firstAid = List.copyOf(firstAid);
        spill = List.copyOf(spill);
        use = List.copyOf(use);
    }

    /** For a product with these H codes. */
    public static Precautions of(List<String> codes) {
        Statements known = Statements.in(java.util.Locale.ENGLISH);
        Set<String> advice = new LinkedHashSet<>();
        for (String code : codes) {
            String plain = code.substring(0, Math.min(code.length(), 4));
            for (UnTable.Row row : UnTable.read().rows(plain)) {
                row.advice().stream()
                        .map(p -> BACK.getOrDefault(p, BACK_TOO.getOrDefault(p, p)))
                        .filter(p -> known.knows(p) && !ON_THE_LABEL.contains(p))
                        .forEach(advice::add);
            }
        }
        Map<Integer, List<String>> sorted =
                advice.stream().collect(Collectors.groupingBy(Precautions::kind, Collectors.toList()));
        return new Precautions(
                sorted.getOrDefault(1, new ArrayList<>()),
                sorted.getOrDefault(2, new ArrayList<>()),
                sorted.getOrDefault(0, new ArrayList<>()));
    }

    private static int kind(String code) {
        int number = Integer.parseInt(code.substring(1, 4));
        if (number >= HELP_FROM && number < FIRE_FROM) {
            return 1;
        }
        return number >= FIRE_FROM && number < STORE_FROM ? 2 : 0;
    }
}
