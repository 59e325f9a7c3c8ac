package baywright.swing.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandoverTest {

    @TempDir
    private Path folder;

    private final BlockingQueue<Optional<Path>> asked = new LinkedBlockingQueue<>();
    private Handover first;

    private void begin() {
        first = Handover.in(folder.resolve("running"));
        assertThat(first.passOn(Optional.of(folder))).isFalse();
        first.serve(asked::add);
    }

    @AfterEach
    void end() {
        if (first != null) {
            first.close();
        }
    }

    private boolean second(Optional<Path> workspace) {
        try (Handover second = Handover.in(folder.resolve("running"))) {
            return second.passOn(workspace);
        }
    }

    private Optional<Path> next() throws InterruptedException {
        return asked.poll(20, TimeUnit.SECONDS);
    }

    @Test
    void theSecondHandsItsFolderToTheFirst() throws Exception {
        begin();
        Path odd = folder.resolve("Wäsche & Glanz\nzwei");
        assertThat(second(Optional.of(odd))).isTrue();
        assertThat(next()).contains(odd);
        assertThat(second(Optional.empty())).isTrue();
        assertThat(next()).isEmpty();
        first.close();
        assertThat(second(Optional.of(folder))).isFalse();
    }

    @Test
    void aSocketLeftByAKilledProgramIsNoWindow() throws Exception {
        Path running = Files.createDirectories(folder.resolve("running"));
        ServerSocketChannel.open(StandardProtocolFamily.UNIX)
                .bind(UnixDomainSocketAddress.of(running.resolve("window.socket")))
                .close();
        assertThat(running.resolve("window.socket")).exists();
        begin();
        assertThat(second(Optional.of(folder))).isTrue();
    }

    @Test
    void nobodyElseCanEnterTheFolder() throws Exception {
        Path running = Files.createDirectories(folder.resolve("running"));
        if (Files.getFileAttributeView(running, PosixFileAttributeView.class) == null) {
            return;
        }
        Files.setPosixFilePermissions(running, PosixFilePermissions.fromString("rwxrwxrwx"));
        begin();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(running)))
                .isEqualTo("rwx------");
    }

    @Test
    void aFolderThatIsALinkElsewhereIsNotUsed() throws Exception {
        Files.createSymbolicLink(folder.resolve("running"), Files.createDirectories(folder.resolve("elsewhere")));
        try (Handover alone = Handover.in(folder.resolve("running"))) {
            assertThat(alone.passOn(Optional.of(folder))).isFalse();
            assertThat(folder.resolve("elsewhere")).isEmptyDirectory();
        }
    }

    @Test
    void nothingButToOpenAFolderCanBeAsked() throws Exception {
        begin();
        assertThat(say("delete everything\n")).isEmpty();
        assertThat(say("baywright-open/2\n/tmp")).isEmpty();
        assertThat(say("baywright-open/1\nsome/where")).isEmpty();
        assertThat(say("baywright-open/1\n/nul\0")).isEmpty();
        assertThat(say("baywright-open/1\n/" + "a".repeat(20_000))).isEmpty();
        assertThat(say("baywright-open/1\n" + folder)).isEqualTo("taken\n");
        assertThat(next()).contains(folder);
        assertThat(asked).isEmpty();
    }

    @Test
    void whoSaysNothingKeepsNobodyWaitingForLong() throws Exception {
        begin();
        try (SocketChannel silent = connected()) {
            assertThat(second(Optional.of(folder))).isTrue();
            assertThat(silent.isOpen()).isTrue();
        }
    }

    private SocketChannel connected() throws IOException {
        return SocketChannel.open(UnixDomainSocketAddress.of(folder.resolve("running/window.socket")));
    }

    /** What comes back. A refused message may be cut off while it is still being said. */
    private String say(String message) {
        try (SocketChannel channel = connected()) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(message);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.shutdownOutput();
            ByteBuffer answer = ByteBuffer.allocate(100);
            while (channel.read(answer) >= 0) {
                assertThat(answer.hasRemaining()).isTrue();
            }
            return StandardCharsets.UTF_8.decode(answer.flip()).toString();
        } catch (IOException e) {
            return "";
        }
    }
}
