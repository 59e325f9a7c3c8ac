package baywright.quantity.breach;

import baywright.plan.Plan;

/** Breaks the arrows on purpose, for the test that they can be broken. */
record BackwardArrow(Plan plan) {}
