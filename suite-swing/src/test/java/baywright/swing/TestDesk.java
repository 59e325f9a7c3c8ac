package baywright.swing;

import baywright.site.OpenShop;
import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskListener;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Readout;
import baywright.swing.api.Settings;
import baywright.swing.api.Subscription;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.shell.UserReadout;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A desk without a window for tests of workbenches: everything is done at once in the calling thread, tasks too, and what it was told is kept.
 */
public final class TestDesk implements Desk {

    /** Where it was sent, in order. */
    public final List<Destination> destinations = new ArrayList<>();

    /** What it was told, in order. */
    public final List<Notice> notices = new ArrayList<>();

    /** Titles of the changes made, in order; taken back ones too. */
    public final List<String> titles = new ArrayList<>();

    /** How often it was asked to save. */
    public int saves;

    /** How often it was asked to read the shop anew. */
    public int rereads;

    private final List<DeskListener> listeners = new ArrayList<>();
    private final Deque<DeskState> done = new ArrayDeque<>();
    private final Deque<DeskState> undone = new ArrayDeque<>();
    private final Map<String, String> settings = new HashMap<>();
    private final Settings kept = new InMemory();
    private final Readout readout = new UserReadout(kept, Locale.UK);
    private DeskState state = DeskState.EMPTY;
    private String joins = "";

    /** An empty desk. */
    public TestDesk() {}

    /** A desk with a shop and its first job. */
    public TestDesk(OpenShop shop) {
        this(
                shop,
                shop.jobs().isEmpty()
                        ? Optional.empty()
                        : Optional.of(shop.jobs().get(0).id()));
    }

    public TestDesk(OpenShop shop, Optional<String> job) {
        state = stateOf(shop, job);
    }

    private static DeskState stateOf(OpenShop shop, Optional<String> job) {
        OpenShop loaded = shop.reloaded(DemoShops.SCRIPTS);
        return new DeskState(
                Optional.of(loaded),
                job.filter(id -> loaded.job(id).isPresent()),
                job.flatMap(loaded::job).map(loaded.site()::work),
                List.of(),
                false,
                !loaded.unsaved().isEmpty());
    }

    private void become(DeskState now) {
        DeskState before = state;
        state = now;
        List.copyOf(listeners).forEach(listener -> listener.changed(before, now));
    }

    @Override
    public DeskState state() {
        return state;
    }

    @Override
    public Subscription listen(DeskListener listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    @Override
    public void choose(String job) {
        state.shop()
                .filter(shop -> shop.job(job).isPresent())
                .ifPresent(shop -> become(stateOf(shop, Optional.of(job))));
    }

    @Override
    public void change(Change change) {
        OpenShop before = state.shop().orElseThrow();
        OpenShop after = change.does().apply(before);
        if (after == before) {
            return;
        }
        titles.add(change.title());
        boolean joined = !joins.isEmpty() && joins.equals(change.joins()) && !done.isEmpty();
        if (!joined) {
            done.push(state);
        }
        joins = change.joins();
        undone.clear();
        become(stateOf(after, state.jobId()));
    }

    /** Takes the last change back. */
    public void undo() {
        joins = "";
        undone.push(state);
        become(done.pop());
    }

    /** Makes the last change that was taken back again. */
    public void redo() {
        joins = "";
        done.push(state);
        become(undone.pop());
    }

    @Override
    public void save() {
        saves++;
    }

    @Override
    public void reread() {
        rereads++;
        OpenShop shop = state.shop().orElseThrow();
        become(stateOf(OpenShop.open(shop.folder(), Clock.systemUTC(), DemoShops.SCRIPTS), state.jobId()));
    }

    @Override
    public void go(Destination place) {
        destinations.add(place);
    }

    @Override
    public void say(Notice notice) {
        notices.add(notice);
    }

    @Override
    public <T> TaskHandle run(Task<T> task) {
        try {
            task.done().accept(task.work().run(new Silent()));
        } catch (Exception e) {
            task.failed().accept(e);
        }
        return new Ended();
    }

    @Override
    public Readout readout() {
        return readout;
    }

    @Override
    public Settings settings() {
        return kept;
    }

    private final class InMemory implements Settings {
        @Override
        public Optional<String> get(String key) {
            return Optional.ofNullable(settings.get(key));
        }

        @Override
        public void put(String key, String value) {
            settings.put(key, value);
        }

        @Override
        public void remove(String key) {
            settings.remove(key);
        }
    }

    private static final class Silent implements Task.Progress {
        @Override
        public void at(double share) {}

        @Override
        public void says(String text) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    }

    private static final class Ended implements TaskHandle {
        @Override
        public void cancel() {}

        @Override
        public boolean ended() {
            return true;
        }
    }
}
