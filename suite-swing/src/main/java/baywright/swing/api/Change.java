package baywright.swing.api;

import baywright.site.OpenShop;
import java.util.function.UnaryOperator;

/**
 * One edit of the shop, as undo counts them.
 *
 * @param title what the user did, in words
 * @param joins edits one after the other with the same mark that is not empty are undone together, such as keys typed into one field
 * @param does  a pure, fast function; returning its argument does nothing
 */
public record Change(String title, String joins, UnaryOperator<OpenShop> does) {}
