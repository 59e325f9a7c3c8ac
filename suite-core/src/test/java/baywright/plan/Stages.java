package baywright.plan;

import baywright.library.Example;
import baywright.library.Fact;
import baywright.library.Family;
import baywright.library.Input;
import baywright.library.Item;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.library.StageTerms.Attended;
import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Need;
import baywright.library.StageTerms.Origin;
import baywright.library.StageTerms.Reach;
import baywright.library.State;
import baywright.library.Surface;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Stages, states, vehicles and plans built by hand. */
final class Stages {

    static final LocalDateTime MONDAY_AT_EIGHT = LocalDateTime.of(2026, 12, 7, 8, 0);

    private final List<State> states = new ArrayList<>();
    private final List<Fact> facts = new ArrayList<>();
    private final List<Family> families = new ArrayList<>();
    private final List<JobFactor> factors = new ArrayList<>();
    private final List<Stage> stages = new ArrayList<>();
    private final List<Bay> bays = new ArrayList<>();
    private final List<Rule> rules = new ArrayList<>();

    static Place line(String file, int line) {
        return new Place(file, line, 1);
    }

    /** A saloon's front: three touching panels, a far one, a pane, and the vehicle. */
    static Shape front() {
        return new Shape(
                "front",
                "Front",
                BigDecimal.ONE,
                List.of(
                        zone("bonnet", "paint", "1.5", "wing-left", "wing-right"),
                        zone("wing-left", "paint", "0.6", "bonnet"),
                        zone("wing-right", "paint", "0.6", "bonnet"),
                        zone("boot-lid", "paint", "1.1"),
                        zone("windscreen", "glass", "0.9"),
                        new Zone("vehicle", "Vehicle", "vehicle", "", Map.of(), List.of())));
    }

    static Zone zone(String id, String surface, String m2, String... neighbours) {
        Map<String, BigDecimal> measures = Map.of("m2", new BigDecimal(m2), "panel", BigDecimal.ONE);
        return new Zone(id, id.replace('-', ' '), surface, "steel", measures, List.of(neighbours));
    }

    Stages states(String... ids) {
        for (String id : ids) {
            state(id, State.Scope.ZONE, List.of(), List.of(), List.of(), Optional.empty());
        }
        return this;
    }

    Stages opposites(String a, String b) {
        return state(a, State.Scope.ZONE, List.of(b), List.of(), List.of(), Optional.empty())
                .states(b);
    }

    Stages vehicleState(String id) {
        return state(id, State.Scope.VEHICLE, List.of(), List.of(), List.of(), Optional.empty());
    }

    Stages condition(String id) {
        return state(id, State.Scope.CONDITION, List.of(), List.of(), List.of(), Optional.empty());
    }

    Stages perishing(String id, int minutes) {
        Quantity lasts = Quantity.of(minutes, Unit.MINUTE);
        return state(id, State.Scope.ZONE, List.of(), List.of(), List.of(), Optional.of(lasts));
    }

    Stages implying(String id, String... implied) {
        return state(id, State.Scope.ZONE, List.of(), List.of(implied), List.of(), Optional.empty());
    }

    Stages madeOf(String id, String... parts) {
        return state(id, State.Scope.ZONE, List.of(), List.of(), List.of(parts), Optional.empty());
    }

    private Stages state(
            String id,
            State.Scope scope,
            List<String> opposites,
            List<String> implied,
            List<String> madeOf,
            Optional<Quantity> lasts) {
        states.add(new State(id, id, scope, opposites, implied, madeOf, lasts, line("states.groovy", 1)));
        return this;
    }

    Stages fact(String id, String usual, String... choices) {
        facts.add(new Fact(id, Fact.Kind.CHOICE, List.of(choices), usual, id, line("facts.groovy", 1)));
        return this;
    }

    Stages family(String id, int minutes) {
        families.add(new Family(id, id, Quantity.of(minutes, Unit.MINUTE), line("families.groovy", 1)));
        return this;
    }

    Stages factor(JobFactor factor) {
        factors.add(factor);
        return this;
    }

    Stages bay(String id, String kind, String... conditions) {
        bays.add(new Bay(id, id, List.of(kind), List.of(conditions)));
        return this;
    }

    /** A stage that says the same whatever its inputs. */
    Stages stage(Terms terms) {
        return stage(terms, (with, found) -> terms.build());
    }

    Stages stage(Terms terms, Stage.TermsSource source) {
        stages.add(new Stage(
                terms.id,
                terms.id.replace('-', ' '),
                "",
                terms.family,
                1,
                terms.inputs,
                terms.surfaces,
                terms.examples,
                source,
                line(terms.id + ".groovy", 1)));
        return this;
    }

    /**
     * A rule that forbids a stage while a test of its one answer is true.
     *
     * @param ask what it asks on the zone at hand, such as {@code count}
     * @param of  what that is about: a stage or a state
     */
    Stages forbids(String id, String stage, String ask, String of, Predicate<Object> when) {
        Rule.Judge judge = answers -> when.test(answers.get(0))
                ? Optional.of(new Rule.Spoken(Rule.Severity.FORBIDS, List.of(0)))
                : Optional.empty();
        rules.add(new Rule(
                id,
                id,
                "because",
                new Rule.At(List.of(), List.of(stage), List.of(), List.of()),
                List.of(new Rule.Ask(ask, List.of(of), "", Rule.Reach.ZONE, false)),
                judge,
                line("rules.groovy", rules.size() + 1)));
        return this;
    }

    Library library() {
        return Library.of(
                states,
                List.of(surface("paint"), surface("glass"), surface("wheel"), surface("vehicle")),
                families,
                facts,
                factors,
                List.<Item>of(),
                stages,
                rules,
                "0");
    }

    private static Surface surface(String id) {
        return new Surface(id, id, line("surfaces.groovy", 1));
    }

    Setting setting() {
        return setting(Survey.NOTHING);
    }

    Setting setting(Survey survey) {
        return setting(front(), survey);
    }

    Setting setting(Shape shape, Survey survey) {
        return new Setting(library(), shape, survey, bays, MONDAY_AT_EIGHT);
    }

    Proof prove(Step... steps) {
        return Prover.prove(setting(), plan(steps));
    }

    static Plan plan(Step... steps) {
        return new Plan(List.of(steps));
    }

    static Step step(String id, String stage, String... zones) {
        return new Step(id, stage, List.of(zones), Map.of(), Step.Priority.MUST, Optional.empty(), Map.of());
    }

    /** The same step, its start fixed so many minutes after Monday at eight. */
    static Step at(Step step, long minutes) {
        return new Step(
                step.id(),
                step.stage(),
                step.zones(),
                step.with(),
                step.priority(),
                Optional.of(MONDAY_AT_EIGHT.plusMinutes(minutes)),
                step.drivers());
    }

    static Terms terms(String id) {
        return new Terms(id);
    }

    /** Words for the terms of one stage. */
    static final class Terms {
        private final String id;
        private String family = "work";
        private String bay = "";
        private List<String> surfaces = List.of();
        private StageTerms.Crew crew = StageTerms.Crew.ONE;
        private Set<String> dependsOn = Set.of();
        private final List<Input> inputs = new ArrayList<>();
        private final List<Example> examples = new ArrayList<>();
        private final List<Need> needs = new ArrayList<>();
        private final List<Need> prefers = new ArrayList<>();
        private final List<Effect> effects = new ArrayList<>();
        private final List<Attended> attended = new ArrayList<>();
        private final List<StageTerms.Standing> standing = new ArrayList<>();
        private final List<StageTerms.SetUp> setUps = new ArrayList<>();
        private final List<StageTerms.Use> uses = new ArrayList<>();
        private final List<StageTerms.Removal> removals = new ArrayList<>();
        private int line = 1;

        private Terms(String id) {
            this.id = id;
        }

        private Origin here() {
            line++;
            return new Origin(line(id + ".groovy", line), dependsOn);
        }

        Terms family(String name) {
            family = name;
            return this;
        }

        Terms bay(String kind) {
            bay = kind;
            return this;
        }

        Terms on(String... names) {
            surfaces = List.of(names);
            return this;
        }

        Terms crew(int people, String... shares) {
            List<BigDecimal> of = Arrays.stream(shares).map(BigDecimal::new).toList();
            crew = new StageTerms.Crew(people, Math.max(people, of.size()), of, "", false, Optional.empty());
            return this;
        }

        Terms input(Input input) {
            inputs.add(input);
            return this;
        }

        Terms example(Example example) {
            examples.add(example);
            return this;
        }

        Terms dependingOn(String... names) {
            dependsOn = Set.of(names);
            return this;
        }

        Terms needs(String... states) {
            for (String state : states) {
                needs.add(new Need(List.of(state), false, "", here()));
            }
            return this;
        }

        Terms needsAny(String... states) {
            needs.add(new Need(List.of(states), false, "", here()));
            return this;
        }

        Terms refuses(String... states) {
            needs.add(new Need(List.of(states), true, "", here()));
            return this;
        }

        Terms prefers(String state) {
            prefers.add(new Need(List.of(state), false, "", here()));
            return this;
        }

        Terms sets(String... states) {
            for (String state : states) {
                effects.add(new Effect(state, true, Optional.empty(), Reach.ZONE, "", here()));
            }
            return this;
        }

        Terms clears(String... states) {
            for (String state : states) {
                clears(state, Reach.ZONE, "");
            }
            return this;
        }

        Terms clears(String state, Reach reach, String unless) {
            effects.add(new Effect(state, false, Optional.empty(), reach, unless, here()));
            return this;
        }

        Terms arrives(String state, int minutes) {
            Optional<Quantity> after = Optional.of(Quantity.of(minutes, Unit.MINUTE));
            effects.add(new Effect(state, true, after, Reach.ZONE, "", here()));
            return this;
        }

        Terms takes(int minutes) {
            BigDecimal all = BigDecimal.valueOf(minutes);
            return takes(new ThreePoint(all, all, all), "vehicle", "1");
        }

        Terms takes(ThreePoint minutes, String per, String times) {
            attended.add(new Attended(minutes, per, new BigDecimal(times), here()));
            return this;
        }

        Terms setUp(int minutes) {
            setUps.add(new StageTerms.SetUp(BigDecimal.valueOf(minutes), here()));
            return this;
        }

        Terms stands(int least, int most) {
            return stands(least, least, Optional.of(BigDecimal.valueOf(most)));
        }

        Terms stands(int least) {
            return stands(least, least, Optional.empty());
        }

        Terms stands(int least, int usual, Optional<BigDecimal> most) {
            standing.add(
                    new StageTerms.Standing(BigDecimal.valueOf(least), most, BigDecimal.valueOf(usual), "", here()));
            return this;
        }

        Terms uses(String item, Quantity amount, String per) {
            uses.add(new StageTerms.Use(item, amount, "", per, BigDecimal.ONE, here()));
            return this;
        }

        Terms removes(String least, String likely, String most) {
            removals.add(new StageTerms.Removal(ThreePoint.of(least, likely, most), BigDecimal.ONE, here()));
            return this;
        }

        StageTerms build() {
            return new StageTerms(
                    needs,
                    prefers,
                    effects,
                    attended,
                    standing,
                    setUps,
                    uses,
                    StageTerms.Hazards.NONE,
                    crew,
                    new StageTerms.Where(bay, List.of(), Optional.empty()),
                    StageTerms.Climate.ANY,
                    removals,
                    List.of(),
                    List.of(),
                    dependsOn);
        }
    }
}
