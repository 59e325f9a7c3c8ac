package baywright.swing.survey;

import baywright.library.Library;
import baywright.plan.FilmSheet;
import baywright.plan.Setting;
import baywright.site.OpenShop;
import baywright.swing.api.DeskState;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.Shape;
import baywright.vehicle.ZoneFilm;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.Job;
import baywright.workspace.JobPhoto;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The chosen job as the survey shows it.
 *
 * @param shop    the open shop
 * @param job     as last edited
 * @param setting its vehicle with what was found
 * @param film    of its painted zones
 */
record Surveyed(OpenShop shop, Job job, Setting setting, FilmSheet film) {

    /** The chosen job of the desk; empty when there is none. */
    static Optional<Surveyed> of(DeskState state) {
        return state.shop()
                .flatMap(shop -> state.job().map(job -> {
                    Setting setting = shop.site().setting(job);
                    return new Surveyed(shop, job, setting, FilmSheet.of(setting));
                }));
    }

    Library library() {
        return shop.site().library();
    }

    /** The vehicle's shape with what this vehicle has of its own. */
    Shape vehicle() {
        return setting.shape();
    }

    ZoneSurvey found(String zone) {
        return job.survey().zone(zone);
    }

    Map<String, ZoneFilm> films() {
        Map<String, ZoneFilm> films = new HashMap<>();
        film.zones().forEach(z -> films.put(z.zone(), z));
        return films;
    }

    Map<String, BigDecimal> medians() {
        Map<String, BigDecimal> medians = new HashMap<>();
        job.survey().zones().forEach((zone, found) -> {
            if (!found.readings().isEmpty()) {
                medians.put(zone, FilmStatistics.median(found.readings()));
            }
        });
        return medians;
    }

    List<JobPhoto> photosAt(String zone) {
        return job.photos().stream()
                .filter(p -> p.zone().filter(zone::equals).isPresent())
                .toList();
    }

    /** Photos of the vehicle, also those at zones that it has not. */
    List<JobPhoto> photosOfTheWhole() {
        return job.photos().stream()
                .filter(p -> p.zone().flatMap(vehicle()::zone).isEmpty())
                .toList();
    }

    /** How many photos each zone has that has any. */
    Map<String, Integer> photos() {
        Map<String, Integer> photos = new HashMap<>();
        job.photos().forEach(p -> p.zone().ifPresent(zone -> photos.merge(zone, 1, Integer::sum)));
        return photos;
    }

    boolean hasReadings() {
        return job.survey().zones().values().stream()
                .anyMatch(z -> !z.readings().isEmpty());
    }
}
