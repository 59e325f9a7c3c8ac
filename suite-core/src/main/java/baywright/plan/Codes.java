package baywright.plan;

import java.util.List;

/** Codes of findings. They never change; {@code docs/findings} has a page for each. */
public final class Codes {

    public static final String BAD_DRIVER = "bad-driver";
    public static final String BAD_FACT = "bad-fact";
    public static final String BAD_INPUT = "bad-input";
    public static final String BEFORE_START = "before-start";
    public static final String GOAL_GONE = "goal-gone";
    public static final String GOAL_MISSED = "goal-missed";
    public static final String LEANS_ON_LESS = "leans-on-less";
    public static final String LEFT_STANDING = "left-standing";
    public static final String MUST_NOT_HOLD = "must-not-hold";
    public static final String NEED_UNMET = "need-unmet";
    public static final String NO_BAY = "no-bay";
    public static final String NO_ZONE = "no-zone";
    public static final String OVERLAPS = "overlaps";
    public static final String PREFERS = "prefers";
    public static final String RULE_FAILS = "rule-fails";
    public static final String RULE_FORBIDS = "rule-forbids";
    public static final String RULE_GONE = "rule-gone";
    public static final String RULE_NOTES = "rule-notes";
    public static final String RULE_WARNS = "rule-warns";
    public static final String STAGE_FAILS = "stage-fails";
    public static final String STAGE_GONE = "stage-gone";
    public static final String STATE_UNKNOWN = "state-unknown";
    public static final String STEP_TWICE = "step-twice";
    public static final String TOO_LATE = "too-late";
    public static final String TOO_SOON = "too-soon";
    public static final String WRONG_SURFACE = "wrong-surface";
    public static final String ZONE_UNKNOWN = "zone-unknown";

    /** Every code that a proof, or a look at the goals of the job, can give, in order of letters. */
    public static final List<String> ALL = List.of(
            BAD_DRIVER,
            BAD_FACT,
            BAD_INPUT,
            BEFORE_START,
            GOAL_GONE,
            GOAL_MISSED,
            LEANS_ON_LESS,
            LEFT_STANDING,
            MUST_NOT_HOLD,
            NEED_UNMET,
            NO_BAY,
            NO_ZONE,
            OVERLAPS,
            PREFERS,
            RULE_FAILS,
            RULE_FORBIDS,
            RULE_GONE,
            RULE_NOTES,
            RULE_WARNS,
            STAGE_FAILS,
            STAGE_GONE,
            STATE_UNKNOWN,
            STEP_TWICE,
            TOO_LATE,
            TOO_SOON,
            WRONG_SURFACE,
            ZONE_UNKNOWN);

    private Codes() {}
}
