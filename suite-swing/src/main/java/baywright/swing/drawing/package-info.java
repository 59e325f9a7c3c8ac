/**
 * Our own plan view of a vehicle: sides, front and rear folded out around the roof, drawn from a few measures of each kind of body. It
 * knows where each zone lies and lets it be chosen; what a zone looks like is said by a {@link baywright.swing.drawing.ZonePainter}.
 */
package baywright.swing.drawing;
