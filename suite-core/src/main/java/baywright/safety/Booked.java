package baywright.safety;

import baywright.library.Stage;
import java.util.List;
import java.util.Optional;

/** Another job of the shop, with what it brings into which bay at what time, by a timetable or by the order of its steps. */
public final class Booked {

    private final String job;
    private final String title;
    private final SafetyCase all;
    private final List<Presence> presences;
    private volatile Optional<List<ApartRule.Brought>> brought = Optional.empty();

    private Booked(String job, String title, SafetyCase all) {
        this.job = job;
        this.title = title;
        this.all = all;
        presences = Presence.of(all, DayBook.of(all));
    }

    /** A job with its own plan, proof and survey. */
    public static Booked of(String job, String title, SafetyCase all) {
        return new Booked(job, title, all);
    }

    public String job() {
        return job;
    }

    /** What it was judged by, nobody else being there. */
    public SafetyCase alone() {
        return all;
    }

    /** Whether its times are known, not only guessed from the order of its steps. */
    boolean isTimed() {
        return !all.spells().isEmpty();
    }

    String title() {
        return title;
    }

    /** What it brings of some pairs; of its own site's it is worked out once, as all jobs about that time ask for it. */
    List<ApartRule.Brought> brought(List<ApartPair> pairs) {
        if (!pairs.equals(all.settings().apart())) {
            return ApartRule.brought(presences, pairs);
        }
        List<ApartRule.Brought> known = brought.orElseGet(() -> ApartRule.brought(presences, pairs));
        brought = Optional.of(known);
        return known;
    }

    /** A step of it in words: its stage and id. */
    String words(Presence presence) {
        Stage stage = all.setting().library().stageById().get(presence.work().stage());
        return (stage == null ? presence.work().stage() : stage.title()) + " ("
                + presence.work().step() + ")";
    }

    /** Whether another one brings the same into the same bays at the same times. */
    public boolean bringsTheSame(Booked other) {
        return brings().equals(other.brings());
    }

    private List<List<Object>> brings() {
        return presences.stream()
                .map(p -> List.<Object>of(words(p), p.bay(), p.from(), p.to(), p.things()))
                .toList();
    }
}
