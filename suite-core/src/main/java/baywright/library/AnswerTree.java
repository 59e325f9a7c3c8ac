package baywright.library;

import baywright.library.Rule.Spoken;
import java.util.AbstractList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What a rule has said to which answers. It reads one answer at a time, and which one comes next depends only on those before;
 * so a judgement is a path through a tree. For any thread.
 */
final class AnswerTree {

    private static final int REMEMBERED = 4_096;

    /** A place on a path: what was said, or the number of the answer that is read next and where its values lead. */
    private static final class Branch {
        private final Map<Object, Branch> next = new ConcurrentHashMap<>();
        private volatile int question = -1;
        private volatile Optional<Optional<Spoken>> said = Optional.empty();
    }

    private volatile Branch root = new Branch();
    private int branches;

    /** What is said to the answers, from memory or by a judgement that may fail and is then not remembered. */
    Optional<Spoken> of(List<Object> answers, Function<List<Object>, Optional<Spoken>> judgement) {
        Branch at = root;
        while (at != null && at.said.isEmpty() && at.question >= 0) {
            at = at.next.get(answers.get(at.question));
        }
        if (at != null && at.said.isPresent()) {
            return at.said.get();
        }
        Map<Integer, Object> read = new LinkedHashMap<>();
        Optional<Spoken> said = judgement.apply(new AbstractList<>() {
            @Override
            public Object get(int number) {
                return read.computeIfAbsent(number, answers::get);
            }

            @Override
            public int size() {
                return answers.size();
            }
        });
        remember(read, said);
        return said;
    }

    private synchronized void remember(Map<Integer, Object> read, Optional<Spoken> said) {
        if (branches >= REMEMBERED) {
            root = new Branch();
            branches = 0;
        }
        Branch at = root;
        for (Map.Entry<Integer, Object> answer : read.entrySet()) {
            at.question = answer.getKey();
            at = at.next.computeIfAbsent(answer.getValue(), a -> new Branch());
            branches++;
        }
        at.said = Optional.of(said);
    }
}
