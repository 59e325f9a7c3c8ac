package baywright.workspace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code stages/words-LANGUAGE.json} to {@link Words}. */
final class WordsJson {

    static final String KIND = "words";
    static final int VERSION = 1;

    private WordsJson() {}

    static Optional<Words> read(Report report) {
        return Fields.ofDocument(report, KIND, VERSION).flatMap(WordsJson::read);
    }

    private static Optional<Words> read(Fields in) {
        String language = in.text("language");
        if (!ShopJson.LANGUAGE.matcher(language).matches() && !Fields.isStandIn(language)) {
            in.refuse("language", "met the text " + Shown.quoted(language), "give a language such as \"de\"");
        }
        Map<String, Words.Named> stages = new LinkedHashMap<>();
        in.objectsById("stages").forEach((id, one) -> {
            stages.put(id, new Words.Named(one.title("title"), one.text("about", "")));
            one.done();
        });
        Map<String, String> zones = in.titles("zones");
        Map<String, String> shapes = in.titles("shapes");
        Map<String, String> families = in.titles("families");
        Map<String, String> items = in.titles("items");
        Map<String, String> sentences = sentences(in.objects("sentences"));
        in.done();
        return in.report().whenSound(() -> new Words(stages, zones, shapes, families, items, sentences));
    }

    private static Map<String, String> sentences(List<Fields> all) {
        Map<String, String> sentences = new LinkedHashMap<>();
        for (Fields one : all) {
            String said = one.title("said");
            if (sentences.put(said, one.title("words")) != null && !Fields.isStandIn(said)) {
                one.refuse("said", "the sentence " + Shown.quoted(said) + " is there already", "give each once");
            }
            one.done();
        }
        return sentences;
    }
}
