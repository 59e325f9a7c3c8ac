package baywright.library;

import static baywright.script.Word.word;

import baywright.library.Example.Between;
import baywright.quantity.Quantity;
import baywright.script.Call;
import baywright.script.Limits;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Type;
import baywright.script.Type.Use;
import baywright.script.Value;
import baywright.script.Vocabulary.Section;
import baywright.script.Word;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code stage('…') { }} as a whole: its head here, what one use takes in {@link TermsBlock}. */
final class StageBlock extends Blocks {

    static final Section SECTION = new Section(
            "stage",
            "in 'stage(…) { }'",
            "One kind of work: what it is, what it finds and leaves, what it takes.",
            List.of(
                    word("title")
                            .takes("title", Type.TEXT.called("a text", "texts", "'Iron fallout removal'"))
                            .means("words for people")
                            .example("title 'Iron fallout removal'"),
                    word("about")
                            .takes("text", Type.TEXT)
                            .means("a sentence on what it is for")
                            .example("about 'Dissolves iron specks that washing leaves'"),
                    word("family")
                            .takes(
                                    "family",
                                    Type.ID
                                            .called("a family", "families", "'decontamination'")
                                            .naming("family"))
                            .means("the group of stages that it shares tools with")
                            .example("family 'decontamination'"),
                    word("revision")
                            .takes("number", Type.COUNT.called("a whole number from 1", "whole numbers", "3"))
                            .means("counted up by its author with every change; 1 where the stage does not say")
                            .example("revision 3"),
                    word("inputs").opens("inputs").means("what a step may set").example("inputs { }"),
                    word("worksOn")
                            .takesSeveral(
                                    "surfaces",
                                    Type.ID
                                            .called("a surface", "surfaces", "'paint'")
                                            .naming("surface"))
                            .means("the kinds of surface that it may be done on")
                            .example("worksOn 'paint', 'glass', 'wheel'"),
                    word("before")
                            .opens("before")
                            .means("what must hold before it begins")
                            .example("before { needs 'washed' }"),
                    word("after").opens("after").means("what it leaves behind").example("after { sets 'iron-clear' }"),
                    word("time")
                            .opens("time")
                            .means("how long it takes")
                            .example("time { attended 3.min, 4.min, 8.min }"),
                    word("uses")
                            .opens("uses")
                            .means("what it consumes")
                            .example("uses { item 'iron-remover', 75.ml, per: 'm2' }"),
                    word("hazards").opens("hazards").means("its dangers").example("hazards { from 'iron-remover' }"),
                    word("crew").opens("crew").means("who does it").example("crew { people 2 }"),
                    word("place").opens("place").means("where it is done").example("place { bay 'wash' }"),
                    word("climate")
                            .opens("climate")
                            .means("what surface and air must be like")
                            .example("climate { between 5.C, 30.C }"),
                    word("film")
                            .opens("film")
                            .means("the coating it takes off")
                            .example("film { removes 1.um, 2.um, 3.um }"),
                    word("checks")
                            .opens("checks")
                            .means("sentences for the job card")
                            .example("checks { confirm 'No coloured run-off' }"),
                    word("adds")
                            .opens("stage")
                            .means("for a stage that is like another: what stands in these blocks comes on top of the"
                                    + " other's, while a block outside takes the place of the other's block")
                            .example("adds { before { needs 'washed' } }")
                            .since("1.1"),
                    word("example")
                            .takes("name", Type.TEXT.called("a text", "texts", "'clean saloon'"))
                            .needsNamed(
                                    "on",
                                    Type.ID
                                            .called("a vehicle shape", "vehicle shapes", "'saloon'")
                                            .naming("shape"))
                            .named(
                                    "zones",
                                    Type.TEXTS
                                            .called("a list of zones", "lists of zones", "['bonnet']")
                                            .naming("zone"))
                            .named("with", Type.MAP.naming("input", Use.KEYS))
                            .named(
                                    "given",
                                    Type.MAP
                                            .called("a map", "maps", "['hardness': 'hard']")
                                            .naming("fact", Use.KEYS))
                            .named(
                                    "drivers",
                                    Type.MAP
                                            .called("a map", "maps", "[chip: 12]")
                                            .naming("driver", Use.KEYS))
                            .named("attended", Type.DURATIONS)
                            .named("standing", Type.DURATIONS)
                            .named(
                                    "uses",
                                    Type.MAP
                                            .called("a map", "maps", "['iron-remover': 0.9.l]")
                                            .naming("item", Use.KEYS))
                            .named("removes", Type.THICKNESSES)
                            .named("sets", Type.IDS.naming("state"))
                            .named("clears", Type.IDS.naming("state"))
                            .means("a worked example: the stage's own test. It says what must come out on a shape of"
                                    + " vehicle, with these inputs, surveyed facts and counted drivers")
                            .example("example 'clean saloon', on: 'saloon', with: [passes: 1],"
                                    + " attended: 12.min..14.min, uses: ['iron-remover': 0.9.l]")));

    private final String id;
    private final Place place;
    private final List<Input> inputs;
    private final TermsBlock terms = new TermsBlock();
    private String title = "";
    private String about = "";
    private String family = "";
    private Place familyPlace;
    private int revision = 1;
    private final Set<String> met = new HashSet<>();
    private final Map<String, Place> surfaces = new LinkedHashMap<>();
    private final List<ExampleDraft> examples = new ArrayList<>();

    StageBlock(String id, Place place, List<Input> inputs) {
        super(SECTION.name());
        this.id = id;
        this.place = place;
        this.inputs = inputs;
        this.familyPlace = place;
    }

    @Override
    public void met(Word word) {
        met.add(word.name());
    }

    @Override
    public void accept(Call call) {
        if (TermsBlock.has(call.word())) {
            terms.accept(call);
            return;
        }
        if (call.isConditional()) {
            call.error(
                    call.place(),
                    "conditional",
                    "'" + call.word().name()
                            + "' holds for every use, so it cannot stand in an if, a switch or a loop");
            return;
        }
        switch (call.word().name()) {
            case "title" -> {
                onlyOnce(call);
                title = call.text("title");
            }
            case "about" -> {
                onlyOnce(call);
                about = call.text("text");
            }
            case "family" -> {
                onlyOnce(call);
                family = call.text("family");
                familyPlace = call.value("family").place();
            }
            case "revision" -> revision(call);
            case "worksOn" -> call.several().forEach(v -> surface(call, v));
            case "example" -> example(call);
            default -> onlyOnce(call); // inputs, which were read before everything else
        }
    }

    private void surface(Call call, Value value) {
        String surface = (String) value.raw();
        Place before = surfaces.putIfAbsent(surface, value.place());
        if (before != null) {
            call.error(value.place(), "duplicate", "surface '" + surface + "' is already listed at " + before);
        }
    }

    private void revision(Call call) {
        onlyOnce(call);
        BigDecimal number = call.number("number");
        if (number.signum() <= 0 || number.precision() - number.scale() > 6) {
            call.badValue(
                    call.value("number").place(),
                    "'revision' wants a whole number from 1 to 999999; it is "
                            + call.value("number").described());
            return;
        }
        revision = number.intValueExact();
    }

    private void example(Call call) {
        onlyOnce(call, "example '" + call.text("name") + "'");
        if (examples.size() >= Limits.EXAMPLES) {
            call.error(
                    call.place(),
                    "limit",
                    "a stage holds at most " + Limits.EXAMPLES + " examples; keep those that differ most");
            return;
        }
        Map<String, Value> with = new LinkedHashMap<>();
        call.map("with").forEach((name, value) -> {
            Optional<Input> input =
                    inputs.stream().filter(i -> i.name().equals(name)).findFirst();
            if (input.isEmpty()) {
                List<String> known = inputs.stream().map(Input::name).toList();
                call.error(
                        value.place(),
                        "unknown-name",
                        "the stage has no input '" + name + "'" + Nearest.hint(name, known));
                return;
            }
            Optional<Value> fitting = InputValues.fit(input.get(), value);
            if (fitting.isEmpty()) {
                call.error(
                        value.place(),
                        "bad-value",
                        "input '" + name + "' takes " + InputValues.wanted(input.get()) + "; it is "
                                + value.described());
                return;
            }
            with.put(name, fitting.get());
        });
        Map<String, Quantity> uses = new LinkedHashMap<>();
        call.map("uses").forEach((item, value) -> {
            if (value.raw() instanceof Quantity quantity) {
                uses.put(item, quantity);
            } else {
                call.error(
                        value.place(),
                        "wrong-argument",
                        "'uses:' of 'example' wants an amount such as 0.9.l for each item; '" + item + "' is "
                                + value.described());
            }
        });
        Map<String, Value> drivers = call.map("drivers");
        drivers.values().stream()
                .filter(v -> !(v.raw() instanceof BigDecimal n) || n.signum() < 0)
                .forEach(v -> call.error(
                        v.place(),
                        "wrong-argument",
                        "'drivers:' of 'example' wants a number from 0 for each driver; it is " + v.described()));
        List<Value> states = new ArrayList<>(call.list("sets"));
        states.addAll(call.list("clears"));
        Example example = new Example(
                call.text("name"),
                call.text("on"),
                call.texts("zones"),
                with,
                call.map("given"),
                drivers,
                between(call, "attended"),
                between(call, "standing"),
                uses,
                between(call, "removes"),
                call.texts("sets"),
                call.texts("clears"),
                call.place());
        examples.add(new ExampleDraft(example, states, call.map("uses")));
    }

    private static Optional<Between> between(Call call, String param) {
        return call.given(param).map(v -> {
            Value.Range range = (Value.Range) v.raw();
            return new Between(
                    (Quantity) range.from().raw(), (Quantity) range.to().raw());
        });
    }

    /** Notes what a stage must say and this one does not. */
    void judge(Problems problems) {
        if (!met.contains("title")) {
            problems.error(place, "incomplete", "stage '" + id + "' has no title", "title");
        }
        if (!met.contains("family")) {
            problems.error(place, "incomplete", "stage '" + id + "' has no family", "family");
        }
        if (!met.contains("worksOn")) {
            problems.error(place, "incomplete", "stage '" + id + "' does not say what it works on", "worksOn");
        }
    }

    Stage build(Stage.TermsSource source, String like) {
        return new Stage(
                id,
                like,
                title,
                about,
                family,
                revision,
                inputs,
                List.copyOf(surfaces.keySet()),
                examples.stream().map(ExampleDraft::example).toList(),
                source,
                place);
    }

    Map<String, Place> surfacePlaces() {
        return surfaces;
    }

    List<ExampleDraft> examples() {
        return List.copyOf(examples);
    }

    Place familyPlace() {
        return familyPlace;
    }

    /** The terms with every branch of every condition. */
    StageTerms allBranches() {
        return terms.build(Set.of());
    }
}
