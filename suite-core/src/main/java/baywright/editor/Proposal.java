package baywright.editor;

import java.util.List;

/**
 * Something that may stand at the caret.
 *
 * @param label  what the list shows
 * @param kind   what it is: {@code word}, {@code parameter}, {@code unit}, {@code value}, or a kind of id such as {@code state}
 * @param detail what it means, in a few words; may be empty
 * @param edit   puts it in place of what was begun
 * @param slots  the parts of {@code edit.with()} that wait to be filled in, in order
 */
public record Proposal(String label, String kind, String detail, TextEdit edit, List<Slot> slots) {

    /**
     * A part that waits to be filled in.
     *
     * @param from offset in the inserted text
     * @param to   offset behind its last character; equal to {@code from} for a place where something may come
     */
    public record Slot(int from, int to) {}

    public Proposal {
        slots = List.copyOf(slots);
    }
}
