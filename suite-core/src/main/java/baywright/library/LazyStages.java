package baywright.library;

import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problem.Severity;
import baywright.script.ScriptFault;
import baywright.script.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Reads the scripts of a kept library once somebody asks a stage for its terms. */
final class LazyStages {

    private final Map<String, FileDraft> drafts = new ConcurrentHashMap<>();
    private volatile Function<String, FileDraft> files = f -> FileDraft.nothing(f);
    private volatile List<Fact> facts = List.of();

    /** Learns where files come from and which facts the library knows. */
    void ready(Function<String, FileDraft> from, List<Fact> known) {
        this.files = from;
        this.facts = List.copyOf(known);
    }

    /** What a file declares. */
    FileDraft file(String name) {
        return drafts.computeIfAbsent(name, files);
    }

    /** Where a stage's terms will come from. */
    Stage.TermsSource terms(String id, String file, List<Input> inputs) {
        return new Source(id, file, inputs);
    }

    private final class Source implements Stage.TermsSource {
        private final String id;
        private final String file;
        private final List<Input> inputs;
        private volatile ScriptTerms script;

        Source(String id, String file, List<Input> inputs) {
            this.id = id;
            this.file = file;
            this.inputs = List.copyOf(inputs);
        }

        @Override
        public StageTerms of(Map<String, Value> with, Map<String, Value> surveyed) {
            if (script == null) {
                script = read();
            }
            return script.of(with, surveyed);
        }

        private ScriptTerms read() {
            Optional<FileBlock.Met> met = file(file).block().stages().stream()
                    .filter(m -> m.id().equals(id))
                    .findFirst();
            return met.map(m -> new ScriptTerms(m.block().body(), m.scope(), inputs, facts))
                    .orElseThrow(() -> new ScriptFault(List.of(new Problem(
                            Place.ofFile(file),
                            Severity.ERROR,
                            "file",
                            "stage '" + id + "' is no longer in this file; load the library again",
                            "stage"))));
        }
    }
}
