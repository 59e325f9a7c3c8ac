/** Small components that several workbenches share. Uses {@code api} and the core's values; knows no workbench and no shell. */
package baywright.swing.parts;
