package baywright.script.hostile;

import groovy.lang.Script;

/** A base class for scripts that acts as soon as a script uses it. */
public abstract class TellTaleScript extends Script {

    protected TellTaleScript() {
        TellTale.touch();
    }
}
