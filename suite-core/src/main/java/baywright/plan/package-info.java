/**
 * Steps in order, what they take, and the proof that the order holds; repairs of a plan that does not prove. Uses
 * library and vehicle; knows no price, no calendar and no file.
 */
package baywright.plan;
