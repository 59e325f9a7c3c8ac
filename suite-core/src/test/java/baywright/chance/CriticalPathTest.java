package baywright.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.chance.CriticalPath.Timing;
import baywright.chance.Link.Kind;
import baywright.quantity.ThreePoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CriticalPathTest {

    /** B. W. Taylor, Introduction to Management Science, project management, solution; free floats by hand. */
    @Test
    void sevenArrowsOfATextbook() {
        CriticalPath path = CriticalPath.ofMeans(
                Networks.ofArrows("1-2: 7", "1-3: 10", "2-4: 6", "3-4: 5", "3-5: 4", "4-5: 3", "5-6: 2"));
        assertThat(path.length()).isEqualTo(20, within(1e-9));
        assertThat(path.critical()).containsExactly("1-3", "3-4", "4-5", "5-6");
        assertThat(rows(path))
                .containsExactly(
                        "1-2 0 7 2 9 2 0",
                        "1-3 0 10 0 10 0 0",
                        "2-4 7 13 9 15 2 2",
                        "3-4 10 15 10 15 0 0",
                        "3-5 10 14 14 18 4 4",
                        "4-5 15 18 15 18 0 0",
                        "5-6 18 20 18 20 0 0");
    }

    /** B. W. Taylor, as above, thirteen arrows with a dummy; free floats by hand. */
    @Test
    void thirteenArrowsWithADummy() {
        CriticalPath path = CriticalPath.ofMeans(Networks.ofArrows(
                "1-2: 8", "1-3: 10", "1-4: 9", "2-5: 6", "2-6: 4", "3-5: 5", "4-5: 0", "4-7: 7", "5-7: 12", "5-8: 15",
                "6-9: 18", "7-8: 4", "8-9: 7"));
        assertThat(path.length()).isEqualTo(38, within(1e-9));
        assertThat(path.critical()).containsExactly("1-3", "3-5", "5-7", "7-8", "8-9");
        assertThat(rows(path))
                .containsExactly(
                        "1-2 0 8 1 9 1 0",
                        "1-3 0 10 0 10 0 0",
                        "1-4 0 9 6 15 6 0",
                        "2-5 8 14 9 15 1 1",
                        "2-6 8 12 16 20 8 0",
                        "3-5 10 15 10 15 0 0",
                        "4-5 9 9 15 15 6 6",
                        "4-7 9 16 20 27 11 11",
                        "5-7 15 27 15 27 0 0",
                        "5-8 15 30 16 31 1 1",
                        "6-9 12 30 20 38 8 8",
                        "7-8 27 31 27 31 0 0",
                        "8-9 31 38 31 38 0 0");
    }

    private static List<String> rows(CriticalPath path) {
        return path.timings().stream()
                .map(t -> "%s %.0f %.0f %.0f %.0f %.0f %.0f"
                        .formatted(
                                t.activity(),
                                t.earlyStart(),
                                t.earlyFinish(),
                                t.lateStart(),
                                t.lateFinish(),
                                t.totalFloat(),
                                t.freeFloat()))
                .toList();
    }

    /** Worked by hand: each kind of link binds the two ends that its name says. */
    @Test
    void linksBindTheEndsThatTheyName() {
        assertThat(startOfSecond(Kind.FINISH_TO_START, 3)).isEqualTo(13);
        assertThat(startOfSecond(Kind.START_TO_START, 3)).isEqualTo(3);
        assertThat(startOfSecond(Kind.FINISH_TO_FINISH, 3)).isEqualTo(9); // 10 + 3 - 4
        assertThat(startOfSecond(Kind.START_TO_FINISH, 9)).isEqualTo(5); // 0 + 9 - 4
        assertThat(startOfSecond(Kind.FINISH_TO_START, -2)).isEqualTo(8);
        assertThat(startOfSecond(Kind.START_TO_FINISH, 1)).isZero();
    }

    private static double startOfSecond(Kind kind, double lag) {
        Network network = new Network(
                List.of(
                        Activity.of("a", ThreePoint.of("10", "10", "10")),
                        Activity.of("b", ThreePoint.of("4", "4", "4"))),
                List.of(new Link("a", "b", kind, lag)));
        return CriticalPath.ofLikely(network).timings().get(1).earlyStart();
    }

    @Test
    void anActivityWaitsForItsDay() {
        Network network = new Network(
                List.of(Activity.of("a", ThreePoint.of("1", "1", "1")).notBefore(30)), List.of());
        assertThat(CriticalPath.ofLikely(network).length()).isEqualTo(31);
    }

    /** A circle is reported with its members. */
    @Test
    void aCircleIsReportedWithItsMembers() {
        assertThatThrownBy(() -> Networks.of("A: 1,1,1; C\nB: 1,1,1; A\nC: 1,1,1; B\nD: 1,1,1; C"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("A → B → C → A");
    }

    @Test
    void refusesStrangersAndTwins() {
        Activity a = Activity.of("a", ThreePoint.ZERO);
        assertThatThrownBy(() -> new Network(List.of(a), List.of(Link.after("a", "b"))))
                .hasMessageContaining("names b, which is no activity");
        assertThatThrownBy(() -> new Network(List.of(a, a), List.of())).hasMessageContaining("two activities");
        assertThatThrownBy(() -> new Network(List.of(), List.of())).hasMessageContaining("at least one");
        assertThatThrownBy(() -> CriticalPath.of(new Network(List.of(a), List.of()), 1, 2))
                .hasMessageContaining("as many durations");
    }

    /** Laws of every network: bounds on the length, floats, and a chain without room. */
    @Property(tries = 100)
    void keepsTheLawsOfNetworks(@ForAll @IntRange(min = 1, max = 30) int size, @ForAll long seed) {
        Network network = random(size, seed);
        CriticalPath path = CriticalPath.ofMeans(network);
        double longest = 0;
        double sum = 0;
        for (Activity activity : network.activities()) {
            double mean = activity.minutes().mean().doubleValue();
            longest = Math.max(longest, mean);
            sum += mean;
        }
        assertThat(path.length()).isBetween(longest - 1e-9, sum + 1e-9);
        for (Timing timing : path.timings()) {
            assertThat(timing.freeFloat()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(timing.totalFloat()).isGreaterThanOrEqualTo(timing.freeFloat() - 1e-9);
        }
        double chain = path.critical().stream()
                .mapToDouble(id -> path.timings().stream()
                        .filter(t -> t.activity().equals(id))
                        .mapToDouble(t -> t.earlyFinish() - t.earlyStart())
                        .sum())
                .sum();
        assertThat(chain).isGreaterThanOrEqualTo(path.length() - 1e-6);
    }

    /** The order of the table changes nothing; more time or another link never shortens. */
    @Property(tries = 60)
    void orderDoesNotMatterAndMoreNeverShortens(@ForAll @IntRange(min = 2, max = 25) int size, @ForAll long seed) {
        Network network = random(size, seed);
        List<Activity> shuffled = new ArrayList<>(network.activities());
        List<Link> links = new ArrayList<>(network.links());
        Collections.shuffle(shuffled, new Random(seed));
        Collections.shuffle(links, new Random(seed));
        double length = CriticalPath.ofMeans(network).length();
        assertThat(CriticalPath.ofMeans(new Network(shuffled, links)).length()).isEqualTo(length, within(1e-9));
        links.add(Link.after("a0", "a" + (size - 1), 5));
        assertThat(CriticalPath.ofMeans(new Network(shuffled, links)).length()).isGreaterThanOrEqualTo(length - 1e-9);
    }

    static Network random(int size, long seed) {
        Random random = new Random(seed);
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int least = random.nextInt(20);
            int likely = least + random.nextInt(10);
            activities.add(
                    Activity.of("a" + i, ThreePoint.of("" + least, "" + likely, "" + (likely + random.nextInt(30)))));
            for (int k = 0; i > 0 && k < random.nextInt(3); k++) {
                links.add(Link.after("a" + random.nextInt(i), "a" + i));
            }
        }
        return new Network(activities, links);
    }
}
