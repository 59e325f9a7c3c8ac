/** The workbench of what sites share: packs taken and made, whose packs are trusted, and what a pack would change. */
package baywright.swing.sites;
