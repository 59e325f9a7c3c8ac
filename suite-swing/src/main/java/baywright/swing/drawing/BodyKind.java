package baywright.swing.drawing;

import baywright.vehicle.Shape;
import java.util.Map;

/** Kinds of body that we can draw. */
enum BodyKind {
    SMALL_FIVE_DOOR(
            new Body(395, 172, 150, 31, 77, 327, 70, 102, 178, 330, 384, 98, 96, 112, 210, 295, Body.Tail.HATCH)),
    SALOON(new Body(460, 182, 145, 33, 92, 368, 72, 132, 212, 322, 398, 104, 96, 142, 242, 336, Body.Tail.BOOT)),
    ESTATE(new Body(468, 182, 149, 33, 92, 368, 72, 132, 212, 420, 460, 106, 96, 142, 242, 336, Body.Tail.HATCH)),
    OFF_ROAD(new Body(478, 194, 176, 38, 92, 376, 96, 128, 196, 436, 472, 120, 118, 140, 242, 340, Body.Tail.HATCH)),
    VAN(new Body(520, 194, 206, 35, 92, 402, 92, 92, 166, 500, 512, 124, 112, 108, 204, 330, Body.Tail.DOORS)),
    COUPE(new Body(440, 176, 132, 32, 88, 342, 70, 142, 218, 286, 374, 94, 88, 152, 282, 282, Body.Tail.BOOT)),
    CONVERTIBLE(new Body(432, 178, 134, 32, 86, 336, 70, 134, 208, 296, 346, 94, 90, 144, 268, 268, Body.Tail.BOOT)),
    MOTORCYCLE(null);

    private static final Map<String, BodyKind> BY_SHAPE = Map.of(
            "small-five-door", SMALL_FIVE_DOOR,
            "saloon", SALOON,
            "estate", ESTATE,
            "large-off-road", OFF_ROAD,
            "medium-van", VAN,
            "coupe", COUPE,
            "convertible", CONVERTIBLE,
            "motorcycle", MOTORCYCLE);

    /** A record of numbers. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Body body;

    BodyKind(Body body) {
        this.body = body;
    }

    /** The kind of a vehicle's shape; of a shape that the shop made itself, by the zones that it has. */
    static BodyKind of(Shape shape) {
        BodyKind named = BY_SHAPE.get(shape.id());
        if (named != null) {
            return named;
        }
        if (shape.zone("tank").isPresent() || shape.zone("saddle").isPresent()) {
            return MOTORCYCLE;
        }
        if (shape.zone("fabric-roof").isPresent()) {
            return CONVERTIBLE;
        }
        if (shape.zone("sliding-door-left").isPresent()
                || shape.zone("sliding-door-right").isPresent()) {
            return VAN;
        }
        if (shape.zone("side-glass-quarter-left").isPresent()) {
            return ESTATE;
        }
        return shape.zone("rear-door-left").isPresent() ? SALOON : COUPE;
    }

    /** Its measures; there are none of a motorcycle. */
    Body body() {
        return body;
    }
}
