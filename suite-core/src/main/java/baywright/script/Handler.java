package baywright.script;

/** What the words of one pair of braces do. It collects; whoever made it asks it for the whole when the braces end. */
public interface Handler {

    /** Name of the section of the vocabulary whose words it takes. */
    String section();

    /** Takes a word whose arguments have been checked against its declaration. */
    void accept(Call call);

    /** Learns that a word stands here, before its arguments are looked at; they may turn out wrong. */
    default void met(Word word) {}

    /**
     * Learns of a word with braces whose arguments are wrong and noted, in a walk that looks for everything that is wrong.
     * The words in the braces are looked at all the same unless this says that it sees to them itself.
     */
    default boolean seesTo(Word word, Place place, Node.Block block, Scope scope) {
        return false;
    }

    /** Whether it leaves a word aside without looking at its arguments. */
    default boolean skips(Word word) {
        return false;
    }
}
