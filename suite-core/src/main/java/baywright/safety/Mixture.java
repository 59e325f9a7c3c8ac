package baywright.safety;

import java.util.List;
import java.util.Optional;

/**
 * Acute toxicity of a mixture by the additivity formula (annex I, 3.1.3.6, of the UN system and of Regulation (EC) No
 * 1272/2008). Thinning a product with water at the bench is not a new classification: its data sheet is for the
 * concentrate that people pour, and stays in force until a sheet for the thinned product says otherwise.
 *
 * @param estimate acute toxicity estimate of the mixture, in the route's unit; empty: nothing in it counts
 * @param category 1 to 4, or 0: not classified
 * @param unknown  percent of the mixture whose toxicity nobody knows
 */
public record Mixture(Optional<Double> estimate, int category, double unknown) {

    /** How the mixture meets the body, with the upper borders of categories 1 to 4 (table 3.1.1) and the point estimates. */
    public enum Route {
        ORAL("mg/kg", List.of(5.0, 50.0, 300.0, 2000.0), List.of(0.5, 5.0, 100.0, 500.0), 5000),
        DERMAL("mg/kg", List.of(50.0, 200.0, 1000.0, 2000.0), List.of(5.0, 50.0, 300.0, 1100.0), 5000),
        GASES("ppmV", List.of(100.0, 500.0, 2500.0, 20000.0), List.of(10.0, 100.0, 700.0, 4500.0), 20000),
        VAPOURS("mg/l", List.of(0.5, 2.0, 10.0, 20.0), List.of(0.05, 0.5, 3.0, 11.0), 20),
        DUST_AND_MIST("mg/l", List.of(0.05, 0.5, 1.0, 5.0), List.of(0.005, 0.05, 0.5, 1.5), 5);

        private final String unit;

        // lists of List.of never change
        @SuppressWarnings("ImmutableEnumChecker")
        private final List<Double> borders;

        @SuppressWarnings("ImmutableEnumChecker")
        private final List<Double> points;

        private final double countsInUn;

        Route(String unit, List<Double> borders, List<Double> points, double countsInUn) {
            this.unit = unit;
            this.borders = borders;
            this.points = points;
            this.countsInUn = countsInUn;
        }

        public String unit() {
            return unit;
        }

        /**
         * Estimate that stands for an ingredient of which only the category is known (table 3.1.2).
         *
         * @param category 1 to 4
         */
        public double pointEstimate(int category) {
            if (category < 1 || category > points.size()) {
                throw new IllegalArgumentException("a category of acute toxicity is 1 to 4, got " + category);
            }
            return points.get(category - 1);
        }

        /** Category of an estimate, borders included; 0: none. */
        public int category(double estimate) {
            for (int i = 0; i < borders.size(); i++) {
                // a border reached by arithmetic may lie a rounding error above itself
                if (estimate <= borders.get(i) * (1 + 1e-12)) {
                    return i + 1;
                }
            }
            return 0;
        }
    }

    /** Whose rule says which ingredients count: all to 5000 mg/kg (UN, with its category 5), or categories 1 to 4 (EU). */
    public enum Rule {
        UN,
        EU
    }

    /**
     * One ingredient.
     *
     * @param percent  share of the mixture, above 0 to 100
     * @param estimate its acute toxicity estimate; empty: nobody knows it
     */
    public record Ingredient(double percent, Optional<Double> estimate) {
        public Ingredient {
            if (!(percent > 0 && percent <= 100)) {
                throw new IllegalArgumentException("an ingredient's share is above 0 to 100 %, got " + percent);
            }
            if (estimate.isPresent() && !(estimate.get() > 0)) {
                throw new IllegalArgumentException("an acute toxicity estimate is above 0, got " + estimate.get());
            }
        }

        public static Ingredient of(double percent, double estimate) {
            return new Ingredient(percent, Optional.of(estimate));
        }

        public static Ingredient unknown(double percent) {
            return new Ingredient(percent, Optional.empty());
        }
    }

    private static final double TOLD_FROM = 10;

    /**
     * Reckons {@code (100 - unknown above 10 %) / ATE = sum of Ci / ATEi}. What is harmless need not be listed.
     *
     * @throws IllegalArgumentException when the shares come to more than 100 %
     */
    public static Mixture of(Route route, Rule rule, List<Ingredient> ingredients) {
        double all = ingredients.stream().mapToDouble(Ingredient::percent).sum();
        if (all > 100 + 1e-9) {
            throw new IllegalArgumentException("the shares of a mixture come to 100 % at most, got " + all);
        }
        double unknown = ingredients.stream()
                .filter(i -> i.estimate().isEmpty())
                .mapToDouble(Ingredient::percent)
                .sum();
        double counts = rule == Rule.UN ? route.countsInUn : route.borders.get(route.borders.size() - 1);
        double sum = ingredients.stream()
                .filter(i -> i.estimate().isPresent() && i.estimate().get() <= counts)
                .mapToDouble(i -> i.percent() / i.estimate().get())
                .sum();
        if (sum == 0) {
            return new Mixture(Optional.empty(), 0, unknown);
        }
        double estimate = (100 - (unknown > TOLD_FROM ? unknown : 0)) / sum;
        return new Mixture(Optional.of(estimate), route.category(estimate), unknown);
    }

    /** The sentence that a label must carry when part of the mixture is unknown; empty when all is known. */
    public Optional<String> sentence() {
        return unknown == 0
                ? Optional.empty()
                : Optional.of(java.math.BigDecimal.valueOf(unknown)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " percent of the mixture consists of ingredients of unknown acute toxicity.");
    }
}
