/** Amounts with units, three-point estimates and their conversions. Uses nothing of this program; knows no trade. */
package baywright.quantity;
