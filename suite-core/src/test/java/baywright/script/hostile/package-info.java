/**
 * The hostile scripts of the test resources, the proof that each is dangerous to a program that runs it, and the proof
 * that the loader refuses it. Nothing here harms anything outside a temporary folder.
 */
package baywright.script.hostile;
