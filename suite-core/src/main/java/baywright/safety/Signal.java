package baywright.safety;

/** Signal word of a label; Danger replaces Warning (Regulation (EC) No 1272/2008, art. 20(3)). */
public enum Signal {
    NONE,
    WARNING,
    DANGER
}
