package baywright.editor;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A statement of a script with everything around it, so that a text is nothing but its pieces one after the other.
 *
 * @param word  the word of the language or the keyword that it begins with, such as {@code stage} or {@code def}; empty for anything else
 * @param label what is given first, as written without quotes: {@code iron-removal}; of a definition its name; may be empty
 * @param named arguments by name, as written
 * @param lead  what stands before it: blank lines, comments, the blanks of its line
 * @param head  the statement itself; with a {@link #isBlock body} up to the end of the line of its opening brace
 * @param body  statements in its braces, where they can be taken apart
 * @param end   from behind the last of them to its closing brace; empty without a body
 * @param trail the rest of its last line
 */
public record Piece(
        String word,
        String label,
        Map<String, String> named,
        String lead,
        String head,
        List<Piece> body,
        String end,
        String trail) {

    public Piece {
        named = Map.copyOf(named);
        body = List.copyOf(body);
    }

    /** Whether its braces are taken apart. */
    public boolean isBlock() {
        return !end.isEmpty();
    }

    /** The statement without what stands around it. */
    public String core() {
        return head + body.stream().map(Piece::text).collect(Collectors.joining()) + end;
    }

    /** Everything, as it stands in the script. */
    public String text() {
        return lead + core() + trail;
    }

    /** The same statement with other surroundings. */
    public Piece with(String otherLead, String otherHead, List<Piece> otherBody, String otherEnd, String otherTrail) {
        return new Piece(word, label, named, otherLead, otherHead, otherBody, otherEnd, otherTrail);
    }
}
