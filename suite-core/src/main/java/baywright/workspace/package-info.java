/**
 * Reads and writes a workspace's files: atomic, one writer, nothing unknown lost. Entry points are {@link
 * baywright.workspace.Workspace} to read and {@link baywright.workspace.WorkspaceWriter} to write. Knows every package
 * below the screen; no other package of the core knows it, save the command line.
 */
package baywright.workspace;
