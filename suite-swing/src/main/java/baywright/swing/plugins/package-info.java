/**
 * Plug-ins that come as jars: where they are found, which may run, and how each is loaded apart from the others. Knows the door
 * ({@code baywright.swing.api}) and nothing of the window behind it.
 */
package baywright.swing.plugins;
