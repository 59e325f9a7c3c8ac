package baywright.workspace;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk that does so many steps and then refuses; a write that fails has written half. */
final class FailingDisk implements Disk {

    /** Stands for the power going off: nothing after it happens, not even tidying up. */
    static final class PowerCut extends Error {
        private static final long serialVersionUID = 1L;
    }

    private final int steps;
    private final IOException fault;
    private int done;

    private FailingDisk(int steps, IOException fault) {
        this.steps = steps;
        this.fault = fault;
    }

    static FailingDisk after(int steps, IOException fault) {
        return new FailingDisk(steps, fault);
    }

    static FailingDisk powerCutAfter(int steps) {
        return new FailingDisk(steps, null);
    }

    /** How many steps were asked for. */
    int asked() {
        return done;
    }

    private void step() throws IOException {
        done++;
        if (done <= steps) {
            return;
        }
        if (fault == null) {
            throw new PowerCut();
        }
        if (done == steps + 1) {
            throw fault;
        }
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        if (done == steps || (fault == null && done > steps)) {
            REAL.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        }
        step();
        REAL.write(file, bytes);
    }

    @Override
    public void copyPermissions(Path from, Path to) throws IOException {
        step();
        REAL.copyPermissions(from, to);
    }

    @Override
    public void force(Path file) throws IOException {
        step();
        REAL.force(file);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        step();
        REAL.replace(from, to);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        step();
        REAL.forceFolder(folder);
    }

    @Override
    public void delete(Path file) throws IOException {
        step();
        REAL.delete(file);
    }
}
