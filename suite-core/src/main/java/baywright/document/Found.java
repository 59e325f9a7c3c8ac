package baywright.document;

import baywright.document.QuoteDocument.Fact;
import baywright.document.QuoteDocument.PanelFilm;
import baywright.document.QuoteDocument.ZoneNote;
import baywright.plan.FilmSheet;
import baywright.plan.ZoneNames;
import baywright.site.WorkedJob;
import baywright.vehicle.FilmStatistics;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneFilm;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the survey found, for a customer. */
final class Found {

    private final WorkedJob worked;
    private final Survey survey;
    private final Shape shape;
    private final ZoneNames zones;
    private final Words words;
    private final Texts texts;

    Found(WorkedJob worked, Shape shape, ZoneNames zones, Words words, Texts texts) {
        this.worked = worked;
        this.shape = shape;
        this.zones = zones;
        this.words = words;
        this.texts = texts;
        survey = worked.setting().survey();
    }

    QuoteDocument.Found all() {
        return new QuoteDocument.Found(facts(), films(), notes());
    }

    /** Facts that say something to a customer; yes and no are the business of risks. */
    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        new TreeMap<>(survey.facts()).forEach((id, value) -> fact(id, value).ifPresent(facts::add));
        return facts;
    }

    private Optional<Fact> fact(String id, String value) {
        return worked.setting().library().facts().stream()
                .filter(f -> f.id().equals(id))
                .filter(f -> f.kind() != baywright.library.Fact.Kind.YES_NO)
                .findFirst()
                .map(f -> new Fact(texts.find("fact." + id).orElse(words.said(f.means())), value(value)));
    }

    private String value(String value) {
        return texts.find("value." + value).orElse(value.replace('-', ' '));
    }

    private List<PanelFilm> films() {
        Map<String, Zone> byId = shape.zonesById();
        return FilmSheet.of(worked.setting()).zones().stream()
                .map(film -> film(film, byId.get(film.zone()).title()))
                .toList();
    }

    private static PanelFilm film(ZoneFilm film, String title) {
        Optional<FilmStatistics> read = film.statistics();
        return new PanelFilm(
                title,
                read.map(FilmStatistics::count).orElse(0),
                read.map(r -> r.lowest().micrometres()),
                read.map(FilmStatistics::mean),
                read.map(r -> r.highest().micrometres()),
                film.band(),
                film.readable(),
                film.signs());
    }

    /** Notes, counts and facts of zones; what was noted alike stands once. */
    private List<ZoneNote> notes() {
        Map<String, List<String>> where = new LinkedHashMap<>();
        for (Zone zone : shape.zones()) {
            ZoneSurvey found = survey.zone(zone.id());
            said(found)
                    .forEach(note ->
                            where.computeIfAbsent(note, n -> new ArrayList<>()).add(zone.id()));
        }
        List<ZoneNote> notes = new ArrayList<>();
        where.forEach((note, ids) -> notes.add(new ZoneNote(note, zones.of(ids, Integer.MAX_VALUE - 1))));
        return notes;
    }

    private List<String> said(ZoneSurvey found) {
        List<String> said = new ArrayList<>(found.notes());
        new TreeMap<>(found.counts()).forEach((driver, count) -> said.add(counted(driver, count)));
        new TreeMap<>(found.facts())
                .forEach((id, value) ->
                        fact(id, value).ifPresent(f -> said.add(texts.of("found.fact", f.what(), f.value()))));
        return said;
    }

    private String counted(String driver, BigDecimal count) {
        return texts.find("counted." + driver, count).orElseGet(() -> texts.of("counted", count, driver));
    }
}
