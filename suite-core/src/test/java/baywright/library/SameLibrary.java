package baywright.library;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.LibraryLoader.Loaded;
import baywright.script.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Holds two libraries to being the same in everything but how their stages find their terms. */
public final class SameLibrary {

    private SameLibrary() {}

    public static void check(Loaded one, Loaded other) {
        assertThat(one.problems()).isEqualTo(other.problems());
        assertThat(head(one.library())).isEqualTo(head(other.library()));
        assertThat(one.library().stages()).hasSameSizeAs(other.library().stages());
        for (int i = 0; i < one.library().stages().size(); i++) {
            Stage stage = one.library().stages().get(i);
            Stage same = other.library().stages().get(i);
            assertThat(head(stage)).isEqualTo(head(same));
            for (Map<String, Value> with : uses(same)) {
                assertThat(stage.terms().of(with, Map.of()))
                        .isEqualTo(same.terms().of(with, Map.of()));
            }
        }
    }

    private static List<Object> head(Library l) {
        List<Rule> rules = l.rules().stream()
                .map(r -> new Rule(r.id(), r.title(), r.reason(), r.at(), r.asks(), null, r.place()))
                .toList();
        return List.of(l.states(), l.surfaces(), l.families(), l.facts(), l.factors(), l.items(), rules, l.hash());
    }

    private static Stage head(Stage stage) {
        return new Stage(
                stage.id(),
                stage.title(),
                stage.about(),
                stage.family(),
                stage.revision(),
                stage.inputs(),
                stage.surfaces(),
                stage.examples(),
                null,
                stage.place());
    }

    private static List<Map<String, Value>> uses(Stage stage) {
        List<Map<String, Value>> uses = new ArrayList<>(List.of(Map.of()));
        for (Input input : stage.inputs()) {
            input.choices().forEach(c -> uses.add(Map.of(input.name(), Value.of(c, input.place()))));
            input.most().ifPresent(m -> uses.add(Map.of(input.name(), m)));
        }
        return uses;
    }
}
