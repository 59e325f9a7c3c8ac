package baywright.swing.shell;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Finds by a few typed letters: what begins with them first, then words that do, then what holds them, then letters in their order. */
final class Ranking {

    private Ranking() {}

    /**
     * What fits, the best first; in the given order where two fit equally.
     *
     * @param typed with no letters everything fits
     */
    static <T> List<T> best(String typed, List<T> all, Function<T, String> title) {
        record Scored<T>(T value, int score) {}
        List<Scored<T>> fits = new ArrayList<>();
        for (T value : all) {
            score(typed, title.apply(value)).ifPresent(score -> fits.add(new Scored<>(value, score)));
        }
        fits.sort(Comparator.comparingInt(Scored::score));
        return fits.stream().map(Scored::value).toList();
    }

    /** 0 is best; empty when it does not fit. */
    static Optional<Integer> score(String typed, String title) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        String in = title.toLowerCase(Locale.ROOT);
        if (in.startsWith(wanted)) {
            return Optional.of(0);
        }
        if (wordsBegin(wanted.split("\\s+"), in.split("[^\\p{L}\\p{N}]+"))) {
            return Optional.of(1);
        }
        if (in.contains(wanted)) {
            return Optional.of(2);
        }
        return isSubsequence(wanted.replaceAll("\\s+", ""), in) ? Optional.of(3) : Optional.empty();
    }

    private static boolean wordsBegin(String[] wanted, String[] words) {
        for (String want : wanted) {
            boolean any = false;
            for (String word : words) {
                any |= word.startsWith(want);
            }
            if (!any) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSubsequence(String wanted, String in) {
        int at = 0;
        for (int i = 0; i < in.length() && at < wanted.length(); i++) {
            at += in.charAt(i) == wanted.charAt(at) ? 1 : 0;
        }
        return at == wanted.length();
    }
}
