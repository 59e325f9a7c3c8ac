package baywright.library;

import static baywright.script.Word.word;

import baywright.script.Type;
import baywright.script.Vocabulary;
import baywright.script.Word;
import java.util.ArrayList;
import java.util.List;

/** The words of the stage language, all of them. */
public final class StageLanguage {

    /** Version of the vocabulary; part of every key under which something made from a script is kept. */
    public static final String VERSION = "1.3";

    /** Every word, by the section in which it may stand. */
    public static final Vocabulary VOCABULARY = new Vocabulary(
            List.of(
                    FileBlock.SECTION,
                    FactorBlock.SECTION,
                    RuleBlock.SECTION,
                    RuleBlock.CONDITION,
                    GoalBlock.SECTION,
                    StageBlock.SECTION,
                    InputsBlock.SECTION,
                    BeforeBlock.SECTION,
                    AfterBlock.SECTION,
                    TimeBlock.SECTION,
                    UsesBlock.SECTION,
                    HazardsBlock.SECTION,
                    CrewBlock.SECTION,
                    PlaceBlock.SECTION,
                    ClimateBlock.SECTION,
                    FilmBlock.SECTION,
                    ChecksBlock.SECTION),
            functions());

    private static List<Word> functions() {
        List<Word> all = new ArrayList<>(List.of(
                word("constant")
                        .takes(
                                "name",
                                Type.ID
                                        .called("a name", "names", "'bench-rate'")
                                        .naming("constant"))
                        .means("the value of a constant of the library whose name has a hyphen")
                        .example("constant('bench-rate')")
                        .since("1.1"),
                word("input")
                        .takes(
                                "name",
                                Type.ID
                                        .called("a name", "names", "'grit-depth'")
                                        .naming("input"))
                        .means("the value of an input whose name has a hyphen")
                        .example("input('grit-depth')"),
                word("surveyed")
                        .takes(
                                "fact",
                                Type.ID.called("a fact", "facts", "'hardness'").naming("fact"))
                        .means("what the survey found for this fact, or its usual value; a number without a usual"
                                + " value is nothing where the survey is silent, so write surveyed('…') ?: 120")
                        .example("surveyed('hardness') == 'soft'")));
        all.addAll(RuleQueries.WORDS);
        return all;
    }

    private StageLanguage() {}
}
