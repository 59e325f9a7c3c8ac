/** The choice of what stays under a cap. Plain figures; knows no plan and no money. */
package baywright.fit;
