package baywright.library;

import static baywright.script.Word.word;

import baywright.library.Fact.Kind;
import baywright.library.State.Scope;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Call;
import baywright.script.Limits;
import baywright.script.Nearest;
import baywright.script.Node;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Type;
import baywright.script.Type.Use;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A whole file: declarations in any order. Stages are only noted here; they are read once all facts are known. */
final class FileBlock extends Blocks {

    static final Section SECTION = new Section(
            "library",
            "at the start of a line outside all braces",
            "A library is a folder of files whose names end in .groovy; any file may hold any declaration. Ids are"
                    + " lower-case letters, digits and single hyphens.",
            List.of(
                    word("state")
                            .takes(
                                    "id",
                                    Type.ID.called("an id", "ids", "'washed'").naming("state", Use.DECLARES))
                            .needsNamed("means", Type.TEXT)
                            .named("opposite", Type.IDS.naming("state"))
                            .named("implies", Type.IDS.naming("state"))
                            .named("madeOf", Type.IDS.naming("state"))
                            .named("lasts", Type.DURATION)
                            .named("scope", Type.oneOf("zone", "vehicle", "condition"), "zone")
                            .means(
                                    "a fact about a zone, the vehicle or the bay that stages find, set and clear. A state"
                                            + " ends when its opposite begins; what it 'implies:' holds as long as it does; a state"
                                            + " 'madeOf:' others holds while all of them do; 'lasts:' says how long it holds before it"
                                            + " must be made again. 'scope:' says what it is true of: a zone, the vehicle as a whole,"
                                            + " or, as a condition, the bay and its air")
                            .example("state 'washed', means: 'contact-washed, no loose grit', opposite: 'loose-soil'"),
                    word("surface")
                            .takes(
                                    "id",
                                    Type.ID.called("an id", "ids", "'paint'").naming("surface", Use.DECLARES))
                            .needsNamed("means", Type.TEXT)
                            .means("a kind of surface that zones have and stages work on")
                            .example("surface 'paint', means: 'painted body panels'"),
                    word("family")
                            .takes(
                                    "id",
                                    Type.ID.called("an id", "ids", "'wash'").naming("family", Use.DECLARES))
                            .needsNamed("title", Type.TEXT)
                            .named("setUp", Type.DURATION, Quantity.of(0, Unit.MINUTE))
                            .means(
                                    "a group of stages that share tools; 'setUp:' is the time to get them out and put them"
                                            + " away, once a visit")
                            .example("family 'wash', title: 'Washing', setUp: 10.min"),
                    word("fact")
                            .takes(
                                    "id",
                                    Type.ID.called("an id", "ids", "'hardness'").naming("fact", Use.DECLARES))
                            .named("from", Type.TEXTS)
                            .named("kind", Type.oneOf("choice", "number", "yes-no"))
                            .named("usual", Type.ANY)
                            .needsNamed("means", Type.TEXT)
                            .means(
                                    "something that the survey finds and that does not change by itself: one text of a list"
                                            + " ('from:'), a number or a yes-or-no")
                            .example("fact 'hardness', from: ['soft', 'medium', 'hard'], usual: 'medium',"
                                    + " means: 'how hard the clear coat is'"),
                    word("factor")
                            .takes(
                                    "id",
                                    Type.ID.called("an id", "ids", "'hardness'").naming("factor", Use.DECLARES))
                            .opens("factor")
                            .means("makes hands-on times larger or smaller by a surveyed fact")
                            .example("factor('hardness') { reads 'hardness'; value 'hard', 1.3 }"),
                    word("constant")
                            .takes(
                                    "name",
                                    Type.ID
                                            .called("a name", "names", "'bench-rate'")
                                            .naming("constant", Use.DECLARES))
                            .takes("value", Type.ANY.called("a value", "values", "3.min"))
                            .means("a value that all stages may read: by its name where that has no hyphen, else by"
                                    + " constant('…')")
                            .example("constant 'bench-rate', 3.min")
                            .since("1.1"),
                    word("rule")
                            .takes(
                                    "id",
                                    Type.ID
                                            .called("an id", "ids", "'tape-over-48-hours'")
                                            .naming("rule", Use.DECLARES))
                            .named("replaces", Type.YES_NO, false)
                            .opens("rule")
                            .means("what the library forbids or warns about beyond what stages need and refuse; with"
                                    + " 'replaces: true' it takes the place of the rule with the same id")
                            .example("rule('tape-over-48-hours') { title 'Tape over 48 hours' }")
                            .since("1.2"),
                    word("goal")
                            .takes(
                                    "id",
                                    Type.ID
                                            .called("an id", "ids", "'one-step-finish'")
                                            .naming("goal", Use.DECLARES))
                            .opens("goal")
                            .means("an end that customers ask for by name; a job names it, and 'plan compose' finds the"
                                    + " stages that lead there")
                            .example("goal('one-step-finish') { title 'One-step finish' }")
                            .since("1.3"),
                    word("stage")
                            .takes(
                                    "id",
                                    Type.ID
                                            .called("an id", "ids", "'iron-removal'")
                                            .naming("stage", Use.DECLARES))
                            .named(
                                    "like",
                                    Type.ID
                                            .called("a stage", "stages", "'iron-removal'")
                                            .naming("stage"))
                            .opens("stage")
                            .means(
                                    "one kind of work. With 'like:' it has everything from another stage that it does not"
                                            + " say itself, but for revision and examples: a word that stands in it takes the"
                                            + " place of the other's, and what stands in 'adds' comes on top")
                            .example("stage('iron-removal') { title 'Iron fallout removal' }")));

    /** A stage that was met: its block with the locals that it sees. */
    record Met(String id, Optional<Value> like, Place place, Node.Block block, baywright.script.Scope scope) {

        /** Id of the stage that it is like; empty when it is like none. */
        String likeId() {
            return like.map(v -> (String) v.raw()).orElse("");
        }
    }

    /** A state with the places of the states that it names. */
    record StateDraft(State state, List<Value> named) {}

    private final Problems problems;
    private final List<StateDraft> states = new ArrayList<>();
    private final List<Surface> surfaces = new ArrayList<>();
    private final List<Family> families = new ArrayList<>();
    private final List<Fact> facts = new ArrayList<>();
    private final List<FactorBlock.Draft> factors = new ArrayList<>();
    private final List<Constant> constants = new ArrayList<>();
    private final List<Met> nameless = new ArrayList<>();
    private final List<RuleBlock> rules = new ArrayList<>();
    private final List<GoalBlock.Draft> goals = new ArrayList<>();
    private final List<Met> stages = new ArrayList<>();

    private int declared;
    private boolean fullOfStages;

    FileBlock(Problems problems) {
        super(SECTION.name());
        this.problems = problems;
    }

    @Override
    public void accept(Call call) {
        String param = call.word().name().equals("constant") ? "name" : "id";
        String id = call.text(param);
        Place place = call.value(param).place();
        if (++declared > Limits.DECLARATIONS) {
            tooMany(call, declared == Limits.DECLARATIONS + 1, Limits.DECLARATIONS, "declarations");
            return;
        }
        switch (call.word().name()) {
            case "state" -> state(call, id, place);
            case "surface" -> surfaces.add(new Surface(id, call.text("means"), place));
            case "family" -> family(call, id, place);
            case "fact" -> fact(call, id, place);
            case "factor" -> factor(call, id, place);
            case "constant" -> constant(call, id, place);
            case "rule" -> rule(call, id, place);
            case "goal" -> goal(call, id, place);
            default -> stage(call, id, place);
        }
    }

    private static void tooMany(Call call, boolean first, int most, String what) {
        if (first) {
            call.error(
                    call.place(),
                    "limit",
                    "a file holds at most " + most + " " + what + "; put this and what follows into another file");
        }
    }

    private void state(Call call, String id, Place place) {
        Optional<Quantity> lasts = call.given("lasts").map(v -> (Quantity) v.raw());
        if (lasts.isPresent() && lasts.get().amount().signum() <= 0) {
            call.badValue(call.value("lasts").place(), "'lasts:' of 'state' is a time above zero");
            return;
        }
        List<Value> named = new ArrayList<>(call.list("opposite"));
        named.addAll(call.list("implies"));
        named.addAll(call.list("madeOf"));
        Scope scope = Scope.valueOf(call.text("scope").toUpperCase(Locale.ROOT));
        State state = new State(
                id,
                call.text("means"),
                scope,
                call.texts("opposite"),
                call.texts("implies"),
                call.texts("madeOf"),
                lasts,
                place);
        states.add(new StateDraft(state, named));
    }

    private void family(Call call, String id, Place place) {
        Quantity setUp = call.quantity("setUp");
        if (setUp.amount().signum() < 0) {
            call.badValue(call.value("setUp").place(), "'setUp:' of 'family' is a time from 0");
            return;
        }
        families.add(new Family(id, call.text("title"), setUp, place));
    }

    private void fact(Call call, String id, Place place) {
        boolean listed = call.has("from");
        String kindText = call.has("kind") ? call.text("kind") : listed ? "choice" : "";
        if (kindText.isEmpty() || listed != kindText.equals("choice")) {
            call.error(
                    call.place(),
                    "wrong-argument",
                    "'fact' wants either 'from:' with a list of texts, or 'kind:' with 'number' or 'yes-no'");
            return;
        }
        Kind kind = Kind.valueOf(kindText.toUpperCase(Locale.ROOT).replace('-', '_'));
        List<String> choices = call.texts("from");
        Fact bare = new Fact(id, kind, choices, "", call.text("means"), place);
        if (!call.has("usual")) {
            if (kind != Kind.NUMBER) {
                call.error(call.place(), "wrong-argument", "'fact' wants 'usual:' with " + InputValues.wanted(bare));
                return;
            }
            facts.add(bare);
            return;
        }
        Value usual = call.value("usual");
        if (InputValues.fit(bare, usual).isEmpty()) {
            String hint = usual.raw() instanceof String met ? Nearest.hint(met, choices) : "";
            call.error(
                    usual.place(),
                    "wrong-argument",
                    "'usual:' of 'fact' wants " + InputValues.wanted(bare) + "; it is " + usual.described() + hint);
            return;
        }
        facts.add(new Fact(id, kind, choices, plain(usual), call.text("means"), place));
    }

    private static String plain(Value value) {
        return value.raw() instanceof BigDecimal number
                ? number.toPlainString()
                : value.raw().toString();
    }

    private void factor(Call call, String id, Place place) {
        FactorBlock block = new FactorBlock(id, place);
        call.inside(block);
        block.judge(problems);
        if (block.fact().isPresent()) {
            factors.add(block.build());
        }
    }

    /** A stage with a wrong first line is read all the same, to find what else is wrong with it. */
    @Override
    public boolean seesTo(Word word, Place place, Node.Block block, baywright.script.Scope scope) {
        if (!word.name().equals("stage")) {
            return false;
        }
        if (nameless.size() >= Limits.STAGES) {
            return true;
        }
        nameless.add(new Met("", Optional.empty(), place, block, scope));
        return true;
    }

    private void constant(Call call, String name, Place place) {
        if (call.isConditional()) {
            call.error(call.place(), "conditional", "a constant cannot stand in an if, a switch or a loop");
            return;
        }
        constants.add(new Constant(name, call.value("value"), place));
    }

    private void rule(Call call, String id, Place place) {
        if (call.isConditional()) {
            call.error(call.place(), "conditional", "a rule cannot stand in an if, a switch or a loop");
            return;
        }
        RuleBlock block = new RuleBlock(id, place, call.yes("replaces"));
        long before = problems.errors();
        call.inside(block);
        if (problems.errors() == before) {
            block.judge(problems);
        }
        if (problems.errors() == before) {
            rules.add(block);
        }
    }

    private void goal(Call call, String id, Place place) {
        if (call.isConditional()) {
            call.error(call.place(), "conditional", "a goal cannot stand in an if, a switch or a loop");
            return;
        }
        GoalBlock block = new GoalBlock(id, place);
        long before = problems.errors();
        call.inside(block);
        if (problems.errors() == before) {
            block.judge(problems);
        }
        if (problems.errors() == before) {
            goals.add(block.build());
        }
    }

    private void stage(Call call, String id, Place place) {
        if (call.isConditional()) {
            call.error(call.place(), "conditional", "a stage cannot stand in an if, a switch or a loop");
            return;
        }
        if (stages.size() >= Limits.STAGES) {
            tooMany(call, !fullOfStages, Limits.STAGES, "stages");
            fullOfStages = true;
            return;
        }
        stages.add(new Met(id, call.given("like"), place, call.block().orElseThrow(), call.scope()));
    }

    /** Whether it declares stages and nothing that other files refer to. */
    boolean isOnlyStages() {
        return states.isEmpty()
                && surfaces.isEmpty()
                && families.isEmpty()
                && facts.isEmpty()
                && factors.isEmpty()
                && constants.isEmpty()
                && rules.isEmpty()
                && goals.isEmpty();
    }

    List<Constant> constants() {
        return constants;
    }

    List<StateDraft> states() {
        return states;
    }

    List<Surface> surfaces() {
        return surfaces;
    }

    List<Family> families() {
        return families;
    }

    List<Fact> facts() {
        return facts;
    }

    List<FactorBlock.Draft> factors() {
        return factors;
    }

    /** Stages whose first line is wrong. */
    List<Met> nameless() {
        return nameless;
    }

    /** Rules without an error so far. */
    List<RuleBlock> rules() {
        return rules;
    }

    /** Goals without an error so far. */
    List<GoalBlock.Draft> goals() {
        return goals;
    }

    List<Met> stages() {
        return stages;
    }
}
