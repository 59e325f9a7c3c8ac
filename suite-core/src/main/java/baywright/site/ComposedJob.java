package baywright.site;

import baywright.plan.GoalComposition;

/**
 * A job with a plan composed from its goals.
 *
 * @param composed the plan with its reasons, and what could not be had
 * @param worked   the job with that plan, proved and priced
 */
public record ComposedJob(GoalComposition composed, WorkedJob worked) {}
