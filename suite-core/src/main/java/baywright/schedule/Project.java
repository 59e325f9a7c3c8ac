package baywright.schedule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Work to be timed.
 *
 * @param activities ids are unique
 * @param resources  ids are unique
 * @param lags       waits between activities
 * @param holds      what is taken over several activities
 * @param goal       what should be small
 * @param horizon    all work ends by then, above 0
 * @param budgets    what resources may be given in a day or a week
 * @param rests      rest of people from day to day
 */
public record Project(
        List<Activity> activities,
        List<Resource> resources,
        List<Lag> lags,
        List<Hold> holds,
        Goal goal,
        int horizon,
        List<Budget> budgets,
        List<Rest> rests) {

    /** Without budgets and rests. */
    public Project(
            List<Activity> activities,
            List<Resource> resources,
            List<Lag> lags,
            List<Hold> holds,
            Goal goal,
            int horizon) {
        this(activities, resources, lags, holds, goal, horizon, List.of(), List.of());
    }

    public Project {
        activities = List.copyOf(activities);
        resources = List.copyOf(resources);
        lags = List.copyOf(lags);
        holds = List.copyOf(holds);
        budgets = List.copyOf(budgets);
        rests = List.copyOf(rests);
        if (horizon < 1 || horizon > Hours.END_OF_TIME) {
            throw new IllegalArgumentException("a project needs a horizon from 1, got " + horizon);
        }
        unique(activities.stream().map(Activity::id).toList());
        unique(resources.stream().map(Resource::id).toList());
        for (Lag lag : lags) {
            index(lag.from(), activities.size());
            index(lag.to(), activities.size());
        }
        for (Activity activity : activities) {
            for (Need need : activity.needs()) {
                possible(activity.id(), need, resources);
            }
        }
        for (Hold hold : holds) {
            for (int activity : hold.activities()) {
                index(activity, activities.size());
            }
            possible(hold.id(), hold.need(), resources);
        }
        for (Goal.Term term : goal.terms()) {
            index(term.activity(), activities.size());
        }
        for (Budget budget : budgets) {
            index(budget.resource(), resources.size());
            for (int activity : budget.loads().keySet()) {
                index(activity, activities.size());
            }
        }
        for (Rest rest : rests) {
            index(rest.resource(), resources.size());
        }
    }

    private static void unique(List<String> ids) {
        Set<String> seen = new HashSet<>();
        ids.forEach(id -> {
            if (!seen.add(id)) {
                throw new IllegalArgumentException("the id " + id + " is given twice");
            }
        });
    }

    private static void index(int index, int size) {
        if (index < 0 || index >= size) {
            throw new IllegalArgumentException("there are " + size + ", got number " + index);
        }
    }

    private static void possible(String id, Need need, List<Resource> resources) {
        need.anyOf().forEach(r -> index(r, resources.size()));
        long able = need.anyOf().stream()
                .filter(r -> resources.get(r).capacity() >= need.amount())
                .count();
        if (able < need.count()) {
            throw new IllegalArgumentException("activity " + id + " can never run: it needs " + need.count() + " with "
                    + need.amount() + " of "
                    + need.anyOf().stream().map(r -> resources.get(r).id()).toList()
                    + ", and " + able + " have so much");
        }
    }
}
