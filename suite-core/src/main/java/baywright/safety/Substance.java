package baywright.safety;

import java.util.List;
import java.util.Optional;

/**
 * A solvent with its limits in the air of a workplace. All limits here were written down from memory or from copies of the
 * named publications: check them against the current one before you rely on them.
 *
 * @param id        kebab-case name
 * @param title     words for people
 * @param molarMass g/mol
 * @param density   g/ml
 * @param limits    published limits
 */
public record Substance(String id, String title, double molarMass, double density, List<Limit> limits) {

    public Substance {
        limits = List.copyOf(limits);
    }

    /**
     * A published limit.
     *
     * @param rule        id of the list: {@code uk} or {@code us}
     * @param ppm         eight-hour average
     * @param milligrams  the same in mg/m³ as printed
     * @param shortPpm    fifteen-minute average, where there is one
     * @param source      publication
     * @param checked     whether the figure was read in the publication or a copy; otherwise from memory
     */
    public record Limit(
            String rule, double ppm, double milligrams, Optional<Double> shortPpm, String source, boolean checked) {}

    private static final String EH40 = "EH40/2005";

    /** Solvents of the trade's products; which of them an item holds is for the shop to say, from the data sheet. */
    public static final List<Substance> ALL = List.of(
            new Substance(
                    "propan-2-ol",
                    "Propan-2-ol",
                    60.1,
                    0.785,
                    List.of(
                            uk(400, 999, Optional.of(500.0)),
                            new Limit(
                                    "us",
                                    400,
                                    980,
                                    Optional.of(500.0),
                                    "NIOSH Pocket Guide, isopropyl alcohol",
                                    true))),
            new Substance("acetone", "Acetone", 58.08, 0.79, List.of(uk(500, 1210, Optional.of(1500.0)))),
            new Substance("xylene", "Xylene", 106.17, 0.86, List.of(uk(50, 220, Optional.of(100.0)))),
            new Substance("toluene", "Toluene", 92.14, 0.87, List.of(uk(50, 191, Optional.of(100.0)))),
            new Substance(
                    "methoxypropanol", "1-Methoxypropan-2-ol", 90.12, 0.92, List.of(uk(100, 375, Optional.of(150.0)))),
            new Substance("butyl-acetate", "n-Butyl acetate", 116.16, 0.88, List.of(uk(150, 724, Optional.of(200.0)))),
            new Substance("ethanol", "Ethanol", 46.07, 0.79, List.of(uk(1000, 1920, Optional.empty()))));

    private static Limit uk(double ppm, double milligrams, Optional<Double> shortPpm) {
        return new Limit("uk", ppm, milligrams, shortPpm, EH40, false);
    }

    public static Optional<Substance> of(String id) {
        return ALL.stream().filter(s -> s.id.equals(id)).findFirst();
    }

    /** The limit of a list, or of the first list that has one. */
    public Limit limit(String rule) {
        return limits.stream().filter(l -> l.rule().equals(rule)).findFirst().orElse(limits.get(0));
    }
}
