/**
 * The door through which everything comes into the window: the suite's own workbenches and a stranger's plug-in alike. A plug-in sees
 * this package and the core, nothing else of the window. Changes follow semantic versioning, see {@link baywright.swing.api.ApiVersion}.
 */
package baywright.swing.api;
