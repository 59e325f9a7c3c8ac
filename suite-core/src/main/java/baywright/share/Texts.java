package baywright.share;

import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The texts below a folder of a workspace, letter by letter. */
public final class Texts {

    private static final int DEEPEST = 10;
    private static final long LARGEST_IN_ALL = 64L << 20;

    private final Path root;
    private long left = LARGEST_IN_ALL;

    /** @param root the workspace's */
    public Texts(Path root) {
        this.root = root;
    }

    /**
     * Every script and JSON file below a folder, by its name below it.
     *
     * @throws WorkspaceException when one cannot be read or is no text
     */
    public SortedMap<String, String> below(String folder) {
        Path top = root.resolve(folder);
        SortedMap<String, String> texts = new TreeMap<>();
        if (!Files.isDirectory(top, LinkOption.NOFOLLOW_LINKS)) {
            return texts;
        }
        try (Stream<Path> all = Files.walk(top, DEEPEST)) {
            List<Path> files = all.filter(Texts::isMeant).toList();
            for (Path file : files) {
                String name = top.relativize(file).toString().replace('\\', '/');
                texts.put(name, text(folder + "/" + name).orElseThrow());
            }
            return texts;
        } catch (IOException e) {
            throw unreadable(folder, e);
        } catch (UncheckedIOException e) {
            throw unreadable(folder, e.getCause());
        }
    }

    private static boolean isMeant(Path file) {
        String name = file.getFileName().toString();
        return !name.startsWith(".")
                && (name.endsWith(".groovy") || name.endsWith(".json"))
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * One file; empty when it is not there.
     *
     * @param name below the workspace
     */
    public Optional<String> text(String name) {
        Path file = root.resolve(name);
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try {
            left -= Files.size(file);
            if (Files.isSymbolicLink(file) || !file.toRealPath().startsWith(root.toRealPath())) {
                throw new WorkspaceException(name + ": this is a link; put the file itself here");
            }
            if (left < 0) {
                throw new WorkspaceException(
                        name + ": scripts and packs are larger than 64 MiB together; take some away");
            }
            byte[] bytes = Files.readAllBytes(file);
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            throw new WorkspaceException(name + ": the file is not UTF-8 text; save it as UTF-8", e);
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    private static WorkspaceException unreadable(String name, IOException cause) {
        return new WorkspaceException(name + ": it cannot be read; check its permissions", cause);
    }
}
