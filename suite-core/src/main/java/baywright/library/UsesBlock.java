package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Use;
import baywright.quantity.Dilution;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code uses { }}: consumables. */
final class UsesBlock extends Blocks {

    private static final Type DILUTION = Type.TEXT.called("a dilution", "dilutions", "'1:10'");

    static final Section SECTION = new Section(
            "uses",
            "in 'uses { }'",
            "Consumables from the price list.",
            List.of(word("item")
                    .takes(
                            "item",
                            Type.ID.called("an item", "items", "'iron-remover'").naming("item"))
                    .takes("amount", Type.QUANTITY)
                    .named("per", TimeBlock.DRIVER, "vehicle")
                    .named("times", TimeBlock.FACTOR, BigDecimal.ONE)
                    .named("diluted", DILUTION)
                    .means(
                            "an amount for each unit of the driver; with 'diluted:' the amount is ready mix: '1:10' is one"
                                    + " part in eleven, '1 in 10' one part in ten")
                    .example("item 'iron-remover', 75.ml, per: 'm2', times: passes")));

    private final List<Use> uses = new ArrayList<>();

    UsesBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        Quantity amount = call.quantity("amount");
        if (amount.amount().signum() < 0) {
            call.badValue(call.value("amount").place(), "'item' wants an amount from 0");
            return;
        }
        Optional<BigDecimal> times = TimeBlock.times(call);
        String diluted = call.text("diluted");
        Optional<Quantity> neat = neat(amount, diluted);
        if (neat.isEmpty()) {
            call.badValue(
                    call.value("diluted").place(),
                    "'diluted:' of 'item' wants a dilution such as '1:10' or '1 in 10'; it is the text '" + diluted
                            + "'");
            return;
        }
        times.ifPresent(t -> uses.add(new Use(
                call.text("item"), neat.get(), diluted, call.text("per"), t, origin(call, call.value("item")))));
    }

    /** What comes from the pack; empty when the dilution cannot be read. */
    private static Optional<Quantity> neat(Quantity amount, String diluted) {
        try {
            return Optional.of(
                    diluted.isEmpty() ? amount : Dilution.parse(diluted).concentrateOf(amount));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    List<Use> build() {
        return uses;
    }
}
