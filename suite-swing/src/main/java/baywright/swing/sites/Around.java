package baywright.swing.sites;

import baywright.library.ScriptCache;
import baywright.pack.KeyFolder;
import java.time.Clock;

/**
 * Where the workbench runs.
 *
 * @param clock tells when a pack was taken
 * @param cache where scripts are kept between loads
 * @param keys  the user's own keys
 */
record Around(Clock clock, ScriptCache cache, KeyFolder keys) {}
