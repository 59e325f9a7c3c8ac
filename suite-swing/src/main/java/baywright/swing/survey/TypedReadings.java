package baywright.swing.survey;

import baywright.swing.api.Readout;
import baywright.swing.api.Texts;
import baywright.vehicle.Reading;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Readings of one zone as a text of numbers, and back. */
final class TypedReadings {

    private static final Pattern BETWEEN = Pattern.compile("[\\s;]+");

    private final Readout readout;
    private final Texts texts;

    TypedReadings(Readout readout, Texts texts) {
        this.readout = readout;
        this.texts = texts;
    }

    /** The readings in order with blanks between. */
    String shown(List<Reading> readings) {
        return readings.stream().map(this::shown).collect(Collectors.joining("  "));
    }

    private String shown(Reading reading) {
        return readout.filmNumber(reading.micrometres());
    }

    /**
     * The readings that a text says. A number that is shown like the next of the readings before is that reading, with its exact amount
     * and where it was recorded.
     *
     * @throws IllegalArgumentException when a word is no thickness above 0
     */
    List<Reading> read(String text, List<Reading> before) {
        List<Reading> readings = new ArrayList<>();
        int next = 0;
        for (String word :
                BETWEEN.splitAsStream(text.strip()).filter(w -> !w.isEmpty()).toList()) {
            int same = next;
            while (same < before.size() && !shown(before.get(same)).equals(word)) {
                same++;
            }
            if (same < before.size()) {
                readings.add(before.get(same));
                next = same + 1;
            } else {
                readings.add(new Reading(typed(word), texts.of("readings.typed")));
            }
        }
        return readings;
    }

    private BigDecimal typed(String word) {
        String bare = word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
        try {
            BigDecimal film = readout.filmTyped(bare);
            if (film.signum() > 0) {
                return film;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(texts.of("readings.wrong", word, readout.filmUnit()), e);
        }
        throw new IllegalArgumentException(texts.of("readings.wrong", word, readout.filmUnit()));
    }

    /** Whether a text is rather a whole file of readings than numbers of one zone. */
    static boolean looksLikeFile(String text) {
        String header = text.lines().findFirst().orElse("").toLowerCase(java.util.Locale.ROOT);
        return header.contains("zone") && text.lines().count() > 1;
    }
}
