package baywright.document;

import baywright.document.QuoteDocument.Risk;
import baywright.money.Quote;
import baywright.plan.Finding;
import baywright.plan.Reason;
import baywright.plan.Severity;
import baywright.plan.ZoneNames;
import baywright.safety.JobSafety;
import baywright.site.WorkedJob;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.workspace.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a customer is told before the work: warnings about the paint film, rules that the shop has softened, and dangers
 * that somebody has answered for.
 */
final class Risks {

    private static final String FILM = "film.";
    private static final String SIGNED = "risk-signed";

    private final WorkedJob worked;
    private final Quote quote;
    private final ZoneNames zones;
    private final Words words;
    private final Texts texts;

    Risks(WorkedJob worked, Quote quote, ZoneNames zones, Words words, Texts texts) {
        this.worked = worked;
        this.quote = quote;
        this.zones = zones;
        this.words = words;
        this.texts = texts;
    }

    List<Risk> all() {
        List<Risk> risks = new ArrayList<>(rules());
        for (JobSafety.Acknowledgement one : worked.job().safety().acknowledgements()) {
            String text = texts.find("caution." + one.id()).orElse(one.id());
            risks.add(new Risk(text, "", "", one.by(), Optional.of(one.at())));
        }
        Survey survey = worked.setting().survey();
        if (survey.facts().getOrDefault(SIGNED, "").equals("true")) {
            risks.add(new Risk(texts.of("risk.single-stage"), "", "", "", Optional.empty()));
        }
        return risks;
    }

    /** One for each rule that warns about film or was softened, with all its zones. */
    private List<Risk> rules() {
        Map<String, Reason.RuleSpeaks> speaking = new LinkedHashMap<>();
        Map<String, Set<String>> where = new LinkedHashMap<>();
        for (Finding finding : worked.proof().findings()) {
            if (finding.reason() instanceof Reason.RuleSpeaks rule && isTold(finding, rule)) {
                speaking.putIfAbsent(rule.rule(), rule);
                where.computeIfAbsent(rule.rule(), r -> new LinkedHashSet<>()).addAll(finding.zones());
            }
        }
        List<Risk> risks = new ArrayList<>();
        speaking.forEach((id, rule) -> risks.add(new Risk(
                words.said(rule.title()),
                because(rule),
                zones.of(inOrder(where.get(id)), Integer.MAX_VALUE - 1),
                "",
                Optional.empty())));
        return risks;
    }

    private List<String> inOrder(Set<String> ids) {
        return worked.setting().shape().zones().stream()
                .map(Zone::id)
                .filter(ids::contains)
                .toList();
    }

    private boolean isTold(Finding finding, Reason.RuleSpeaks rule) {
        boolean asksFilm = worked.setting().library().rules().stream()
                .filter(r -> r.id().equals(rule.rule()))
                .flatMap(r -> r.asks().stream())
                .anyMatch(ask -> ask.word().startsWith(FILM));
        return finding.severity() == Severity.WARN && asksFilm
                || quote.proof().softened().containsKey(rule.rule());
    }

    private String because(Reason.RuleSpeaks rule) {
        String why = words.said(rule.why());
        return rule.note().isEmpty() ? why : texts.of("risk.softened", why, rule.note());
    }
}
