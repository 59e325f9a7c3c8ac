package baywright.library;

import static baywright.script.Word.word;

import baywright.library.StageTerms.Removal;
import baywright.quantity.ThreePoint;
import baywright.script.Call;
import baywright.script.Type;
import baywright.script.Vocabulary.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code film { }}: coating taken off. */
final class FilmBlock extends Blocks {

    static final Section SECTION = new Section(
            "film",
            "in 'film { }'",
            "Coating that the work takes off every zone it touches.",
            List.of(word("removes")
                    .takes("least", Type.THICKNESS)
                    .takes("likely", Type.THICKNESS)
                    .takes("most", Type.THICKNESS)
                    .named("times", TimeBlock.FACTOR, BigDecimal.ONE)
                    .means(
                            "film taken off: the least seen in practice, the most frequent and the most; several lines add up")
                    .example("removes 1.um, 2.um, 3.um, times: passes")));

    private final List<Removal> removals = new ArrayList<>();

    FilmBlock() {
        super(SECTION.name());
    }

    @Override
    public void accept(Call call) {
        Optional<ThreePoint> film = TimeBlock.threePoints(call);
        Optional<BigDecimal> times = TimeBlock.times(call);
        if (film.isPresent() && times.isPresent()) {
            removals.add(new Removal(film.get(), times.get(), origin(call)));
        }
    }

    List<Removal> build() {
        return removals;
    }
}
