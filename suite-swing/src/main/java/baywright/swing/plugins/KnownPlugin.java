package baywright.swing.plugins;

/**
 * How it stands with a plug-in or, where none could be made of it, with a jar.
 *
 * @param jar   where it comes from
 * @param id    its id; empty where it did not come so far as to say
 * @param title its name for people, or that of the jar
 * @param state how it stands
 * @param why   a sentence where it does not run or something of it is set aside, else empty
 */
public record KnownPlugin(PluginJar jar, String id, String title, State state, String why) {

    /** How it stands with a plug-in. */
    public enum State {
        RUNS,
        /** The user has switched it off. */
        OFF,
        /** It came with the workspace and waits for a yes. */
        ASKS,
        /** It threw, hung or was refused. */
        FAILED
    }
}
