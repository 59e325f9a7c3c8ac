package baywright.document;

import baywright.document.JobCard.CardPhoto;
import baywright.site.Site;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.JobPhoto;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** The survey's photos, made small. One that is gone or broken is told and stops nothing. */
final class CardPhotos {

    /** Enough for a print of 85 mm at 300 dots an inch. */
    private static final int SIDE = 1000;

    /** Keeps a card with a whole album in its folder to some megabytes. */
    private static final int MOST = 40;

    private final Site site;
    private final Job job;
    private final Shape shape;
    private final Texts texts;

    CardPhotos(Site site, Job job, Shape shape, Texts texts) {
        this.site = site;
        this.job = job;
        this.shape = shape;
        this.texts = texts;
    }

    List<CardPhoto> all() {
        Optional<String> folder = site.workspace().jobs().stream()
                .filter(file -> file.job().filter(j -> j.id().equals(job.id())).isPresent())
                .map(JobFile::folder)
                .findFirst();
        List<CardPhoto> photos = new ArrayList<>();
        if (folder.isPresent()) {
            job.photos().stream().limit(MOST).forEach(photo -> photos.add(photo(folder.get(), photo)));
        }
        if (job.photos().size() > MOST) {
            photos.add(new CardPhoto(
                    "", "", "", texts.of("photos.more", job.photos().size() - MOST)));
        }
        return photos;
    }

    private CardPhoto photo(String folder, JobPhoto photo) {
        String where = photo.zone()
                .flatMap(id ->
                        shape.zones().stream().filter(z -> z.id().equals(id)).findFirst())
                .map(Zone::title)
                .orElse("");
        try {
            byte[] small = Picture.small(site.workspace().photo(folder, photo), SIDE);
            return new CardPhoto(photo.caption(), where, Base64.getEncoder().encodeToString(small), "");
        } catch (WorkspaceException | IOException e) {
            return new CardPhoto(photo.caption(), where, "", texts.of("photos.unseen", photo.file()));
        }
    }
}
