package baywright.plan;

/** How grave a finding is. A plan with a stop is not quoted. */
public enum Severity {
    STOP,
    WARN,
    NOTE
}
