package baywright.pack;

import baywright.workspace.Fields;
import baywright.workspace.JsonText;
import baywright.workspace.WorkspaceException;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The keys that a user signs packs with, one a site, in the user's own folder and never in a workspace. Where the file system knows
 * permissions, each file is its owner's alone from the moment it is there.
 */
public final class KeyFolder {

    private static final String KIND = "signing-key";
    private static final int VERSION = 1;
    private static final String ENDING = ".json";
    private static final Set<PosixFilePermission> OWNERS =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
    private static final int LARGEST = 10_000;

    private final Path folder;

    /** @param settings the folder of the user's settings; it need not be there */
    public KeyFolder(Path settings) {
        this.folder = settings.resolve("keys");
    }

    /** The file of a site's key. */
    public Path fileOf(String site) {
        return folder.resolve(site + ENDING);
    }

    /** The sites that have a key here, in order. */
    public List<String> sites() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .filter(Fields::isId)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new WorkspaceException(folder + ": the folder cannot be read (" + PackFile.reason(e) + ")", e);
        }
    }

    /**
     * Makes a fresh key for a site.
     *
     * @param site an id
     * @throws WorkspaceException when the site has a key already, which is never overwritten, or the disk refuses
     */
    public SigningKey make(String site) {
        if (!Fields.isId(site)) {
            throw new WorkspaceException("the name of a key is an id: " + Fields.AN_ID);
        }
        Path file = fileOf(site);
        SigningKey key = SigningKey.fresh();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("schema", "baywright/" + KIND + "/" + VERSION);
        json.put("publicKey", key.signer().toString());
        json.put("secretKey", key.secret());
        try {
            makeFolder();
            write(file, PackJson.text(json).getBytes(StandardCharsets.US_ASCII));
        } catch (FileAlreadyExistsException e) {
            throw new WorkspaceException(
                    file + ": there is a key of this name already; what it has signed would no longer be known as"
                            + " yours, so move the file away yourself if you mean it",
                    e);
        } catch (IOException e) {
            throw new WorkspaceException(file + ": the key cannot be written (" + PackFile.reason(e) + ")", e);
        }
        return key;
    }

    private void makeFolder() throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Path above = Files.createDirectories(folder.toAbsolutePath().getParent());
        Files.createDirectory(folder, permissions(above, "rwx------"));
    }

    private static FileAttribute<?>[] permissions(Path near, String permissions) {
        boolean knows = Files.getFileAttributeView(near, PosixFileAttributeView.class) != null;
        return knows
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    private void write(Path file, byte[] bytes) throws IOException {
        Set<StandardOpenOption> fresh = EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try (FileChannel channel = FileChannel.open(file, fresh, permissions(folder, "rw-------"))) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    /**
     * Reads a site's key.
     *
     * @throws WorkspaceException when there is none, when others may read it, or when the file is damaged
     */
    public SigningKey read(String site) {
        Path file = fileOf(site);
        if (!Fields.isId(site) || Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            List<String> sites = sites();
            throw new WorkspaceException("there is no key '" + site + "'; "
                    + (sites.isEmpty()
                            ? "make it with 'pack key new " + site + "'"
                            : "there is " + String.join(", ", sites)));
        }
        try {
            refuseOthers(file);
            if (Files.size(file) > LARGEST) {
                throw new WorkspaceException(file + ": this is no key; restore it from a copy");
            }
            JsonText<SigningKey> read =
                    JsonText.read(file.toString(), Files.readAllBytes(file), KIND, VERSION, KeyFolder::key);
            return read.value()
                    .orElseThrow(() ->
                            new WorkspaceException(read.error().orElseThrow().toString()));
        } catch (IOException e) {
            throw new WorkspaceException(file + ": the key cannot be read (" + PackFile.reason(e) + ")", e);
        }
    }

    private static Optional<SigningKey> key(Fields in) {
        Optional<SigningKey> key = SigningKey.of(in.text("secretKey"), in.text("publicKey"));
        if (key.isEmpty()) {
            in.refuse("secretKey", "the two halves of the key do not belong together", "restore the file from a copy");
        }
        in.done();
        return in.whenSound(key::orElseThrow);
    }

    private static void refuseOthers(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null && !OWNERS.containsAll(view.readAttributes().permissions())) {
            throw new WorkspaceException(file + ": others may read or use this key; say chmod 600 to it, and make a new"
                    + " one if somebody may have read it");
        }
    }
}
