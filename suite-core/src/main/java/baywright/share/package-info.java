/**
 * What is shared between sites comes together with what a site has made of it: merging by declaration, taking a pack in one step and
 * undoing it, and what another library would make of the site's jobs. Uses the site with everything below it and the pieces of
 * scripts; knows no window and prints nothing.
 */
package baywright.share;
