package baywright.remote;

import baywright.pack.Version;

/**
 * A proposal that is part of the main line.
 *
 * @param commit  of the main line
 * @param version that it has there
 * @param tries   how often it was put together because others were quicker, from 1
 */
public record Accepted(String commit, Version version, int tries) {}
