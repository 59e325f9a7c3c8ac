/**
 * The shared library of several sites, a pack that lies in a git repository: follows its main line, proposes what a site has made of
 * it on a branch of the site's own, and merges proposals by declaration. The only room that knows JGit. What comes from a remote is judged like
 * any pack, never checked out, and read through the workspace's own bare clone; a repository that the shop keeps its workspace in is
 * never touched. Knows no screen and prints nothing.
 */
package baywright.remote;
