package baywright.swing.api;

import baywright.plan.Severity;
import java.util.Optional;

/**
 * What a plug-in's rule says of a job. One that stops holds back the quote in the window.
 *
 * @param rule     id of the rule
 * @param severity how grave it is
 * @param step     id of the step concerned
 * @param zone     id of the zone concerned
 * @param text     what is the matter and how to mend it, in the user's language
 */
public record Remark(String rule, Severity severity, Optional<String> step, Optional<String> zone, String text) {}
