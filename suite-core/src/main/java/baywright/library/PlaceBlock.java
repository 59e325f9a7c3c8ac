package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Named;
import baywright.library.StageTerms.Origin;
import baywright.library.StageTerms.Where;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code place { }}: which bay and which equipment. */
final class PlaceBlock extends Blocks {

    static final Section SECTION = new Section(
            "place",
            "in 'place { }'",
            "Where it is done and with what machines.",
            List.of(
                    word("bay")
                            .takes(
                                    "kind",
                                    Type.ID
                                            .called("a kind of bay", "kinds of bay", "'wash'")
                                            .naming("bay"))
                            .means("the kind of bay that it needs; any bay where the stage does not say")
                            .example("bay 'wash'"),
                    word("equipment")
                            .takesSeveral("names", Type.TEXT.called("a text", "texts", "'pressure washer'"))
                            .means("machines and tools that must be at hand")
                            .example("equipment 'sprayer', 'pressure washer'")));

    private String bay = "";
    private final List<Named> equipment = new ArrayList<>();
    private Optional<Origin> origin = Optional.empty();

    PlaceBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        origin = origin.or(() -> Optional.of(origin(call)));
        if (call.word().name().equals("bay")) {
            onlyOnce(call);
            bay = call.text("kind");
        } else {
            call.several().forEach(v -> equipment.add(new Named((String) v.raw(), origin(call, v))));
        }
    }

    Where build() {
        return origin.isEmpty() ? Where.ANY : new Where(bay, equipment, origin);
    }
}
