package baywright.library;

import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problem.Severity;
import baywright.script.ScriptFault;
import baywright.script.Value;
import baywright.script.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Reads the scripts of a kept library once somebody asks a stage for its terms. */
final class LazyStages {

    private static final int DEEPEST = 8;

    private final Map<String, FileDraft> drafts = new ConcurrentHashMap<>();
    private volatile Function<String, FileDraft> files = f -> FileDraft.nothing(f);
    private final Map<String, String> fileOf = new ConcurrentHashMap<>();
    private volatile Surroundings around = new Surroundings(List.of(), new Declared<>("constant"));

    /** Learns where files come from and what all stages may read. */
    void ready(Function<String, FileDraft> from, Surroundings known) {
        this.files = from;
        this.around = known;
    }

    /** What a file declares. */
    FileDraft file(String name) {
        return drafts.computeIfAbsent(name, files);
    }

    /** Where a stage's terms will come from. */
    Stage.TermsSource terms(String id, String file, List<Input> inputs) {
        fileOf.put(id, file);
        return new Source(id, inputs);
    }

    /** A stage as it stands in its file. */
    private FileBlock.Met met(String id) {
        return Optional.ofNullable(fileOf.get(id))
                .flatMap(f -> file(f).block().stages().stream()
                        .filter(m -> m.id().equals(id))
                        .findFirst())
                .orElseThrow(() -> new ScriptFault(List.of(new Problem(
                        Place.ofFile(fileOf.getOrDefault(id, "")),
                        Severity.ERROR,
                        "file",
                        "stage '" + id + "' is no longer there; load the library again",
                        "stage"))));
    }

    private final class Source implements Stage.TermsSource {
        private final String id;
        private final List<Input> inputs;
        private volatile ScriptTerms script;

        Source(String id, List<Input> inputs) {
            this.id = id;
            this.inputs = List.copyOf(inputs);
        }

        @Override
        public StageTerms of(Map<String, Value> with, Map<String, Value> surveyed) {
            return script().of(with, surveyed);
        }

        @Override
        public Optional<Wording> wording() {
            return script().wording();
        }

        private ScriptTerms script() {
            if (script == null) {
                script = read();
            }
            return script;
        }

        private ScriptTerms read() {
            List<FileBlock.Met> line = new ArrayList<>();
            for (String at = id;
                    !at.isEmpty() && line.size() < DEEPEST;
                    at = line.get(0).likeId()) {
                line.add(0, met(at));
            }
            return new ScriptTerms(new Lineage(line), inputs, around);
        }
    }
}
