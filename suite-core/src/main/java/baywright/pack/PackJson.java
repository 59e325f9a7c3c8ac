package baywright.pack;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** How packs and what is kept of them are written in JSON: two spaces a level, line ends of one byte, a line end last. The same tree gives the same text. */
public final class PackJson {

    private static final ObjectWriter WRITER = JsonMapper.builder()
            .build()
            .writer(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Spacing.AFTER)
                            .withArrayEmptySeparator(""))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private PackJson() {}

    /** The text of a tree, with a line end last. */
    public static String text(JsonNode json) {
        try {
            return WRITER.writeValueAsString(json) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }
}
