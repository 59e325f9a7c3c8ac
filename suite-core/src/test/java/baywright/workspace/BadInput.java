package baywright.workspace;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One row of {@code bad-input.txt}: a change of one file of the fixture workspace and what the reader must then say.
 *
 * @param from   the text that is replaced; empty: the whole file is
 * @param to     what stands there instead; ⏎ is a line end
 * @param says   every problem of the workspace, in order, word for word
 * @param schema whether the published schema refuses the file as well: {@code refuses} or {@code accepts}; empty for a
 *               file that is no JSON
 */
record BadInput(String title, String file, Optional<String> from, String to, List<String> says, String schema) {

    static List<BadInput> all() {
        try (InputStream in = BadInput.class.getResourceAsStream("bad-input.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Arrays.stream(text.split("(?m)^## "))
                    .skip(1)
                    .map(BadInput::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BadInput of(String block) {
        List<String> lines = block.lines().filter(l -> !l.isEmpty()).toList();
        List<String> says = new ArrayList<>();
        String file = "";
        String to = "";
        String schema = "";
        Optional<String> from = Optional.empty();
        for (String line : lines.subList(1, lines.size())) {
            int colon = line.indexOf(':');
            String value = line.substring(Math.min(colon + 2, line.length())).replace('⏎', '\n');
            switch (line.substring(0, colon)) {
                case "file" -> file = value;
                case "from" -> from = Optional.of(value);
                case "to" -> to = value;
                case "says" -> says.add(value);
                case "schema" -> schema = value;
                default -> throw new IllegalStateException("no such line in bad-input.txt: " + line);
            }
        }
        return new BadInput(lines.get(0), file, from, to, says, schema);
    }

    /** The file's text with the change. */
    String applied(String original) {
        if (from.isEmpty()) {
            return to;
        }
        if (!original.contains(from.get())) {
            throw new IllegalStateException("row '" + title + "' changes a text that the fixture does not hold");
        }
        return original.replace(from.get(), to);
    }

    @Override
    public String toString() {
        return title;
    }
}
