package baywright.safety;

import java.util.Optional;

/**
 * A danger that a plan brings and that a named person must answer for.
 *
 * @param step id of the first step that brings it
 * @param by   who answers for it; empty: nobody yet
 */
public record Cautioned(Caution caution, String step, Optional<JobSafety.Acknowledgement> by) {}
