package baywright.swing.quote;

import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.TaskHandle;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LatestTest {

    private final TestDesk desk = new TestDesk();
    private final Latest latest = new Latest(desk);
    private final List<String> told = new ArrayList<>();

    @BeforeAll
    static void needsADisplay() {
        Screen.needed();
    }

    @Test
    void anAnswerIsToldOnce() throws Exception {
        run(() -> latest.run("work", progress -> "answer", told::add, () -> told.add("none")));
        assertThat(told).containsExactly("answer");
    }

    @Test
    void aFaultIsToldAndLeavesNoAnswerOpen() throws Exception {
        run(() -> latest.<String>run(
                "work",
                progress -> {
                    throw new IOException("no room");
                },
                told::add,
                () -> told.add("none")));
        assertThat(told).containsExactly("none");
        assertThat(desk.notices)
                .singleElement()
                .extracting(Notice::text)
                .asString()
                .contains("no room");
    }

    @Test
    void whatTheUserCallsOffIsNoticed() throws Exception {
        AtomicBoolean over = new AtomicBoolean();
        TaskHandle endless = new TaskHandle() {
            @Override
            public void cancel() {
                over.set(true);
            }

            @Override
            public boolean ended() {
                return over.get();
            }
        };
        Desk busy = (Desk) Proxy.newProxyInstance(
                Desk.class.getClassLoader(), new Class<?>[] {Desk.class}, (proxy, method, values) -> endless);
        Latest other = new Latest(busy);
        run(() -> other.run("work", progress -> "answer", told::add, () -> told.add("none")));
        assertThat(told).isEmpty();
        endless.cancel();
        until(() -> !told.isEmpty());
        assertThat(told).containsExactly("none");
    }
}
