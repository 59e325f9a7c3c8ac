package baywright.script;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Calls helpers. None calls itself, not even by way of another, so that every call ends. */
final class Helpers {

    private final Evaluator run;
    private final Set<Place> active = new LinkedHashSet<>();
    private final Set<Place> called = new HashSet<>();

    Helpers(Evaluator run) {
        this.run = run;
    }

    /** Makes a helper under a name that no word has. */
    Value made(Node.Define define, Node.Block block, Scope scope) {
        String name = define.name();
        boolean taken = run.vocabulary().function(name).isPresent()
                || !run.vocabulary().sectionsWith(name).isEmpty();
        if (taken) {
            throw Fault.of(
                    define.place(),
                    "duplicate",
                    "'" + name + "' is a word of the language; give the helper another name");
        }
        return Value.of(new Helper(name, block, scope), define.place());
    }

    /** The helper that a call means; empty when its name is not that of one. */
    static Optional<Helper> called(Node.Call call, Scope scope) {
        return scope.find(call.name()).filter(v -> v.raw() instanceof Helper).map(v -> (Helper) v.raw());
    }

    /** Looks into the helpers among statements that have been run and have called none of them so far. */
    void lookInto(List<Node> body, Scope scope) {
        for (Node node : body) {
            boolean made = node instanceof Node.Define define
                    && define.value() instanceof Node.Block block
                    && !called.contains(block.place())
                    && scope.find(define.name())
                            .filter(v -> v.raw() instanceof Helper helper
                                    && helper.block().place().equals(block.place()))
                            .isPresent();
            if (made) {
                new HelperLook(run).block((Node.Block) ((Node.Define) node).value(), scope);
            }
        }
    }

    /** Names of all helpers that can be called. */
    static Set<String> names(Scope scope) {
        Set<String> names = new TreeSet<>(scope.names());
        names.removeIf(n -> scope.find(n).filter(v -> v.raw() instanceof Helper).isEmpty());
        return names;
    }

    /** Works a helper out for the arguments of a call. */
    Value value(Node.Call call, Helper helper, Scope scope) {
        run.step(call.place());
        Node.Block block = helper.block();
        List<String> parameters = block.bare() ? List.of("it") : block.parameters();
        if (!call.named().isEmpty()) {
            throw wrong(call.named().get(0).key().place(), helper, parameters, "it takes no argument by name");
        }
        if (call.block().isPresent()) {
            throw wrong(call.block().get().place(), helper, parameters, "it takes no block in braces");
        }
        if (call.args().size() != parameters.size()) {
            throw wrong(
                    call.place(), helper, parameters, "there are " + call.args().size() + " values");
        }
        called.add(block.place());
        Scope inner = helper.scope().inner();
        List<Value> args = new ArrayList<>();
        call.args().forEach(a -> args.add(run.value(a, scope)));
        for (int i = 0; i < args.size(); i++) {
            inner.define(parameters.get(i), args.get(i), block.place());
        }
        if (!active.add(block.place())) {
            throw Fault.of(call.place(), "refused", "helper '" + helper.name() + "' calls itself, so it would not end");
        }
        try {
            if (active.size() > Limits.HELPERS) {
                throw Fault.of(call.place(), "limit", "helpers call each other at most " + Limits.HELPERS + " deep");
            }
            return run.lastOf(block, inner).at(call.place());
        } finally {
            active.remove(block.place());
        }
    }

    private static Fault wrong(Place place, Helper helper, List<String> parameters, String met) {
        return Fault.of(
                place,
                "wrong-argument",
                "'" + helper.name() + "' is called like " + helper.name() + "(" + String.join(", ", parameters) + "); "
                        + met);
    }
}
