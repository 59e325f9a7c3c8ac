package baywright.script;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a script may read beyond its own locals: inputs and surveyed facts. */
public interface Names {

    /** Nothing but locals. */
    Names NONE = new Names() {
        @Override
        public Optional<Value> value(String name) {
            return Optional.empty();
        }

        @Override
        public Set<String> known() {
            return Set.of();
        }

        @Override
        public Value call(Call function) {
            throw function.refusal(
                    function.place(),
                    "unknown-name",
                    "'" + function.word().name() + "' can only be asked inside a stage or in the condition of a rule");
        }

        @Override
        public List<String> choices(String name) {
            return List.of();
        }
    };

    /** The value of a name written alone, with the name in its {@link Value#from()}. */
    Optional<Value> value(String name);

    /** All names that {@link #value} answers, for "nearest is". */
    Set<String> known();

    /** The value of a function of the vocabulary. */
    Value call(Call function);

    /** The texts that an input or fact may be, if it is a choice; else empty. */
    List<String> choices(String name);
}
