package baywright.swing.shell;

import baywright.workspace.HeldFile;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Lets a second start of the program hand over what it was to open to the window that is there, through a socket in a folder that only the user
 * can enter. The one thing that can be asked is to come to the front, with a folder. Whatever fails here costs no more than a second window.
 *
 * <p>A lock beside the socket tells who is first. It ends with the program, so that a socket left by one that was killed is known to be dead.
 */
public final class Handover implements AutoCloseable {

    private static final String SOCKET = "window.socket";
    private static final String LOCK = "window.lock";
    private static final String GREETING = "baywright-open/1\n";
    private static final String TAKEN = "taken\n";

    /** Longer than any path that a system takes. */
    private static final int LONGEST = 16 * 1024;

    private static final Duration PATIENCE_WITH_ASKER = Duration.ofSeconds(2);

    /** The first window may still be starting. */
    private static final Duration PATIENCE_WITH_WINDOW = Duration.ofSeconds(15);

    private final Optional<FileChannel> lock;
    private final Optional<ServerSocketChannel> server;
    private final Path socket;

    private Handover(Optional<FileChannel> lock, Optional<ServerSocketChannel> server, Path socket) {
        this.lock = lock;
        this.server = server;
        this.socket = socket;
    }

    /**
     * Begins: either this program is the first, or another one is. What comes to the first waits until {@link #serve}.
     *
     * @param folder of the socket, made when it is not there; nobody but the user can enter it afterwards
     */
    public static Handover in(Path folder) {
        Path socket = folder.resolve(SOCKET);
        try {
            secure(folder);
            Optional<FileChannel> lock = HeldFile.hold(folder.resolve(LOCK));
            return new Handover(lock, lock.isPresent() ? Optional.of(listen(socket)) : Optional.empty(), socket);
        } catch (IOException | UnsupportedOperationException e) {
            System.getLogger(Handover.class.getName())
                    .log(System.Logger.Level.DEBUG, "each start opens a window of its own", e);
            return new Handover(Optional.empty(), Optional.empty(), socket);
        }
    }

    /** Only the owner of a folder may set its permissions: one that someone else has put there is refused by the system. */
    private static void secure(Path folder) throws IOException {
        Files.createDirectories(folder);
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(folder + " is a link");
        }
        if (Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    private static ServerSocketChannel listen(Path socket) throws IOException {
        Files.deleteIfExists(socket);
        ServerSocketChannel server = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
        try {
            return server.bind(UnixDomainSocketAddress.of(socket));
        } catch (IOException e) {
            server.close();
            throw e;
        }
    }

    // the second

    /**
     * Hands over to the window that is there.
     *
     * @param workspace the folder to open; empty: it only comes to the front
     * @return whether it has taken this; otherwise this program opens a window of its own
     */
    public boolean passOn(Optional<Path> workspace) {
        if (lock.isPresent()) {
            return false;
        }
        String path = workspace
                .map(folder -> folder.toAbsolutePath().normalize().toString())
                .orElse("");
        try (SocketChannel channel = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
            ByteBuffer message = StandardCharsets.UTF_8.encode(GREETING + path);
            while (message.hasRemaining()) {
                channel.write(message);
            }
            channel.shutdownOutput();
            return read(channel, TAKEN.length(), PATIENCE_WITH_WINDOW).equals(TAKEN);
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    // the first

    /** Takes what others hand over, on a thread of its own. {@code asked} returns at once. Nothing happens where another is the first. */
    public void serve(Consumer<Optional<Path>> asked) {
        server.ifPresent(open -> {
            Thread thread = new Thread(() -> serve(open, asked), "baywright handover");
            thread.setDaemon(true);
            thread.start();
        });
    }

    private static void serve(ServerSocketChannel open, Consumer<Optional<Path>> asked) {
        while (open.isOpen()) {
            try (SocketChannel channel = open.accept()) {
                String message = read(channel, LONGEST, PATIENCE_WITH_ASKER);
                if (message.startsWith(GREETING)) {
                    String path = message.substring(GREETING.length());
                    asked.accept(path.isEmpty() ? Optional.empty() : Optional.of(folder(path)));
                    channel.write(StandardCharsets.UTF_8.encode(TAKEN));
                }
            } catch (IOException e) {
                // an asker that has gone, or our own end, which the loop sees
                System.getLogger(Handover.class.getName())
                        .log(System.Logger.Level.DEBUG, "what another start asked could not be taken", e);
            }
        }
    }

    private static Path folder(String path) throws IOException {
        try {
            Path folder = Path.of(path);
            if (folder.isAbsolute()) {
                return folder;
            }
        } catch (InvalidPathException e) {
            throw new IOException("no path", e);
        }
        throw new IOException("no absolute path");
    }

    /** Everything up to the end of what the other side sends. */
    private static String read(SocketChannel channel, int most, Duration patience) throws IOException {
        channel.configureBlocking(false);
        long end = System.nanoTime() + patience.toNanos();
        ByteBuffer buffer = ByteBuffer.allocate(most + 1);
        try (Selector selector = Selector.open()) {
            channel.register(selector, SelectionKey.OP_READ);
            while (buffer.hasRemaining()) {
                long millis = Duration.ofNanos(end - System.nanoTime()).toMillis();
                if (millis <= 0 || selector.select(millis) == 0) {
                    throw new SocketTimeoutException("the other side says nothing");
                }
                selector.selectedKeys().clear();
                if (channel.read(buffer) < 0) {
                    return new String(Arrays.copyOf(buffer.array(), buffer.position()), StandardCharsets.UTF_8);
                }
            }
        }
        throw new IOException("more than " + most + " bytes");
    }

    /** Takes nothing any more; the next start is the first again. */
    @Override
    public void close() {
        try {
            if (server.isPresent()) {
                server.get().close();
                Files.deleteIfExists(socket);
            }
            if (lock.isPresent()) {
                lock.get().close();
            }
        } catch (IOException e) {
            // All of it ends with the program at the latest.
            return;
        }
    }
}
