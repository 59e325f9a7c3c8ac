/** What may hurt people: what each takes in, what must not meet, who answers for what, air and surface, products. Knows no rule itself; the core does. */
package baywright.swing.safety;
