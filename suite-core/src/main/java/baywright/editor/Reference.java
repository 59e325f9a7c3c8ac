package baywright.editor;

/**
 * Where a script gives a thing its id or means it.
 *
 * @param file  name of the script
 * @param kind  kind of the thing, as the vocabulary names it
 * @param id    its id
 * @param form  how it is written
 * @param stage the stage around it; the empty text outside all stages
 * @param from  offset of its first character, quotes included
 * @param to    offset behind its last one
 */
record Reference(String file, String kind, String id, Form form, String stage, int from, int to) {

    /** How a reference is written. */
    enum Form {
        /** The declaration itself, a text in quotes. */
        DECLARATION,
        /** A text in quotes. */
        TEXT,
        /** A text in quotes that means the thing only when one has this id. */
        LOOSE_TEXT,
        /** A key of a map without quotes. */
        BARE_KEY,
        /** An input by its plain name. */
        NAME,
        /** An input by its plain name inside a text: {@code "$passes"}. */
        NAME_IN_TEXT
    }
}
