package baywright.workspace;

import java.io.IOException;
import java.nio.file.Path;

/** A second copy of the program, for a test: takes the right to write, says so, and holds it until its input ends. */
final class WriterMain {

    private WriterMain() {}

    public static void main(String[] arguments) throws IOException {
        try (WorkspaceWriter writer = WorkspaceWriter.open(Workspace.open(Path.of(arguments[0])))) {
            System.out.println("writing " + ProcessHandle.current().pid() + " " + writer.hashCode());
            System.in.transferTo(System.out);
        }
    }
}
