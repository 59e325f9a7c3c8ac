package baywright.remote;

/**
 * What fetching brought.
 *
 * @param isEmpty   whether the remote has no main line yet
 * @param isNew     whether the main line is another than before
 * @param isRewritten whether the main line no longer leads to what it was before: somebody has replaced its history. What was there is
 *                  kept here
 * @param proposals how many open ones there are
 */
public record Fetched(boolean isEmpty, boolean isNew, boolean isRewritten, int proposals) {}
