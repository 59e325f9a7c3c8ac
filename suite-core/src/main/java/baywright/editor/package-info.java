/**
 * Help for whoever writes stage scripts: completion, hover texts, outline, rename, format, quick fixes. Pure functions of
 * texts that may be unfinished or wrong, so they read a text by its brackets and words and never need a whole parse.
 * Uses the vocabulary, the library and quantities; knows no window, no file and no plan.
 */
package baywright.editor;
