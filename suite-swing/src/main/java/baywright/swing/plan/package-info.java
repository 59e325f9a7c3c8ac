/**
 * The workbench where the plan of a job is made: steps in order, what stands against them, how to mend it, what the plan comes to.
 * Uses the window's public package and the core; knows no other workbench.
 */
package baywright.swing.plan;
