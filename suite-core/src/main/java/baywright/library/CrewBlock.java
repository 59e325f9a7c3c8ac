package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Crew;
import baywright.library.StageTerms.Origin;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** {@code crew { }}: who does it. */
final class CrewBlock extends Blocks {

    private static final int MOST_PEOPLE = 20;

    static final Section SECTION = new Section(
            "crew",
            "in 'crew { }'",
            "How many people it takes, how much helpers help, what they must know.",
            List.of(
                    word("people")
                            .takes("count", Type.COUNT)
                            .means("the fewest people who can do it; 1 where the stage does not say")
                            .example("people 2"),
                    word("helpers")
                            .takes("people", Type.COUNT)
                            .needsNamed("takes", Type.NUMBER.called("a share", "shares", "0.57"))
                            .means("with so many people in all the work takes this share of one person's time")
                            .example("helpers 2, takes: 0.57"),
                    word("skill")
                            .takes(
                                    "skill",
                                    Type.ID
                                            .called("a skill", "skills", "'correction'")
                                            .naming("skill"))
                            .means("what the person must know")
                            .example("skill 'correction'"),
                    word("checker")
                            .means("a second person must look at the result")
                            .example("checker()")));

    private int people = 1;
    private String skill = "";
    private boolean checker;
    private final Map<Integer, BigDecimal> shares = new TreeMap<>();
    private Optional<Origin> origin = Optional.empty();

    CrewBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        origin = origin.or(() -> Optional.of(origin(call)));
        switch (call.word().name()) {
            case "people" -> people(call);
            case "helpers" -> helpers(call);
            case "skill" -> {
                onlyOnce(call);
                skill = call.text("skill");
            }
            default -> checker = true;
        }
    }

    private void people(Call call) {
        onlyOnce(call);
        count(call, "count", 1).ifPresent(n -> people = n);
    }

    private void helpers(Call call) {
        Optional<Integer> count = count(call, "people", 2);
        BigDecimal share = call.number("takes");
        if (share.signum() <= 0 || share.compareTo(BigDecimal.ONE) > 0) {
            call.badValue(
                    call.value("takes").place(),
                    "'takes:' of 'helpers' is a share above 0 and up to 1; it is "
                            + call.value("takes").described());
            return;
        }
        count.ifPresent(n -> {
            onlyOnce(call, "helpers " + n);
            shares.put(n, share);
        });
    }

    private static Optional<Integer> count(Call call, String param, int least) {
        BigDecimal number = call.number(param);
        boolean inside = number.compareTo(BigDecimal.valueOf(least)) >= 0
                && number.compareTo(BigDecimal.valueOf(MOST_PEOPLE)) <= 0;
        if (!inside) {
            call.badValue(
                    call.value(param).place(),
                    "'" + call.word().name() + "' wants a number from " + least + " to " + MOST_PEOPLE + "; it is "
                            + call.value(param).described());
            return Optional.empty();
        }
        return Optional.of(number.intValueExact());
    }

    Crew build() {
        if (origin.isEmpty()) {
            return Crew.ONE;
        }
        int most = shares.keySet().stream().mapToInt(n -> n).max().orElse(1);
        List<BigDecimal> list = new ArrayList<>();
        for (int n = 1; n <= Math.max(most, people); n++) {
            list.add(shares.getOrDefault(n, BigDecimal.ONE.divide(BigDecimal.valueOf(n), Quantity.PRECISION)));
        }
        return new Crew(people, Math.max(most, people), list, skill, checker, origin);
    }
}
