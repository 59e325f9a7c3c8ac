package baywright.document;

import baywright.document.JobCard.Dangers;
import baywright.document.JobCard.Day;
import baywright.document.JobCard.Material;
import baywright.document.JobCard.StepCard;
import baywright.document.JobCard.ThinZone;
import baywright.document.JobCard.Wait;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.plan.FilmSheet;
import baywright.plan.FindingText;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.plan.ZoneNames;
import baywright.safety.HazardSheet;
import baywright.safety.Label;
import baywright.safety.Pictogram;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.vehicle.Shape;
import baywright.vehicle.ZoneFilm;
import baywright.workspace.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Makes a job card. */
final class CardDraft {

    private final Site site;
    private final WorkedJob worked;
    private final Library library;
    private final Locale locale;
    private final Texts texts;
    private final Words words;
    private final Shape shape;
    private final ZoneNames zones;
    private final FilmSheet films;

    CardDraft(Site site, WorkedJob worked, String language) {
        this.site = site;
        this.worked = worked;
        library = worked.setting().library();
        locale = site.shop().localeOf(language);
        texts = new Texts(locale);
        words = site.workspace().words(locale.getLanguage());
        shape = words.of(worked.setting().shape());
        zones = new ZoneNames(shape, locale);
        films = FilmSheet.of(worked.setting());
    }

    JobCard card(boolean withPhotos) {
        var job = worked.job();
        return new JobCard(
                locale.toLanguageTag(),
                site.shop().name(),
                job.title(),
                new QuoteDocument.Vehicle(
                        shape.title(),
                        job.vehicle().description(),
                        job.vehicle().colour(),
                        job.vehicle().vin().map(v -> v.text()),
                        job.vehicles()),
                job.arrives(),
                job.wanted(),
                new Found(worked, shape, zones, words, texts).all().notes(),
                withPhotos ? new CardPhotos(site, worked.job(), shape, texts).all() : List.of(),
                days(),
                library.hash());
    }

    /** A step stands on the day on which its first vehicle's work begins, as the hazard sheet has it. */
    private List<Day> days() {
        Map<String, StepWork> works = new HashMap<>();
        worked.work().steps().forEach(work -> works.put(work.step(), work));
        Map<String, LocalDate> dayOf = new HashMap<>();
        Map<String, String> bayOf = new HashMap<>();
        for (HazardSheet.BayDay bayDay : sheet().bayDays()) {
            bayDay.tasks().forEach(task -> {
                dayOf.merge(task.step(), bayDay.day(), (a, b) -> a.isBefore(b) ? a : b);
                bayOf.putIfAbsent(task.step(), bayDay.bay());
            });
        }
        Map<LocalDate, List<StepCard>> byDay = new TreeMap<>();
        int number = 0;
        for (Step step : worked.job().plan().steps()) {
            number++;
            StepWork work = works.get(step.id());
            if (work != null) {
                LocalDate day =
                        dayOf.getOrDefault(step.id(), worked.setting().start().toLocalDate());
                byDay.computeIfAbsent(day, d -> new ArrayList<>())
                        .add(card(number, step, work, bayOf.getOrDefault(step.id(), "")));
            }
        }
        List<Day> days = new ArrayList<>();
        byDay.forEach((day, steps) -> days.add(new Day(day, steps)));
        return days;
    }

    private HazardSheet sheet() {
        FindingText sentences = words.findings(worked.setting(), worked.job().plan(), locale);
        return HazardSheet.of(
                site.shop().name(),
                new HazardSheet.Part(worked.job().title(), worked.safe(), worked.safety(), sentences),
                locale);
    }

    private StepCard card(int number, Step step, StepWork work, String bay) {
        Stage stage = library.stageById().get(work.stage());
        return new StepCard(
                number,
                step.id(),
                words.title(stage),
                zones.of(work.zones(), Integer.MAX_VALUE - 1),
                words.said(bay),
                work.crew().people(),
                work.crew().checker(),
                work.attendedMinutes().mean().add(work.setUpMinutes()),
                step.at(),
                inputs(step, stage),
                said(work, terms -> terms.where().equipment().stream().map(StageTerms.Named::id)),
                materials(work),
                work.standing().stream()
                        .map(wait -> new Wait(wait.least(), wait.most(), words.said(wait.why())))
                        .toList(),
                thin(work),
                dangers(work),
                said(work, terms -> terms.checks().stream().map(StageTerms.Note::text)),
                said(work, terms -> terms.mistakes().stream().map(StageTerms.Note::text)));
    }

    private List<String> said(StepWork work, Function<StageTerms, Stream<String>> what) {
        return work.parts().stream()
                .flatMap(part -> what.apply(part.terms()))
                .distinct()
                .map(words::said)
                .toList();
    }

    private List<String> inputs(Step step, Stage stage) {
        return stage.inputs().stream()
                .filter(input -> step.with().containsKey(input.name()))
                .map(input -> texts.of(
                        "card.input",
                        words.said(input.name()),
                        set(String.valueOf(step.with().get(input.name()).raw()))))
                .toList();
    }

    private String set(String value) {
        return texts.find("input." + value).orElse(words.said(value));
    }

    private List<Material> materials(StepWork work) {
        List<Material> materials = new ArrayList<>();
        work.items().forEach((id, amount) -> {
            String dilution = work.uses().stream()
                    .filter(use -> use.item().equals(id))
                    .map(StepWork.Use::dilution)
                    .filter(d -> !d.isEmpty())
                    .findFirst()
                    .orElse("");
            Item item = library.itemById().get(id);
            materials.add(new Material(item == null ? id : words.title(item), amount, dilution));
        });
        return materials;
    }

    private List<ThinZone> thin(StepWork work) {
        Map<String, String> titles = new HashMap<>();
        shape.zones().forEach(zone -> titles.put(zone.id(), zone.title()));
        return work.removals().stream()
                .filter(removal -> removal.micrometres().likely().signum() > 0)
                .map(StepWork.Removal::zone)
                .distinct()
                .flatMap(zone -> films.zone(zone).stream())
                .filter(film -> film.band().isThin())
                .map((ZoneFilm film) -> new ThinZone(
                        titles.get(film.zone()),
                        film.statistics().map(s -> s.lowest().micrometres())))
                .toList();
    }

    private Dangers dangers(StepWork work) {
        Set<String> ids = new LinkedHashSet<>();
        work.uses().forEach(use -> ids.add(use.item()));
        work.parts().forEach(part -> part.terms().hazards().from().forEach(named -> ids.add(named.id())));
        List<Item> items = ids.stream()
                .map(library.itemById()::get)
                .filter(item -> item != null && !item.hazards().isEmpty())
                .toList();
        List<Pictogram> pictograms = items.stream()
                .flatMap(item -> Label.ofCodes(item.hazards()).pictograms().stream())
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
        Stream<String> ofItems = items.stream().flatMap(item -> item.protection().stream());
        Stream<String> ofStage = work.parts().stream()
                .flatMap(part -> part.terms().hazards().wear().stream())
                .map(StageTerms.Named::id);
        return new Dangers(
                pictograms,
                said(
                        work,
                        terms -> terms.hazards().risks().stream()
                                .map(risk -> texts.find("danger." + risk.kind()).orElse(risk.kind()))),
                Stream.concat(ofStage, ofItems).distinct().map(words::said).toList(),
                work.parts().stream()
                        .flatMap(part -> part.terms().hazards().keepApart().stream())
                        .map(apart -> texts.of("card.apart", words.said(apart.what()), words.said(apart.why())))
                        .distinct()
                        .toList());
    }
}
