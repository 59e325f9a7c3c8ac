package baywright.safety;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Label elements of a substance or mixture by the rules of precedence of Regulation (EC) No 1272/2008, articles 20, 26
 * and 27. The product's own label goes first.
 *
 * @param statements every H code, each once, in order of the classes
 * @param pictograms pictograms to be shown, by number
 * @param optional   those of them that art. 26(1)(a) and (e) leave to the supplier
 * @param signal     the signal word
 */
public record Label(List<String> statements, List<Pictogram> pictograms, List<Pictogram> optional, Signal signal) {

    public Label {
        statements = List.copyOf(statements);
        pictograms = List.copyOf(pictograms);
        optional = List.copyOf(optional);
    }

    /** Label elements of a product from its statement codes, as a data sheet's section 2 lists them. */
    public static Label ofCodes(List<String> codes) {
        Label label = of(HazardClass.ofCodes(codes));
        return new Label(codes, label.pictograms, label.optional, label.signal);
    }

    /** Label elements from classes and categories. */
    public static Label of(List<HazardClass> classes) {
        Set<String> statements = new LinkedHashSet<>();
        Signal signal = Signal.NONE;
        for (HazardClass one : classes) {
            statements.addAll(one.codes());
            signal = one.signal().compareTo(signal) > 0 ? one.signal() : signal;
        }
        Set<Pictogram> shown = shown(classes);
        return new Label(
                List.copyOf(statements),
                List.copyOf(new TreeSet<>(shown)),
                List.copyOf(new TreeSet<>(optional(classes, shown))),
                signal);
    }

    private static Set<Pictogram> shown(List<HazardClass> classes) {
        boolean skull = has(classes, Pictogram.GHS06);
        boolean corrosive = classes.stream().anyMatch(c -> c.is("Skin Corr.") || c.is("Eye Dam."));
        boolean respiratory = classes.stream().anyMatch(c -> c.is("Resp. Sens."));
        Set<Pictogram> shown = EnumSet.noneOf(Pictogram.class);
        for (HazardClass one : classes) {
            boolean irritates = one.is("Skin Irrit.") || one.is("Eye Irrit.");
            boolean sensitises = one.is("Skin Sens.");
            for (Pictogram pictogram : one.pictograms()) {
                boolean covered = pictogram == Pictogram.GHS07
                        && (skull || (corrosive && irritates) || (respiratory && (irritates || sensitises)));
                if (!covered) {
                    shown.add(pictogram);
                }
            }
        }
        return shown;
    }

    private static Set<Pictogram> optional(List<HazardClass> classes, Set<Pictogram> shown) {
        Set<Pictogram> optional = EnumSet.noneOf(Pictogram.class);
        if (shown.contains(Pictogram.GHS01)) {
            for (Pictogram other : List.of(Pictogram.GHS02, Pictogram.GHS03)) {
                boolean demanded = classes.stream()
                        .anyMatch(
                                c -> c.pictograms().size() > 1 && c.pictograms().contains(other));
                if (shown.contains(other) && !demanded) {
                    optional.add(other);
                }
            }
        }
        boolean flameOrSkull = shown.contains(Pictogram.GHS02) || shown.contains(Pictogram.GHS06);
        if (flameOrSkull && shown.contains(Pictogram.GHS04)) {
            optional.add(Pictogram.GHS04);
        }
        return optional;
    }

    private static boolean has(List<HazardClass> classes, Pictogram pictogram) {
        return classes.stream().anyMatch(c -> c.pictograms().contains(pictogram));
    }

    /**
     * The statements without those that a graver one says already: H318 beside H314, H400 beside H410 (art. 27 and its
     * guidance, from memory).
     */
    public List<String> merged() {
        List<String> merged = new ArrayList<>(statements);
        if (merged.contains("H314")) {
            merged.remove("H318");
        }
        if (merged.contains("H410")) {
            merged.remove("H400");
        }
        return merged;
    }
}
