package baywright.script.hostile;

import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A class that a script must never reach: whoever touches it leaves the file {@code marker} in the working folder. */
public class TellTale implements Serializable {

    /** The child that runs the scripts sets this property; elsewhere the class leaves nothing but itself. */
    static final String ARMED = "hostile.armed";

    private static final long serialVersionUID = 1;

    public TellTale() {
        touch();
    }

    public static void touch() {
        leave("marker");
    }

    static void leave(String name) {
        if (!Boolean.getBoolean(ARMED)) {
            return;
        }
        try {
            Files.writeString(Path.of(name), "reached");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void readObject(ObjectInputStream in) throws IOException, ClassNotFoundException {
        in.defaultReadObject();
        touch();
    }
}
