/**
 * Uncertain times and costs: three-point estimates as distributions, networks of activities, and seeded simulation of
 * them. Uses quantities only; knows no stage, plan, calendar or price. Times are minutes of work on one clock, costs are
 * plain numbers of whatever currency the caller has.
 */
package baywright.chance;
