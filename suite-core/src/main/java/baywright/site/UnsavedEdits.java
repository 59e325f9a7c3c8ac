package baywright.site;

import baywright.workspace.EditsJournal;
import baywright.workspace.EditsJournal.Edits;
import baywright.workspace.FileTexts;
import baywright.workspace.Job;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Turns what is not yet saved of an open shop into texts, and back. */
public final class UnsavedEdits {

    private UnsavedEdits() {}

    /** What would have to be written, as texts of files. */
    public static Edits of(OpenShop shop) {
        SortedMap<String, String> files = new TreeMap<>();
        List<String> gone = new ArrayList<>();
        for (String name : shop.unsaved()) {
            if (name.equals("shop.json")) {
                files.put(name, FileTexts.ofShop(shop.read(), shop.shop()));
            } else if (name.equals("items.json")) {
                files.put(name, FileTexts.ofItems(shop.read(), shop.items()));
            } else if (name.startsWith("jobs/")) {
                ofJob(shop, name.substring("jobs/".length()), files, gone);
            } else if (shop.texts().containsKey(name)) {
                files.put(name, shop.texts().get(name));
            } else {
                gone.add(name);
            }
        }
        return new Edits(files, gone);
    }

    private static void ofJob(OpenShop shop, String id, SortedMap<String, String> files, List<String> gone) {
        String folder = "jobs/" + shop.file(id).map(file -> file.folder()).orElse(id);
        if (shop.job(id).isEmpty()) {
            gone.add(folder);
            return;
        }
        Job job = shop.job(id).get();
        files.put(folder + "/job.json", FileTexts.ofJob(shop.file(id), job));
        FileTexts.ofReadings(shop.file(id), job).ifPresent(text -> files.put(folder + "/readings.csv", text));
    }

    /**
     * The shop with edits that were noted earlier. Off the event thread.
     *
     * @param shop as it is on disk
     * @return the edited shop; edits that cannot be read are left out
     * @throws SiteTrouble when shop or prices of the edits have an error
     * @throws WorkspaceException when there is no room for a copy
     */
    public static OpenShop restore(OpenShop shop, Edits edits) {
        Path copy = null;
        try {
            copy = Files.createTempDirectory("baywright-unsaved");
            new EditsJournal(shop.folder()).layOut(edits, copy);
            return shop.withEditsIn(copy, edits.gone());
        } catch (IOException e) {
            throw new WorkspaceException(
                    "the unsaved edits cannot be laid out, there is no room for temporary files", e);
        } finally {
            if (copy != null) {
                delete(copy);
            }
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | UncheckedIOException e) {
            // The system clears its temporary folder itself.
            return;
        }
    }
}
