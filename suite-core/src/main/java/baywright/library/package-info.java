/**
 * What a shop's library holds: states, surfaces, families, job factors, items and stages, and the check that they fit
 * together. Uses the language machinery and quantities; knows no vehicle, plan, clock or till.
 */
package baywright.library;
