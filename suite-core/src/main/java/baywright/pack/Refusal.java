package baywright.pack;

import java.util.Locale;

/** Why a pack, or a set of packs, is refused. The names are stable; the sentences stand in the bundle beside. */
public enum Refusal {
    // the file
    UNREADABLE,
    EMPTY,
    LARGE,
    NO_ARCHIVE,
    TRUNCATED,
    BEFORE,
    BEHIND,
    BETWEEN,
    COMMENT,
    ZIP64,
    SPLIT,
    MANY_FILES,
    COUNT,
    DIRECTORY,
    ORDER,
    GAP,
    // one file in it
    ENTRY_LINK,
    ENTRY_FOLDER,
    ENTRY_DEVICE,
    ENTRY_ENCRYPTED,
    ENTRY_COMPRESSED,
    ENTRY_STREAMED,
    ENTRY_LARGE,
    ENTRY_SIZES,
    ENTRY_EXTRA,
    ENTRY_COMMENT,
    ENTRY_STRANGE,
    ENTRY_BEYOND,
    ENTRY_TOLD_TWICE,
    ENTRY_DAMAGED,
    // names
    NAME_BYTES,
    NAME_EMPTY,
    NAME_EMPTY_PART,
    NAME_INVISIBLE,
    NAME_ABSOLUTE,
    NAME_DRIVE,
    NAME_BACKSLASH,
    NAME_UPWARDS,
    NAME_HIDDEN,
    NAME_ENDS,
    NAME_SIGN,
    NAME_RESERVED,
    NAME_LONG,
    NAME_DECOMPOSED,
    NAME_TWICE,
    NAME_CASE,
    NAME_ALIKE,
    NAME_FOLDER,
    // content
    LARGE_IN_ALL,
    MANIFEST_MISSING,
    FILE_UNREADABLE,
    FILE_KIND,
    FILE_UNLISTED,
    FILE_MISSING,
    FILE_SIZE,
    FILE_HASH,
    FILE_TEXT,
    PRICES,
    VOCABULARY,
    SIGNATURE_FORM,
    SIGNATURE_WRONG,
    // trust
    UNSIGNED,
    UNKNOWN_SIGNER,
    // several packs
    NEED_MISSING,
    NEED_CLASH,
    NEED_CIRCLE,
    PACK_TWICE,
    DOWNGRADE;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
