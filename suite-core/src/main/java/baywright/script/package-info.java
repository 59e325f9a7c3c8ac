/**
 * The language machinery: guarded parsing to plain data, the evaluator, word declarations, problems with their place.
 * Uses quantities and Groovy's parser; knows no trade word, no stage and no file layout.
 */
package baywright.script;
