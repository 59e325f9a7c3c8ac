package baywright.remote;

import baywright.pack.Manifest;
import baywright.pack.Version;
import java.util.Optional;

/**
 * How a site stands to the shared library, as far as is known without the net.
 *
 * @param fetched   when it was fetched last, ISO 8601; empty: never
 * @param main      what the main line's pack says of itself; empty: none was fetched, or it cannot be used
 * @param taken     the version that the site has taken; empty: none
 * @param isUpToDate whether that is the newest one
 * @param isUnsent  whether a proposal of the site waits to be sent
 */
public record SharedState(
        Optional<String> fetched,
        Optional<Manifest> main,
        Optional<Version> taken,
        boolean isUpToDate,
        boolean isUnsent) {}
