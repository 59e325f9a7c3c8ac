package baywright.swing.shell;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.api.Change;
import baywright.swing.api.DeskState;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Task;
import baywright.workspace.Job;
import baywright.workspace.JobEdit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopDeskTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final String JOB = "green-estate";
    private static final String SCRIPT = "stages/wash/rinse.groovy";

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    private final List<Throwable> faults = new ArrayList<>();
    private List<FindingRule> rules = List.of();
    private ShopDesk desk;

    @BeforeAll
    static void openTheShop() throws Exception {
        shop = OpenShop.open(DemoShops.copy("millrace-works", folder.resolve("shop")), CLOCK, DemoShops.SCRIPTS);
    }

    @BeforeEach
    void layItOnTheDesk() throws Exception {
        UserSettings settings = UserSettings.inMemory();
        desk = new ShopDesk(
                DemoShops.SCRIPTS, settings, new UserReadout(settings, Locale.UK), () -> rules, faults::add);
        run(() -> desk.open(shop, Optional.of(JOB)));
        until(() -> !desk.state().working());
    }

    @AfterEach
    void noFault() {
        desk.stop();
        assertThat(faults).isEmpty();
    }

    @Test
    void theChosenJobIsWorkedOut() throws Exception {
        DeskState state = on(desk::state);
        assertThat(state.worked().orElseThrow().job().id()).isEqualTo(JOB);
        assertThat(state.unsaved()).isFalse();
    }

    @Test
    void anEditIsWorkedOutAndCanBeTakenBackAndMadeAgain() throws Exception {
        run(() -> desk.change("Drop a step", withoutStep(0)));
        until(() -> !desk.state().working());
        int steps = shop.job(JOB).orElseThrow().plan().steps().size();
        DeskState edited = on(desk::state);
        assertThat(edited.worked().orElseThrow().job().plan().steps()).hasSize(steps - 1);
        assertThat(edited.unsaved()).isTrue();
        assertThat(on(desk::undoes)).contains("Drop a step");
        run(desk::undo);
        until(() -> !desk.state().working());
        assertThat(on(desk::state).job()).isEqualTo(shop.job(JOB));
        assertThat(on(desk::state).unsaved()).isFalse();
        run(desk::redo);
        assertThat(on(desk::state).job()).isEqualTo(edited.job());
        until(() -> !desk.state().working());
    }

    @Test
    void editsWithTheSameMarkAreTakenBackTogether() throws Exception {
        run(() -> {
            desk.change(titled("a", "title"));
            desk.change(titled("ab", "title"));
            desk.change(titled("abc", "title"));
            desk.undo();
        });
        assertThat(on(desk::state).job()).isEqualTo(shop.job(JOB));
        assertThat(on(desk::undoes)).isEmpty();
    }

    @Test
    void nothingJoinsAnEditAcrossAnUndo() throws Exception {
        run(() -> {
            desk.change(titled("a", "title"));
            desk.change(titled("ab", "other"));
            desk.undo();
            desk.change(titled("ax", "title"));
            desk.undo();
        });
        assertThat(on(desk::state).job().orElseThrow().title()).isEqualTo("a");
    }

    @Test
    void aChangeThatChangesNothingIsNoEdit() throws Exception {
        run(() -> desk.change("Nothing", UnaryOperator.identity()));
        assertThat(on(desk::undoes)).isEmpty();
    }

    @Test
    void anEditedScriptBringsItsLibraryAndABrokenOneKeepsTheLast() throws Exception {
        String name = shop.texts().keySet().iterator().next();
        int stages = shop.site().library().stages().size();
        run(() -> desk.change("Break", s -> s.withText(name, "stage(")));
        until(() -> !desk.state().working());
        OpenShop broken = on(desk::state).shop().orElseThrow();
        assertThat(broken.isSound()).isFalse();
        assertThat(broken.problems()).anyMatch(p -> p.place().file().equals(name));
        assertThat(broken.site().library().stages()).hasSize(stages);
        run(() -> desk.change("Drop", s -> s.withText(name, "// nothing\n")));
        until(() -> !desk.state().working());
        run(desk::undo);
        run(desk::undo);
        until(() -> !desk.state().working());
        assertThat(on(desk::state).shop().orElseThrow().isSound()).isTrue();
        assertThat(on(desk::state).shop().orElseThrow().texts()).isEqualTo(shop.texts());
    }

    @Test
    void aRuleThatBreaksIsLeftOut() throws Exception {
        rules = List.of(new FindingRule() {
            @Override
            public String id() {
                return "broken";
            }

            @Override
            public List<baywright.swing.api.Remark> judge(baywright.site.JudgedJob job) {
                throw new IllegalStateException("meant to break");
            }
        });
        run(desk::prove);
        until(() -> !desk.state().working());
        assertThat(on(desk::state).worked()).isPresent();
    }

    @Test
    void listenersHearOfEachStateInOrder() throws Exception {
        List<String> heard = new ArrayList<>();
        run(() -> {
            desk.listen((before, now) -> {
                if (now.job().isPresent() && before.jobId().equals(Optional.of(JOB)) && heard.isEmpty()) {
                    desk.choose("hurried-hatch");
                }
            });
            desk.listen((before, now) ->
                    heard.add(before.jobId().orElse("") + ">" + now.jobId().orElse("")));
            desk.change(titled("x", ""));
        });
        until(() -> !desk.state().working());
        assertThat(heard.subList(0, 2)).containsExactly(JOB + ">" + JOB, JOB + ">hurried-hatch");
    }

    @Test
    void aCancelledTaskTellsNothing() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        List<String> told = new ArrayList<>();
        var handle = on(() -> desk.run(new Task<>(
                "Wait",
                progress -> {
                    begun.countDown();
                    while (!progress.cancelled()) {
                        Thread.sleep(1);
                    }
                    return "done";
                },
                told::add,
                fault -> told.add("failed"))));
        begun.await();
        run(handle::cancel);
        until(handle::ended);
        assertThat(told).isEmpty();
    }

    /** Law: undo and redo walk along the states that there were. */
    @Test
    void fiveHundredRandomStepsOfUndoAndRedoMeetTheStatesThatThereWere() throws Exception {
        Random random = new Random(7);
        List<OpenShop> states = new ArrayList<>(List.of(shop));
        run(() -> {
            int at = 0;
            for (int i = 0; i < 500; i++) {
                switch (random.nextInt(4)) {
                    case 0 -> {
                        desk.undo();
                        at = Math.max(0, at - 1);
                    }
                    case 1 -> {
                        desk.redo();
                        at = Math.min(states.size() - 1, at + 1);
                    }
                    default -> {
                        desk.change("Edit", randomEdit(random, i));
                        OpenShop now = desk.state().shop().orElseThrow();
                        if (!same(now, states.get(at))) {
                            states.subList(at + 1, states.size()).clear();
                            states.add(now);
                            at++;
                        }
                    }
                }
                assertThat(same(desk.state().shop().orElseThrow(), states.get(at)))
                        .as("step " + i)
                        .isTrue();
            }
        });
        until(() -> !desk.state().working());
    }

    private static boolean same(OpenShop a, OpenShop b) {
        return a.jobs().equals(b.jobs())
                && a.texts().equals(b.texts())
                && a.items().equals(b.items())
                && a.shop().equals(b.shop());
    }

    private static UnaryOperator<OpenShop> randomEdit(Random random, int i) {
        return switch (random.nextInt(5)) {
            case 0 -> withoutStep(random.nextInt(8));
            case 1 -> s -> s.withJob(copyOf(s, "copy-" + random.nextInt(4)));
            case 2 -> s -> s.withoutJob("copy-" + random.nextInt(4));
            case 3 -> s -> s.withText(SCRIPT + random.nextInt(3) + ".groovy", "// " + i + "\n");
            default ->
                s -> s.withItems(
                        s.items().isEmpty()
                                ? s.items()
                                : s.items().subList(1, s.items().size()));
        };
    }

    private static UnaryOperator<OpenShop> withoutStep(int index) {
        return s -> {
            Job job = s.job(JOB).orElseThrow();
            var steps = new ArrayList<>(job.plan().steps());
            if (index >= steps.size()) {
                return s;
            }
            steps.remove(index);
            return s.withJob(job.withPlan(new baywright.plan.Plan(steps)));
        };
    }

    private static Job copyOf(OpenShop s, String id) {
        return renamed(s.job(JOB).orElseThrow(), id, "Copy");
    }

    private static Change titled(String title, String joins) {
        return new Change(
                "Name the job", joins, s -> s.withJob(renamed(s.job(JOB).orElseThrow(), JOB, title)));
    }

    private static Job renamed(Job job, String id, String title) {
        return JobEdit.of(job).id(id).title(title).job();
    }
}
