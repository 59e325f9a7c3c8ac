package baywright.swing.drawing;

/**
 * Measures of a car's body in centimetres, lengths from the nose, heights from the ground: ours, typical of the kind and of no car.
 *
 * @param length    of the whole
 * @param width     without mirrors
 * @param height    of the roof
 * @param wheel     radius of a tyre
 * @param frontAxle where the front wheels turn
 * @param rearAxle  where the rear wheels turn
 * @param nose      height of the bonnet's front edge
 * @param screen    where the windscreen begins
 * @param roofFront where the roof begins
 * @param roofRear  where the roof ends
 * @param glassRear where the rear glass ends
 * @param waist     height of the sills of the side glass
 * @param deck      height of the tail's upper edge
 * @param door      where the front door begins
 * @param secondDoor where the front door ends
 * @param quarter   where the rear quarter begins
 * @param tail      how it ends
 */
record Body(
        double length,
        double width,
        double height,
        double wheel,
        double frontAxle,
        double rearAxle,
        double nose,
        double screen,
        double roofFront,
        double roofRear,
        double glassRear,
        double waist,
        double deck,
        double door,
        double secondDoor,
        double quarter,
        Tail tail) {

    /** How a body ends. */
    enum Tail {
        /** A boot behind the cabin. */
        BOOT,
        /** A tailgate with the rear glass in it. */
        HATCH,
        /** Two doors with a pane each. */
        DOORS
    }

    double half() {
        return width / 2;
    }
}
