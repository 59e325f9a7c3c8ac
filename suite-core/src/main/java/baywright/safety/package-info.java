/**
 * What may hurt people who do a plan: hazard statements and labels, vibration, noise, solvent air and climate. Uses
 * quantity, script, vehicle, library and plan; knows neither price nor file of a workspace. Its figures guide; they never
 * say that a shop complies with a law.
 */
package baywright.safety;
