package baywright.swing.drawing;

import baywright.vehicle.Zone;

/** Says what a zone looks like. Asked anew whenever the drawing is painted, on the event thread: it must be quick. */
@FunctionalInterface
public interface ZonePainter {
    ZoneLook look(Zone zone);
}
