package baywright.script;

/** Stored bytes are not what they should be. Whoever reads them does without. */
public class DamagedData extends Exception {

    private static final long serialVersionUID = 1L;

    public DamagedData(String what) {
        super(what);
    }
}
