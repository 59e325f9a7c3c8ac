/**
 * The library workbench: stages and what they refer to, the editor of scripts, and the trial bench beside it. Uses {@code api},
 * {@code parts} and the core; what a script means is the core's business alone.
 */
package baywright.swing.library;
