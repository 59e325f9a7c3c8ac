package baywright.plan;

import baywright.plan.CompiledTerms.Condition;
import java.util.ArrayList;
import java.util.List;

/** What a use of a stage must and must not find in one bay, ready to be put to hundreds of thousands of states. */
final class ComposeGate {

    private final long[] required;
    private final List<long[][]> oneOf = new ArrayList<>();
    private final List<long[]> refused = new ArrayList<>();
    private boolean closed;

    /** @param gives conditions that the bay gives */
    ComposeGate(List<Condition> conditions, long[] gives) {
        required = new long[gives.length];
        for (Condition condition : conditions) {
            long[][] left = condition.alternatives().stream()
                    .map(a -> {
                        long[] rest = a.clone();
                        ComposeDomain.remove(rest, gives);
                        return rest;
                    })
                    .toArray(long[][]::new);
            if (condition.need().absent()) {
                refused.addAll(List.of(left));
            } else if (left.length == 0) {
                closed = true;
            } else if (left.length == 1) {
                ComposeDomain.add(required, left[0]);
            } else {
                oneOf.add(left);
            }
        }
    }

    boolean isOpen(long[] found) {
        if (closed || !Bits.contains(found, required)) {
            return false;
        }
        for (int i = 0; i < refused.size(); i++) {
            if (Bits.contains(found, refused.get(i))) {
                return false;
            }
        }
        for (int i = 0; i < oneOf.size(); i++) {
            boolean any = false;
            for (long[] alternative : oneOf.get(i)) {
                any |= Bits.contains(found, alternative);
            }
            if (!any) {
                return false;
            }
        }
        return true;
    }
}
