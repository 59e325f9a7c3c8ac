package baywright.chance;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Activities and what waits for what.
 *
 * @param activities at least one, each id once
 * @param links      among them, without a circle
 * @param windows    among them
 */
public record Network(List<Activity> activities, List<Link> links, List<Window> windows) {

    public Network {
        activities = List.copyOf(activities);
        links = List.copyOf(links);
        windows = List.copyOf(windows);
        Map<String, Integer> places = places(activities);
        for (Link link : links) {
            require(places, link.from(), link.to(), "link");
        }
        for (Window window : windows) {
            require(places, window.from(), window.to(), "window");
        }
        List<String> circle = circle(activities, links);
        if (!circle.isEmpty()) {
            throw new IllegalArgumentException(
                    "these activities wait for each other in a circle: " + String.join(" → ", circle));
        }
    }

    public Network(List<Activity> activities, List<Link> links) {
        this(activities, links, List.of());
    }

    private static Map<String, Integer> places(List<Activity> activities) {
        if (activities.isEmpty()) {
            throw new IllegalArgumentException("a network needs at least one activity");
        }
        Map<String, Integer> places = new HashMap<>();
        for (Activity activity : activities) {
            if (places.put(activity.id(), places.size()) != null) {
                throw new IllegalArgumentException("two activities are called " + activity.id());
            }
        }
        return places;
    }

    private static void require(Map<String, Integer> places, String from, String to, String what) {
        for (String id : List.of(from, to)) {
            if (!places.containsKey(id)) {
                throw new IllegalArgumentException(
                        "the " + what + " from " + from + " to " + to + " names " + id + ", which is no activity");
            }
        }
    }

    /** The members of a circle, the first repeated at the end; empty when there is none. */
    private static List<String> circle(List<Activity> activities, List<Link> links) {
        Map<String, List<String>> next = new HashMap<>();
        Map<String, Integer> before = new TreeMap<>();
        activities.forEach(activity -> before.put(activity.id(), 0));
        for (Link link : links) {
            next.computeIfAbsent(link.from(), id -> new ArrayList<>()).add(link.to());
            before.merge(link.to(), 1, Integer::sum);
        }
        Deque<String> free = new ArrayDeque<>();
        before.forEach((id, count) -> {
            if (count == 0) {
                free.add(id);
            }
        });
        while (!free.isEmpty()) {
            String id = free.remove();
            before.remove(id);
            for (String after : next.getOrDefault(id, List.of())) {
                if (before.merge(after, -1, Integer::sum) == 0) {
                    free.add(after);
                }
            }
        }
        return before.isEmpty() ? List.of() : around(before.keySet().iterator().next(), links, before);
    }

    /** Goes back along links among those left until one comes twice; each left has a predecessor that is left. */
    private static List<String> around(String start, List<Link> links, Map<String, Integer> left) {
        List<String> way = new ArrayList<>();
        String at = start;
        while (!way.contains(at)) {
            way.add(0, at);
            String here = at;
            at = links.stream()
                    .filter(link -> link.to().equals(here) && left.containsKey(link.from()))
                    .map(Link::from)
                    .findFirst()
                    .orElseThrow();
        }
        List<String> circle = new ArrayList<>(way.subList(0, way.indexOf(at) + 1));
        circle.add(0, at);
        return circle;
    }

    /** Places of the activities in an order in which each comes after what it waits for. */
    int[] order() {
        Map<String, Integer> places = places(activities);
        int[] before = new int[activities.size()];
        links.forEach(link -> before[places.get(link.to())]++);
        int[] order = new int[activities.size()];
        int found = 0;
        for (int i = 0; i < before.length; i++) {
            if (before[i] == 0) {
                order[found++] = i;
            }
        }
        for (int k = 0; k < found; k++) {
            String id = activities.get(order[k]).id();
            for (Link link : links) {
                if (link.from().equals(id) && --before[places.get(link.to())] == 0) {
                    order[found++] = places.get(link.to());
                }
            }
        }
        return Arrays.copyOf(order, found);
    }

    /** Place of each activity in the list. */
    Map<String, Integer> places() {
        return places(activities);
    }
}
