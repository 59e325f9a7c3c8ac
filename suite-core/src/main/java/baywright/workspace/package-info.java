/**
 * Reads and writes a workspace's files: atomic, one writer, nothing unknown lost. Entry points are {@link
 * baywright.workspace.Workspace} to read and {@link baywright.workspace.WorkspaceWriter} to write. Knows what a
 * workspace holds, not what is done with it.
 */
package baywright.workspace;
