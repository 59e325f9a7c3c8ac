package baywright.library;

import baywright.library.StageTerms.Crew;
import baywright.script.Call;
import baywright.script.Word;
import java.util.Set;

/** The blocks of a stage that say what one use takes. Leaves the head of the stage aside. */
final class TermsBlock extends Blocks {

    private static final Set<String> OWN =
            Set.of("before", "after", "time", "uses", "hazards", "crew", "place", "climate", "film", "checks");

    private final BeforeBlock before = new BeforeBlock();
    private final AfterBlock after = new AfterBlock();
    private final TimeBlock time = new TimeBlock();
    private final UsesBlock uses = new UsesBlock();
    private final HazardsBlock hazards = new HazardsBlock();
    private final CrewBlock crew = new CrewBlock();
    private final PlaceBlock place = new PlaceBlock();
    private final ClimateBlock climate = new ClimateBlock();
    private final FilmBlock film = new FilmBlock();
    private final ChecksBlock checks = new ChecksBlock();

    TermsBlock() {
        super(StageBlock.SECTION.name());
    }

    static boolean has(Word word) {
        return OWN.contains(word.name());
    }

    @Override
    public boolean skips(Word word) {
        return !has(word);
    }

    @Override
    public void accept(Call call) {
        call.inside(
                switch (call.word().name()) {
                    case "before" -> before;
                    case "after" -> after;
                    case "time" -> time;
                    case "uses" -> uses;
                    case "hazards" -> hazards;
                    case "crew" -> crew;
                    case "place" -> place;
                    case "climate" -> climate;
                    case "film" -> film;
                    default -> checks;
                });
    }

    /** The terms; {@code dependsOn} names what was read while they were worked out. */
    StageTerms build(Set<String> dependsOn) {
        Crew people = crew.build();
        return new StageTerms(
                before.needs(),
                before.prefers(),
                after.build(),
                time.attended(),
                time.standing(),
                time.setUps(),
                uses.build(),
                hazards.build(),
                people,
                place.build(),
                climate.build(),
                film.build(),
                checks.checks(),
                checks.mistakes(),
                dependsOn);
    }
}
