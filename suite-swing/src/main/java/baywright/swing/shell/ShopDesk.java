package baywright.swing.shell;

import baywright.library.ScriptCache;
import baywright.site.OpenShop;
import baywright.site.WorkedJob;
import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskListener;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Notice;
import baywright.swing.api.Readout;
import baywright.swing.api.Settings;
import baywright.swing.api.Subscription;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.workspace.WorkspaceException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The desk of the window. */
final class ShopDesk implements Desk {

    private static final Texts TEXTS = Texts.beside(ShopDesk.class, "texts");

    private final List<DeskListener> listeners = new ArrayList<>();
    private final History history = new History();
    private final Set<String> brokenRules = new HashSet<>();
    private final Readout readout;
    private final Settings settings;
    private final Consumer<Throwable> faults;
    private final Proving proving;
    private final Tasks tasks;
    private Front front = Nowhere.FRONT;
    private Runnable saver = () -> {};
    private Runnable reader = () -> {};
    private BiConsumer<String, String> ruleTrouble = (rule, why) -> {};
    private DeskState state = DeskState.EMPTY;
    private long serial;
    private final Deque<Turn> untold = new ArrayDeque<>();
    private boolean telling;

    /** One step from a state to the next. */
    private record Turn(DeskState before, DeskState now) {}

    /** The window before there is one. */
    private enum Nowhere implements Front {
        FRONT;

        @Override
        public void go(Destination place) {}

        @Override
        public void say(Notice notice) {}

        @Override
        public void show(List<RunningTask> tasks) {}

        @Override
        public void again() {}
    }

    /**
     * An empty desk.
     *
     * @param cache  where scripts are kept between loads
     * @param rules  those of plug-ins; asked for from a thread of its own
     * @param faults hears of faults of the program
     */
    ShopDesk(
            ScriptCache cache,
            Settings settings,
            Readout readout,
            Supplier<List<FindingRule>> rules,
            Consumer<Throwable> faults) {
        this.settings = settings;
        this.readout = readout;
        this.faults = faults;
        this.proving = new Proving(cache, rules, this::answered, this::ruleBroke);
        this.tasks = new Tasks(running -> front.show(running), faults);
    }

    void show(Front window) {
        front = window;
    }

    /** How everything is saved. */
    void saveBy(Runnable how) {
        saver = how;
    }

    /** How the open shop is read anew. */
    void rereadBy(Runnable how) {
        reader = how;
    }

    /** Who hears, besides the user, of rules that broke or overran: their ids with a sentence. */
    void tellOfRules(BiConsumer<String, String> listener) {
        ruleTrouble = listener;
    }

    // shop

    /** Lays a shop on the desk and forgets what was done to the one before. */
    void open(OpenShop shop, Optional<String> job) {
        history.clear();
        Optional<String> chosen = job.filter(id -> shop.job(id).isPresent())
                .or(() -> shop.jobs().stream().map(j -> j.id()).findFirst());
        become(new DeskState(
                Optional.of(shop),
                chosen,
                Optional.empty(),
                List.of(),
                false,
                !shop.unsaved().isEmpty()));
        prove();
    }

    /** Clears the desk. */
    void close() {
        history.clear();
        serial++;
        become(DeskState.EMPTY);
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
        boolean isOther = !state.jobId().equals(Optional.of(job));
        if (isOther && state.shop().flatMap(shop -> shop.job(job)).isPresent()) {
            history.seal();
            become(new DeskState(
                    state.shop(), Optional.of(job), Optional.empty(), List.of(), state.working(), state.unsaved()));
            prove();
        }
    }

    @Override
    public void change(Change change) {
        OpenShop before = state.shop().orElseThrow(() -> new IllegalStateException("no shop is open"));
        OpenShop after = change.does().apply(before);
        if (after == before) {
            return;
        }
        history.add(new History.Edit(change.title(), change.joins(), before, after, state.jobId()));
        lay(after, state.jobId());
    }

    /** Takes the last edit back; nothing happens when there is none. */
    void undo() {
        history.undo().ifPresent(edit -> patch(edit.after(), edit.before(), edit.job()));
    }

    /** Makes the edit again that was taken back last. */
    void redo() {
        history.redo().ifPresent(edit -> patch(edit.before(), edit.after(), edit.job()));
    }

    /** What undo would take back. */
    Optional<String> undoes() {
        return history.last().map(History.Edit::title);
    }

    /** What redo would make again. */
    Optional<String> redoes() {
        return history.next().map(History.Edit::title);
    }

    /** Only what the edit changed goes back: what a save has taken over from disk meanwhile stays. */
    private void patch(OpenShop from, OpenShop to, Optional<String> job) {
        state.shop().ifPresent(shop -> lay(shop.patched(from, to), job));
    }

    private void lay(OpenShop shop, Optional<String> job) {
        Optional<String> chosen = job.filter(id -> shop.job(id).isPresent())
                .or(() -> state.jobId().filter(id -> shop.job(id).isPresent()))
                .or(() -> shop.jobs().stream().map(j -> j.id()).findFirst());
        boolean same = chosen.equals(state.jobId());
        become(new DeskState(
                Optional.of(shop),
                chosen,
                same ? state.worked() : Optional.empty(),
                same ? state.remarks() : List.of(),
                true,
                !shop.unsaved().isEmpty()));
        prove();
    }

    /**
     * Takes over what a save has made of the shop. Edits made since it began stay unsaved.
     *
     * @param began the shop when the save began
     * @param saved the same after it
     */
    void saved(OpenShop began, OpenShop saved) {
        history.seal();
        state.shop().ifPresent(shop -> {
            OpenShop now = shop.patched(began, saved).overFilesOf(saved);
            become(new DeskState(
                    Optional.of(now),
                    state.jobId().filter(id -> now.job(id).isPresent()),
                    state.worked(),
                    state.remarks(),
                    state.working(),
                    !now.unsaved().isEmpty()));
            prove();
        });
    }

    // proofs

    /** Proves anew; also after a plug-in has brought another rule. */
    void prove() {
        state.shop().ifPresent(shop -> {
            serial++;
            if (!state.working()) {
                become(with(state.worked(), true));
            }
            proving.ask(new Proving.Asked(serial, shop, state.jobId()));
        });
    }

    private DeskState with(Optional<WorkedJob> worked, boolean working) {
        return new DeskState(state.shop(), state.jobId(), worked, state.remarks(), working, state.unsaved());
    }

    private void answered(Proving.Answer answer) {
        if (state.shop().isEmpty() || answer.asked().serial() > serial) {
            return;
        }
        boolean newest = answer.asked().serial() == serial;
        OpenShop shop = state.shop().get();
        OpenShop now = answer.loaded()
                .filter(loaded -> shop.isStale())
                .map(shop::withLibraryOf)
                .orElse(shop);
        boolean waits = !newest || now.isStale();
        if (answer.fault().isPresent()) {
            fault(answer.fault().get());
        }
        boolean fits = answer.asked().job().equals(state.jobId());
        become(new DeskState(
                Optional.of(now),
                state.jobId(),
                fits ? answer.worked() : state.worked(),
                fits ? answer.remarks() : state.remarks(),
                waits && answer.fault().isEmpty(),
                state.unsaved()));
    }

    private void fault(Throwable fault) {
        if (fault instanceof WorkspaceException said) {
            say(Notice.failed(said.getMessage()));
        } else {
            faults.accept(fault);
        }
    }

    /** Told once: a rule that breaks does so after every edit. */
    private void ruleBroke(Proving.BrokenRule broken) {
        boolean overran = broken.fault() instanceof TimeoutException;
        String why = overran
                ? TEXTS.of("rule.overran", broken.rule(), RuleWatch.USUAL_PATIENCE.toSeconds())
                : TEXTS.of("rule.broke", broken.rule());
        ruleTrouble.accept(broken.rule(), why);
        if (brokenRules.add(broken.rule())) {
            say(new Notice(Notice.Weight.WARN, why, Optional.empty()));
        }
    }

    /** A change that is asked for while another is told waits its turn, so that each listener hears of all in order. */
    private void become(DeskState now) {
        if (now.equals(state)) {
            return;
        }
        untold.add(new Turn(state, now));
        state = now;
        if (telling) {
            return;
        }
        telling = true;
        try {
            for (Turn turn = untold.poll(); turn != null; turn = untold.poll()) {
                tell(turn);
            }
        } finally {
            telling = false;
        }
    }

    private void tell(Turn turn) {
        for (DeskListener listener : List.copyOf(listeners)) {
            try {
                listener.changed(turn.before(), turn.now());
            } catch (RuntimeException e) {
                faults.accept(e);
            }
        }
    }

    // window

    @Override
    public void save() {
        saver.run();
    }

    @Override
    public void reread() {
        reader.run();
    }

    @Override
    public void go(Destination place) {
        front.go(place);
    }

    @Override
    public void say(Notice notice) {
        front.say(notice);
    }

    @Override
    public <T> TaskHandle run(Task<T> task) {
        return tasks.run(task);
    }

    @Override
    public Readout readout() {
        return readout;
    }

    @Override
    public Settings settings() {
        return settings;
    }

    /** Tells the same state once more, after the way of writing amounts has changed. */
    void again() {
        front.again();
    }

    /** Whether something is being worked out. */
    boolean isBusy() {
        return state.working() || tasks.areRunning();
    }

    void stop() {
        proving.stop();
    }
}
