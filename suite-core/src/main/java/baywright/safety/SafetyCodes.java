package baywright.safety;

import java.util.List;

/** Codes of the findings about safety. They never change; {@code docs/findings} has a page for each. */
public final class SafetyCodes {

    public static final String ACKNOWLEDGE = "acknowledge";
    public static final String ACKNOWLEDGED = "acknowledged";
    public static final String CLIMATE = "climate";
    public static final String DEW_POINT = "dew-point";
    public static final String KEEP_APART = "keep-apart";
    public static final String LIGHT = "light";
    public static final String LONE_WORK = "lone-work";
    public static final String NOISE = "noise";
    public static final String SOLVENT_AIR = "solvent-air";
    public static final String TOO_FEW_PEOPLE = "too-few-people";
    public static final String TRAINED_PERSON = "trained-person";
    public static final String VIBRATION = "vibration";

    /** Every code that a check of safety can give, in order of letters. */
    public static final List<String> ALL = List.of(
            ACKNOWLEDGE,
            ACKNOWLEDGED,
            CLIMATE,
            DEW_POINT,
            KEEP_APART,
            LIGHT,
            LONE_WORK,
            NOISE,
            SOLVENT_AIR,
            TOO_FEW_PEOPLE,
            TRAINED_PERSON,
            VIBRATION);

    private SafetyCodes() {}
}
