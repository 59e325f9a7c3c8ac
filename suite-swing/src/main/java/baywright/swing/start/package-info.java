/** The jobs of the open shop at a glance. Uses {@code api}, {@code parts} and the core. */
package baywright.swing.start;
