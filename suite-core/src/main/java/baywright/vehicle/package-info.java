/** Zones of a vehicle and what was found on them. Uses quantities only; knows neither plans nor prices. */
package baywright.vehicle;
