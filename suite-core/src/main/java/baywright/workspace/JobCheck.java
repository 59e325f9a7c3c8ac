package baywright.workspace;

import baywright.vehicle.Shape;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether a job names shapes, zones and rates that the workspace has. */
final class JobCheck {

    private final Report report;
    private final JobJson.Read read;

    JobCheck(Report report, JobJson.Read read) {
        this.report = report;
        this.read = read;
    }

    /** A shop that cannot be read has its own problem; the job is then not judged by it. */
    void against(Shop shop) {
        Optional<String> rate = read.job().rate();
        Set<String> charge = shop.rates().charge().keySet();
        if (rate.isPresent()) {
            known(rate.get(), charge, "charge rate in shop.json", "rate");
        } else if (charge.size() > 1) {
            error("is missing", "name one of the shop's charge rates: " + list(charge), "rate");
        }
    }

    /** Shapes that cannot be read have their own problem; the job is then not judged by them. */
    void against(List<Shape> shapes, Report readingsReport, ReadingsCsv.Readings readings) {
        Job job = read.job();
        Optional<Shape> shape = shapes.stream()
                .filter(s -> s.id().equals(job.vehicle().shape()))
                .findFirst();
        if (shape.isEmpty()) {
            known(
                    job.vehicle().shape(),
                    shapes.stream().map(Shape::id).toList(),
                    "shape in stages/shapes.json",
                    "vehicle",
                    "shape");
            return;
        }
        Map<String, ?> zones = shape.get().zonesById();
        String what = "zone of the shape '" + shape.get().id() + "'";
        job.vehicle().zones().keySet().forEach(z -> known(z, zones.keySet(), what, "vehicle", "zones", z));
        job.survey().zones().keySet().forEach(z -> known(z, zones.keySet(), what, "survey", "zones", z));
        for (int i = 0; i < job.photos().size(); i++) {
            knownZoneOfPhoto(i, zones.keySet(), what);
        }
        readings.check(readingsReport, shape.get());
    }

    /** A photo at a zone that the shape has not is still a photo of the vehicle. */
    private void knownZoneOfPhoto(int at, Collection<String> zones, String what) {
        Optional<String> zone = read.job().photos().get(at).zone();
        if (zone.isPresent()
                && !zones.contains(zone.get())
                && read.document().members().get("photos") instanceof Json.Arr photos
                && photos.elements().get(at) instanceof Json.Obj photo) {
            report.warning(
                    photo.members().get("zone").offset(),
                    "photos[" + at + "].zone",
                    Shown.quoted(zone.get()) + " is no " + what + "; the photo is shown with the whole vehicle",
                    Shown.nearest(zone.get(), zones));
        }
    }

    private void known(String met, Collection<String> known, String what, String... path) {
        if (!known.contains(met)) {
            error(Shown.quoted(met) + " is no " + what, mend(met, known, "give one of " + list(known)), path);
        }
    }

    private static String mend(String met, Collection<String> known, String otherwise) {
        String nearest = Shown.nearest(met, known);
        return nearest.isEmpty() ? otherwise : nearest;
    }

    private static String list(Collection<String> words) {
        return words.isEmpty()
                ? "(there is none)"
                : Shown.oneOf(words.stream().sorted().limit(12).toList());
    }

    private void error(String what, String mend, String... path) {
        Json at = read.document();
        for (String name : path) {
            if (at instanceof Json.Obj object && object.members().containsKey(name)) {
                at = object.members().get(name);
            }
        }
        report.error(at.offset(), String.join(".", path), what, mend);
    }
}
