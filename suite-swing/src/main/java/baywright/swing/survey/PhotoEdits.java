package baywright.swing.survey;

import baywright.document.Picture;
import baywright.site.OpenShop;
import baywright.swing.api.Change;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.JobPhoto;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Adds, names, takes away and loads photos of the chosen job. */
final class PhotoEdits {

    /** What waits until its job has a folder. */
    private record Waiting(String job, Optional<String> zone, List<Path> files) {}

    /** What came of copying pictures. */
    private record Copied(List<JobPhoto> photos, List<String> refused) {}

    private final Edits edits;
    private final Texts texts;
    private final List<Waiting> waiting = new ArrayList<>();

    PhotoEdits(Edits edits) {
        this.edits = edits;
        texts = edits.texts();
    }

    /**
     * Copies pictures into the job's folder, in the background, then names them in the job. A job that was never saved is saved first.
     *
     * @param zone  what they show; empty: the whole vehicle
     * @param files as the user chose them
     */
    void add(Surveyed now, Optional<String> zone, List<Path> files) {
        if (files.isEmpty()) {
            return;
        }
        String id = now.job().id();
        Optional<JobFile> file = now.shop().file(id);
        if (file.isEmpty()) {
            waiting.add(new Waiting(id, zone, files));
            edits.desk().say(Notice.done(texts.of("photos.first", now.job().title())));
            edits.desk().save();
            return;
        }
        copy(now.shop().folder(), file.get().folder(), new Waiting(id, zone, files));
    }

    /** Goes on with what waited for its job to be saved. */
    void show(Surveyed now) {
        for (Waiting one : List.copyOf(waiting)) {
            now.shop().file(one.job()).ifPresent(file -> {
                waiting.remove(one);
                copy(now.shop().folder(), file.folder(), one);
            });
        }
    }

    private void copy(Path root, String folder, Waiting what) {
        LocalDateTime added = LocalDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.MINUTES);
        edits.desk()
                .run(new Task<>(
                        texts.of("photos.adding", what.files().size()),
                        progress -> copied(root, folder, what, added, progress),
                        copied -> take(what.job(), copied),
                        fault -> edits.desk()
                                .say(Notice.failed(texts.of("photos.failed", String.valueOf(fault.getMessage()))))));
    }

    private static Copied copied(Path root, String folder, Waiting what, LocalDateTime added, Task.Progress progress) {
        List<JobPhoto> photos = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        try (WorkspaceWriter writer = WorkspaceWriter.open(Workspace.open(root))) {
            for (Path file : what.files()) {
                if (progress.cancelled()) {
                    break;
                }
                try {
                    photos.add(new JobPhoto(writer.addPhoto(folder, file), "", what.zone(), Optional.of(added)));
                } catch (WorkspaceException e) {
                    refused.add(e.getMessage());
                }
                progress.at(
                        (photos.size() + refused.size()) / (double) what.files().size());
            }
        }
        return new Copied(photos, refused);
    }

    private void take(String id, Copied copied) {
        List<JobPhoto> added = copied.photos();
        if (!added.isEmpty()) {
            edits.desk()
                    .change(new Change(texts.of("photos.change.add", added.size()), "", shop -> with(shop, id, added)));
        }
        if (!copied.refused().isEmpty()) {
            String first = copied.refused().get(0);
            int more = copied.refused().size() - 1;
            edits.desk().say(Notice.failed(more == 0 ? first : texts.of("photos.refused", first, more)));
        }
    }

    private static OpenShop with(OpenShop shop, String id, List<JobPhoto> added) {
        return shop.job(id)
                .map(job -> {
                    List<JobPhoto> all = new ArrayList<>(job.photos());
                    all.addAll(added);
                    return shop.withJob(job.withPhotos(all));
                })
                .orElse(shop);
    }

    /** @throws IllegalArgumentException when the words are too long */
    void caption(JobPhoto photo, String words) {
        each(
                texts.of("photos.change.caption"),
                p -> Optional.of(p.file().equals(photo.file()) ? p.withCaption(words.strip()) : p));
    }

    void remove(JobPhoto photo) {
        each(
                texts.of("photos.change.remove"),
                p -> Optional.of(p).filter(q -> !q.file().equals(photo.file())));
    }

    private void each(String title, Function<JobPhoto, Optional<JobPhoto>> change) {
        edits.values(title, parts -> {
            List<JobPhoto> photos = edits.desk().state().job().map(Job::photos).orElse(List.of());
            return parts.photos(
                    photos.stream().map(change).flatMap(Optional::stream).toList());
        });
    }

    /**
     * Loads pictures in the background.
     *
     * @param side see {@link Picture#of}
     * @param done gets on the event thread what became of each; not called when cancelled
     */
    TaskHandle load(Surveyed now, List<JobPhoto> photos, int side, Consumer<Map<JobPhoto, Loaded>> done) {
        Workspace workspace = now.shop().site().workspace();
        String folder = now.shop()
                .file(now.job().id())
                .map(JobFile::folder)
                .orElse(now.job().id());
        return edits.desk()
                .run(new Task<>(
                        texts.of("photos.loading"),
                        progress -> {
                            Map<JobPhoto, Loaded> loaded = new LinkedHashMap<>();
                            for (JobPhoto photo : photos) {
                                if (!progress.cancelled()) {
                                    loaded.put(photo, loaded(workspace, folder, photo, side, progress));
                                    progress.at(loaded.size() / (double) photos.size());
                                }
                            }
                            return loaded;
                        },
                        done,
                        fault -> edits.desk()
                                .say(Notice.failed(texts.of("photos.unloaded", String.valueOf(fault.getMessage()))))));
    }

    private Loaded loaded(Workspace workspace, String folder, JobPhoto photo, int side, Task.Progress progress) {
        try {
            BufferedImage image = Picture.of(workspace.photo(folder, photo), side, progress::cancelled);
            return new Loaded(Optional.of(image), "");
        } catch (WorkspaceException e) {
            return new Loaded(Optional.empty(), e.getMessage());
        } catch (IOException e) {
            return new Loaded(Optional.empty(), texts.of("photos.broken", photo.file()));
        }
    }
}
