/** The window: adapts what the core offers to Swing. Holds no rule of the trade. */
package baywright.swing;
