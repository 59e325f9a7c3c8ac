/**
 * Packs: what one site hands to another, as one file or one folder. Says what a pack is, makes it, signs it, and judges one that
 * came from elsewhere before anything of it is written. Uses quantities, the language, the library and the files of a workspace;
 * knows no job, no price and no screen. Nothing of a pack is believed: every byte of its file is accounted for.
 */
package baywright.pack;
