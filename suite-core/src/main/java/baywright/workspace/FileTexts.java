package baywright.workspace;

import baywright.library.Item;
import baywright.vehicle.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The texts that a save would write, without writing them and without holding them against each other: what is not yet in order is
 * kept all the same, so that nobody's work is lost.
 */
public final class FileTexts {

    private FileTexts() {}

    /**
     * The text of {@code job.json}.
     *
     * @param file what the job was read from; empty for a new one
     */
    public static String ofJob(Optional<JobFile> file, Job job) {
        Draft draft = JobJson.draft(job);
        return file.flatMap(JobFile::content)
                .map(content -> JsonForm.of(draft.onto(content.document()), content.source()))
                .orElseGet(() -> JsonForm.of(draft.onto(null)));
    }

    /** The text of {@code readings.csv}; empty when there need be no such file. */
    public static Optional<String> ofReadings(Optional<JobFile> file, Job job) {
        Map<String, List<Reading>> readings = new LinkedHashMap<>();
        job.survey().zones().forEach((zone, found) -> {
            if (!found.readings().isEmpty()) {
                readings.put(zone, found.readings());
            }
        });
        Optional<Source> before = file.flatMap(JobFile::content).flatMap(JobFile.Content::readings);
        if (before.isEmpty() && readings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(before.map(source -> ReadingsDraft.onto(source, readings, true))
                .orElseGet(() -> ReadingsDraft.of(readings)));
    }

    /**
     * The text of {@code shop.json}.
     *
     * @param read the workspace as it was read
     */
    public static String ofShop(Workspace read, Shop shop) {
        return onto(read, Workspace.SHOP, ShopDraft.of(read.shop().orElseThrow(), shop));
    }

    /**
     * The text of {@code items.json}.
     *
     * @param read the workspace as it was read
     */
    public static String ofItems(Workspace read, List<Item> items) {
        return onto(read, Workspace.ITEMS, ShopDraft.of(items));
    }

    private static String onto(Workspace read, String name, Draft draft) {
        Source source = read.text(name).orElseThrow();
        Json document = JsonReader.read(new Report(source)).orElseThrow();
        return JsonForm.of(draft.onto(document), source);
    }
}
