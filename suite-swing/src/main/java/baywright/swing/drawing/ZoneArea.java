package baywright.swing.drawing;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * Where a zone lies in a drawing, in centimetres of the vehicle.
 *
 * @param zone    id of the zone
 * @param shape   all parts of it
 * @param room    the largest flat rectangle inside, for what is written on it
 * @param caption words to write on it where it is no part of the picture; else empty
 */
public record ZoneArea(String zone, Shape shape, Rectangle2D room, String caption) {}
