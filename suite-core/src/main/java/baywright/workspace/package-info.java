/** Reads and writes a workspace's files: atomic, one writer, nothing unknown lost. Knows every package below the screen. */
package baywright.workspace;
