/**
 * The window around the workbenches: desk, undo, strip, bar, notices, tasks, settings. Uses {@code api}, {@code parts} and the core; knows no
 * workbench, which all come through the door of {@link baywright.swing.api}.
 */
package baywright.swing.shell;
