package baywright.script.hostile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Spoils texts by swapping, dropping and doubling their tokens and by putting pieces of other texts between them. */
final class Mutation {

    private static final Pattern TOKEN = Pattern.compile("\\w+|\\s+|'[^'\\n]*'|[^\\w\\s]");

    private final Random random;
    private final List<List<String>> others;

    /**
     * Makes one that is as random as its source.
     *
     * @param others texts that pieces are taken from
     */
    Mutation(Random random, List<String> others) {
        this.random = random;
        this.others = others.stream().map(Mutation::tokens).toList();
    }

    /** The text after up to six changes; now and then the text itself. */
    String of(String text) {
        List<String> tokens = tokens(text);
        for (int changes = random.nextInt(7); changes > 0; changes--) {
            change(tokens);
        }
        return String.join("", tokens);
    }

    private void change(List<String> tokens) {
        if (tokens.isEmpty()) {
            tokens.addAll(piece());
            return;
        }
        int at = random.nextInt(tokens.size());
        switch (random.nextInt(6)) {
            case 0 -> Collections.swap(tokens, at, random.nextInt(tokens.size()));
            case 1 -> tokens.remove(at);
            case 2 -> tokens.add(at, tokens.get(random.nextInt(tokens.size())));
            case 3 -> tokens.addAll(at, Collections.nCopies(1 + random.nextInt(60), tokens.get(at)));
            case 4 ->
                tokens.subList(at, Math.min(tokens.size(), at + 1 + random.nextInt(20)))
                        .clear();
            default -> tokens.addAll(at, piece());
        }
    }

    private List<String> piece() {
        List<String> other = others.get(random.nextInt(others.size()));
        int from = random.nextInt(other.size());
        return other.subList(from, Math.min(other.size(), from + 1 + random.nextInt(40)));
    }

    private static List<String> tokens(String text) {
        return new ArrayList<>(
                TOKEN.matcher(text).results().map(MatchResult::group).toList());
    }
}
