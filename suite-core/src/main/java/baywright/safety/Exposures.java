package baywright.safety;

import baywright.library.StageTerms.Crew;
import baywright.plan.StepWork;
import baywright.quantity.ThreePoint;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Sums up what each pair of hands takes in on each day. */
final class Exposures {

    private static final double MINUTES = 60;

    private record Key(LocalDate day, int hand) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int byDay = day.compareTo(other.day);
            return byDay != 0 ? byDay : Integer.compare(hand, other.hand);
        }
    }

    /** Whose hands; named hands are counted by their place among the people of the shop. */
    private record Hand(int number, String name) {}

    private static final class Sums {
        private String name = "";
        private double vapour;
        private final List<PersonDay.Dose> vibration = new ArrayList<>();
        private final List<PersonDay.Dose> noise = new ArrayList<>();
    }

    private Exposures() {}

    static List<PersonDay> of(SafetyCase all, List<DayBook.Stint> stints) {
        Hazards hazards = new Hazards(all);
        AirRule air = new AirRule(all);
        Map<Key, Sums> sums = new TreeMap<>();
        for (DayBook.Stint stint : stints) {
            StepWork work = stint.work();
            List<Hand> hands = hands(all, stint);
            double hours = handsOnMinutes(all, work, hands.size()) * stint.share() / MINUTES;
            for (Hand hand : hands) {
                Sums own = sums.computeIfAbsent(new Key(stint.day(), hand.number()), k -> new Sums());
                own.name = hand.name();
                own.vapour += stint.share() * air.percent(work, stint.bay());
                add(
                        own.vibration,
                        work,
                        hazards.level(work, Agent.VIBRATION),
                        hours * all.settings().vibration().triggerShare(),
                        0);
                double protector =
                        Hazards.earsCovered(work) ? all.settings().noise().protector() : 0;
                add(own.noise, work, hazards.level(work, Agent.NOISE), hours, protector);
            }
        }
        List<PersonDay> days = new ArrayList<>();
        sums.forEach((key, own) ->
                days.add(new PersonDay(key.day(), key.hand(), own.name, own.vibration, own.noise, own.vapour)));
        return days;
    }

    private static void add(
            List<PersonDay.Dose> doses, StepWork work, OptionalDouble level, double hours, double protector) {
        if (level.isPresent() && hours > 0) {
            doses.add(new PersonDay.Dose(work.step(), level.getAsDouble(), hours, protector));
        }
    }

    private static List<Hand> hands(SafetyCase all, DayBook.Stint stint) {
        List<Hand> hands = new ArrayList<>();
        for (int i = 0; i < all.people().size(); i++) {
            Worker person = all.people().get(i);
            if (stint.people().contains(person.id())) {
                hands.add(new Hand(i + 1, person.name()));
            }
        }
        if (hands.isEmpty()) {
            for (int i = 1; i <= hands(all, stint.work()); i++) {
                hands.add(new Hand(i, ""));
            }
        }
        return hands;
    }

    /** How many take part: those that the stage asks for, or as many as take turns. */
    static int hands(SafetyCase all, StepWork work) {
        return Math.max(work.crew().people(), all.job().step(work.step()).people());
    }

    /** Minutes of one of so many: the crew's time, divided where more take turns. */
    static double handsOnMinutes(SafetyCase all, StepWork work, int hands) {
        Crew crew = work.crew();
        ThreePoint points = work.attendedMinutes();
        double one =
                switch (all.settings().day().reckoning()) {
                    case LIKELY -> points.likely().doubleValue();
                    case MEAN -> points.mean().doubleValue();
                    case MOST -> points.most().doubleValue();
                };
        double together = one * StepWork.share(crew, crew.people()).doubleValue();
        return together * crew.people() / Math.max(hands, crew.people());
    }
}
