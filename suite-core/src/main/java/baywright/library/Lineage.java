package baywright.library;

import baywright.library.FileBlock.Met;
import baywright.script.Call;
import baywright.script.Evaluator;
import baywright.script.Handler;
import baywright.script.Node;
import baywright.script.Place;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A stage with those that it is like, the farthest first. What a stage gives itself takes the place of what it would
 * have from the others; what it {@code adds} comes on top.
 */
final class Lineage {

    /** What says something of one stage alone. */
    private static final Set<String> OWN = Set.of("revision", "example");

    /** One stage with the words that a nearer one gives in their place. */
    private record Part(Met met, Set<String> replaced) {}

    private final List<Part> parts = new ArrayList<>();

    /** A stage by itself. */
    Lineage(Met met) {
        this(List.of(met));
    }

    /** Stages from the farthest to the one that is meant. */
    Lineage(List<Met> line) {
        for (int i = 0; i < line.size(); i++) {
            Set<String> replaced = new HashSet<>();
            for (Met nearer : line.subList(i + 1, line.size())) {
                words(nearer.block().body(), replaced);
                replaced.addAll(OWN);
            }
            parts.add(new Part(line.get(i), replaced));
        }
    }

    /** The stage that is meant. */
    Met own() {
        return parts.get(parts.size() - 1).met();
    }

    /** The stages that it is like, the farthest first. */
    List<Met> others() {
        return parts.subList(0, parts.size() - 1).stream().map(Part::met).toList();
    }

    /** Runs all of it; the handler learns of everything that is not replaced. */
    void run(Evaluator evaluator, Handler handler) {
        for (Part part : parts) {
            evaluator.start(
                    part.met().block().body(),
                    part.met().scope().inner(),
                    new Filter(handler, part.replaced(), parts.size() == 1));
        }
    }

    /** Blocks of inputs that are not replaced, each with the stage that it stands in. */
    void inputs(Evaluator evaluator, Handler handler) {
        for (Part part : parts) {
            for (Node node : part.replaced().contains("inputs")
                    ? List.<Node>of()
                    : part.met().block().body()) {
                inputs(node, part.met(), evaluator, handler);
            }
        }
        for (Part part : parts) {
            for (Node node : part.met().block().body()) {
                boolean replaced = part.replaced().contains("inputs");
                if (!replaced && node instanceof Node.Call call && isBlock(call, "adds")) {
                    call.block().orElseThrow().body().forEach(n -> inputs(n, part.met(), evaluator, handler));
                }
            }
        }
    }

    private static void inputs(Node node, Met met, Evaluator evaluator, Handler handler) {
        if (node instanceof Node.Call call && isBlock(call, "inputs")) {
            evaluator.start(call.block().orElseThrow().body(), met.scope().inner(), handler);
        }
    }

    private static boolean isBlock(Node.Call call, String name) {
        return call.receiver().isEmpty()
                && call.name().equals(name)
                && call.block().isPresent();
    }

    /** Words of a stage's body, those in conditions too. */
    private static void words(List<Node> body, Set<String> all) {
        for (Node node : body) {
            if (node instanceof Node.Call call && call.receiver().isEmpty()) {
                all.add(call.name());
            } else if (node instanceof Node.When when) {
                words(when.then(), all);
                words(when.otherwise(), all);
            } else if (node instanceof Node.Choice choice) {
                choice.cases().forEach(c -> words(c.body(), all));
                words(choice.otherwise(), all);
            } else if (node instanceof Node.Each each) {
                words(each.body(), all);
            }
        }
        all.remove("adds");
    }

    /** Whether a place is in the part of its file where the stage that is meant stands. */
    boolean isOwn(Place place, List<Place> stagesOfFile) {
        Place start = own().place();
        boolean behind = place.file().equals(start.file()) && place.compareTo(start) >= 0;
        return behind
                && stagesOfFile.stream().filter(p -> p.compareTo(start) > 0).noneMatch(p -> p.compareTo(place) <= 0);
    }

    /** Lets through what is not replaced, and opens {@code adds { }}. */
    private record Filter(Handler to, Set<String> replaced, boolean alone) implements Handler {

        @Override
        public String section() {
            return to.section();
        }

        @Override
        public boolean skips(Word word) {
            return !word.name().equals("adds") && (replaced.contains(word.name()) || to.skips(word));
        }

        @Override
        public void met(Word word) {
            to.met(word);
        }

        @Override
        public void accept(Call call) {
            if (call.word().name().equals("adds")) {
                if (alone) {
                    call.warning(
                            call.place(),
                            "unused",
                            "'adds' comes on top of what the stage is like, and this one is like no other; write its"
                                    + " blocks by themselves");
                }
                call.inside(new Adds(this));
            } else {
                to.accept(call);
            }
        }
    }

    /** {@code adds { }}: its blocks belong to the stage around it. */
    private record Adds(Handler to) implements Handler {

        @Override
        public String section() {
            return to.section();
        }

        @Override
        public boolean skips(Word word) {
            return to.skips(word);
        }

        @Override
        public void met(Word word) {
            to.met(word);
        }

        @Override
        public void accept(Call call) {
            String word = call.word().name();
            if (word.equals("inputs")) {
                return; // read before everything else
            }
            if (TermsBlock.has(call.word())) {
                to.accept(call);
            } else {
                call.error(
                        call.place(),
                        "wrong-block",
                        "'" + word + "' cannot be added to; write it outside of 'adds { }', where it takes the"
                                + " other's place");
            }
        }
    }
}
