package baywright.workspace;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.plan.FindingText;
import baywright.plan.Plan;
import baywright.plan.Setting;
import baywright.safety.HazardSheet;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A library's words in another language, for what is handed to a customer or to the crew. What is not there stays in the
 * words of the scripts.
 *
 * @param stages    title and purpose by stage id
 * @param zones     titles by zone id
 * @param shapes    titles by shape id
 * @param families  titles by family id
 * @param items     titles by item id
 * @param sentences what the scripts say in free words, such as a check or a reason, by the script's own sentence
 */
public record Words(
        Map<String, Named> stages,
        Map<String, String> zones,
        Map<String, String> shapes,
        Map<String, String> families,
        Map<String, String> items,
        Map<String, String> sentences) {

    /** The library's own words. */
    public static final Words NONE = new Words(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());

    public Words {
        stages = Map.copyOf(stages);
        zones = Map.copyOf(zones);
        shapes = Map.copyOf(shapes);
        families = Map.copyOf(families);
        items = Map.copyOf(items);
        sentences = Map.copyOf(sentences);
    }

    /** Words for a stage; the purpose may be empty. */
    public record Named(String title, String about) {}

    public String title(Stage stage) {
        Named named = stages.get(stage.id());
        return named == null ? stage.title() : named.title();
    }

    public String about(Stage stage) {
        Named named = stages.get(stage.id());
        return named == null ? stage.about() : named.about();
    }

    public String title(Item item) {
        return items.getOrDefault(item.id(), item.title());
    }

    public String family(String id, String title) {
        return families.getOrDefault(id, title);
    }

    /** Free words of a script. */
    public String said(String sentence) {
        return sentences.getOrDefault(sentence, sentence);
    }

    /** A hazard sheet of jobs of a library by these words. */
    public HazardSheet of(HazardSheet sheet, Library library) {
        Map<String, String> stageTitles = new HashMap<>();
        library.stageById().values().forEach(stage -> stageTitles.put(stage.title(), title(stage)));
        Map<String, String> itemTitles = titles(library);
        return sheet.inWords(
                title -> stageTitles.getOrDefault(title, title),
                title -> itemTitles.getOrDefault(title, title),
                this::said);
    }

    private Map<String, String> titles(Library library) {
        Map<String, String> titles = new HashMap<>();
        library.itemById().values().forEach(item -> titles.put(item.title(), title(item)));
        return titles;
    }

    /** Words for the findings of a plan on a paper in the language of these words. */
    public FindingText findings(Setting setting, Plan plan, Locale locale) {
        Map<String, String> items = titles(setting.library());
        return FindingText.onPaper(
                setting, plan, locale, of(setting.shape()), this::title, said -> items.getOrDefault(said, said(said)));
    }

    /** A vehicle with its zones by these words. */
    public Shape of(Shape shape) {
        return new Shape(
                shape.id(),
                shapes.getOrDefault(shape.id(), shape.title()),
                shape.size(),
                shape.zones().stream()
                        .map(zone -> new Zone(
                                zone.id(),
                                zones.getOrDefault(zone.id(), zone.title()),
                                zone.surface(),
                                zone.substrate(),
                                zone.measures(),
                                zone.neighbours()))
                        .toList());
    }
}
