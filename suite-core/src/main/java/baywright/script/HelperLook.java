package baywright.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Looks into a helper that nobody has called. What it will be called with is not known, so that only what is wrong
 * whatever comes is noted: a function that nobody knows, a unit that there is not, minutes added to millilitres.
 */
final class HelperLook {

    private static final Set<String> NAMES_OF_A_STAGE = Set.of("unknown-name", "unknown-constant");

    private final Evaluator run;

    HelperLook(Evaluator run) {
        this.run = run;
    }

    /** Goes through a block whose parameters may be anything. */
    void block(Node.Block block, Scope around) {
        Scope inner = around.inner();
        List<String> parameters = block.bare() ? List.of("it") : block.parameters();
        parameters.forEach(p -> inner.defineBroken(p, block.place()));
        Runnable look = () -> {
            block.body().forEach(n -> statement(n, inner));
            run.helpers().lookInto(block.body(), inner);
        };
        run.speculate(look, Set.of());
    }

    private void statement(Node node, Scope scope) {
        if (!(node instanceof Node.Define define)) {
            value(node, scope);
            return;
        }
        try {
            run.define(define, scope);
        } catch (Fault fault) {
            if (isMoot(fault)) {
                value(define.value(), scope);
            } else {
                run.note(fault, "");
            }
        }
    }

    private void value(Node node, Scope scope) {
        try {
            run.value(node, scope);
        } catch (Fault fault) {
            if (isMoot(fault)) {
                parts(node, scope);
            } else {
                run.note(fault, "");
            }
        }
    }

    /** Only a stage knows its inputs; what stands outside of all stages is looked at before there is one. */
    private boolean isMoot(Fault fault) {
        boolean outside = run.names() == Names.NONE && NAMES_OF_A_STAGE.contains(fault.code());
        return fault.isSilent() || outside;
    }

    private void parts(Node node, Scope scope) {
        if (node instanceof Node.Call call) {
            if (call.receiver().isPresent() && !Functions.names().contains(call.name())) {
                String hint = Nearest.hint(call.name(), Functions.names());
                run.note(
                        Fault.of(
                                call.place(),
                                "unknown-function",
                                "no value has a function '" + call.name() + "'" + hint),
                        "");
            }
            call.block().ifPresent(b -> block(b, scope));
        }
        partsOf(node).forEach(part -> value(part, scope));
    }

    private static List<Node> partsOf(Node node) {
        List<Node> parts = new ArrayList<>();
        if (node instanceof Node.Call call) {
            call.receiver().ifPresent(parts::add);
            parts.addAll(call.args());
            call.named().forEach(e -> parts.add(e.value()));
        } else if (node instanceof Node.Binary binary) {
            parts.addAll(List.of(binary.left(), binary.right()));
        } else if (node instanceof Node.Unary unary) {
            parts.add(unary.operand());
        } else if (node instanceof Node.Choose choose) {
            parts.addAll(List.of(choose.condition(), choose.then(), choose.otherwise()));
        } else if (node instanceof Node.Fallback fallback) {
            parts.addAll(List.of(fallback.value(), fallback.otherwise()));
        } else if (node instanceof Node.Span span) {
            parts.addAll(List.of(span.from(), span.to()));
        } else if (node instanceof Node.At at) {
            parts.addAll(List.of(at.target(), at.key()));
        } else if (node instanceof Node.Member member) {
            parts.add(member.target());
        } else if (node instanceof Node.Items items) {
            parts.addAll(items.items());
        } else if (node instanceof Node.Template template) {
            parts.addAll(template.parts());
        } else if (node instanceof Node.Entries entries) {
            entries.entries().forEach(e -> parts.addAll(List.of(e.key(), e.value())));
        }
        return parts;
    }
}
