package baywright.library;

import baywright.library.StageChange.Amount;
import baywright.library.StageChange.Count;
import baywright.library.StageChange.Part;
import baywright.library.StageChange.Points;
import baywright.library.StageChange.Said;
import baywright.library.StageChange.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words differences between stages: one line each, without a full stop. */
public final class StageChangeText {

    private static final int DECIMALS = 6;

    private final Locale locale;
    private final ResourceBundle texts;

    /** In a language; one without texts of its own gets the English ones. */
    public StageChangeText(Locale locale) {
        this.locale = locale;
        texts = ResourceBundle.getBundle(
                "baywright.library.changes",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** The sentence, such as {@code hands-on time per panel: 10 / 12 / 15 min → 11 / 14 / 18 min}. */
    public String of(StageChange change) {
        String what = what(change);
        Optional<String> before = change.before().map(this::said);
        Optional<String> after = change.after().map(this::said);
        String sentence;
        if (before.isPresent() && after.isPresent()) {
            sentence = say("changed", what, before.get(), after.get());
        } else if (after.isPresent()) {
            sentence = after.get().isEmpty() ? say("new", what) : say("new.value", what, after.get());
        } else {
            sentence = before.orElseThrow().isEmpty() ? say("gone", what) : say("gone.value", what, before.get());
        }
        return change.when().isEmpty() ? sentence : say("when", sentence, when(change));
    }

    private String what(StageChange change) {
        String aspect = say("aspect." + key(change.aspect()), change.subject());
        return change.part() == Part.ITSELF ? aspect : say("part", aspect, say("part." + key(change.part())));
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String when(StageChange change) {
        return change.when().entrySet().stream()
                .map(e -> say("when.is", e.getKey(), e.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String said(Said said) {
        if (said instanceof Words words) {
            return words.text();
        }
        if (said instanceof Count count) {
            return number(count.number());
        }
        if (said instanceof Amount amount) {
            return number(amount.amount().amount()) + " "
                    + say("unit." + amount.amount().unit().symbol());
        }
        Points points = (Points) said;
        return Stream.of(
                                points.points().least(),
                                points.points().likely(),
                                points.points().most())
                        .map(this::number)
                        .collect(Collectors.joining(" / "))
                + " " + say("unit." + points.unit().symbol());
    }

    private String number(BigDecimal number) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMaximumFractionDigits(DECIMALS);
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(number);
    }

    private String say(String key, Object... values) {
        return new MessageFormat(texts.getString(key), locale).format(values);
    }
}
