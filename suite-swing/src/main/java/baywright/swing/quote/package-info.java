/**
 * The workbench for the price: parts of the plan side by side, what fits under a cap, how cost and price come about, what it may come to,
 * and the quotes that were kept. Reckons nothing itself; the core does. The pages of a quote are shown elsewhere.
 */
package baywright.swing.quote;
