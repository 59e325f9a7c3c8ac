/** Loads the standard library and the demo that the project ships, and holds their figures to what the trade knows. */
package baywright.trade;
