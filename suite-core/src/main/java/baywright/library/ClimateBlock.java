package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Climate;
import baywright.library.StageTerms.Origin;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** {@code climate { }}: what surface and air must be like. */
final class ClimateBlock extends Blocks {

    private static final BigDecimal ABSOLUTE_ZERO = new BigDecimal("-273.15");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static final Section SECTION = new Section(
            "climate",
            "in 'climate { }'",
            "Bounds on the surface's temperature and the air's humidity.",
            List.of(
                    word("between")
                            .takes("coldest", Type.TEMPERATURE)
                            .takes("warmest", Type.TEMPERATURE)
                            .means("the surface's temperature lies between these")
                            .example("between 5.C, 30.C"),
                    word("humidity")
                            .takes("driest", Type.RATIO)
                            .takes("dampest", Type.RATIO)
                            .means("the air's relative humidity lies between these")
                            .example("humidity 40.percent, 65.percent")));

    private Optional<Quantity> coldest = Optional.empty();
    private Optional<Quantity> warmest = Optional.empty();
    private Optional<Quantity> driest = Optional.empty();
    private Optional<Quantity> dampest = Optional.empty();
    private Optional<Origin> origin = Optional.empty();

    ClimateBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        onlyOnce(call);
        origin = origin.or(() -> Optional.of(origin(call)));
        if (call.word().name().equals("between")) {
            if (inOrder(call, "coldest", "warmest", ABSOLUTE_ZERO, Optional.empty())) {
                coldest = Optional.of(call.quantity("coldest"));
                warmest = Optional.of(call.quantity("warmest"));
            }
        } else if (inOrder(call, "driest", "dampest", BigDecimal.ZERO, Optional.of(HUNDRED))) {
            driest = Optional.of(call.quantity("driest"));
            dampest = Optional.of(call.quantity("dampest"));
        }
    }

    private static boolean inOrder(Call call, String low, String high, BigDecimal floor, Optional<BigDecimal> ceiling) {
        BigDecimal least = call.quantity(low).inBase();
        BigDecimal most = call.quantity(high).inBase();
        boolean good = least.compareTo(floor) >= 0
                && least.compareTo(most) <= 0
                && ceiling.map(c -> most.compareTo(c) <= 0).orElse(true);
        if (!good) {
            call.badValue(
                    call.value(high).place(),
                    "'" + call.word().name() + "' wants two bounds in rising order, from " + floor.toPlainString()
                            + ceiling.map(c -> " to " + c.toPlainString()).orElse(""));
        }
        return good;
    }

    Climate build() {
        return origin.isEmpty() ? Climate.ANY : new Climate(coldest, warmest, driest, dampest, origin);
    }
}
