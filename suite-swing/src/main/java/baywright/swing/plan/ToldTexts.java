package baywright.swing.plan;

import baywright.plan.Edit;
import baywright.plan.EditText;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Plan;
import baywright.plan.Repair;
import baywright.plan.RepairResult;
import baywright.plan.Severity;
import baywright.safety.Remedy;
import baywright.site.WorkedJob;
import baywright.swing.api.DeskState;
import baywright.swing.api.Readout;
import baywright.swing.api.Remark;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Puts findings, plug-ins' remarks and ways to mend them into words with their buttons. */
final class ToldTexts {

    private final WorkedJob worked;
    private final List<Remark> remarks;
    private final Readout readout;
    private final PlanEdits edits;
    private final Optional<RepairWatch.Found> repairs;
    private final FindingText findings;
    private final EditText editTexts;

    ToldTexts(
            WorkedJob worked, DeskState state, Readout readout, PlanEdits edits, Optional<RepairWatch.Found> repairs) {
        this.worked = worked;
        this.remarks = state.remarks();
        this.readout = readout;
        this.edits = edits;
        this.repairs = repairs.filter(r -> r.plan().equals(worked.job().plan()));
        findings = new FindingText(worked.setting(), worked.job().plan(), readout.locale());
        editTexts = new EditText(worked.setting(), readout.locale());
    }

    /** What stands against one step, the gravest first. */
    List<Told> of(String step) {
        return told(id -> id.filter(step::equals).isPresent());
    }

    /** Everything, the gravest first. */
    List<Told> all() {
        return told(id -> true);
    }

    private List<Told> told(Predicate<Optional<String>> which) {
        List<Told> all = new ArrayList<>();
        worked.findings().stream().filter(f -> which.test(f.step())).forEach(f -> all.add(told(f)));
        remarks.stream()
                .filter(r -> which.test(r.step()))
                .forEach(r -> all.add(new Told(
                        r.severity(),
                        Words.of("remark.title"),
                        r.text(),
                        r.step().orElse(""),
                        List.of())));
        all.sort(Comparator.comparing(Told::severity));
        return all;
    }

    private Told told(Finding finding) {
        List<Told.Fix> fixes = new ArrayList<>();
        if (finding.severity() == Severity.STOP) {
            repairs.ifPresent(r -> r.mends().of(finding).forEach(edit -> fixes.add(fix(edit, r.plan()))));
        }
        return new Told(
                finding.severity(),
                FindingText.title(finding.code(), readout.locale()),
                Words.capital(findings.of(finding)),
                finding.step().orElse(""),
                fixes);
    }

    private Told.Fix fix(Edit edit, Plan plan) {
        String sentence = Words.capital(editTexts.of(edit, plan));
        String verb = Words.of(
                edit instanceof Edit.Insert
                        ? "fix.add"
                        : edit instanceof Edit.Move
                                ? "fix.move"
                                : edit instanceof Edit.Drop ? "fix.drop" : "fix.change");
        return new Told.Fix(verb, sentence, () -> edits.apply(sentence, edit, plan));
    }

    /** Whole repairs of the plan, and ways to bring an exposure below its limit. */
    List<Told.Fix> ways() {
        List<Told.Fix> ways = new ArrayList<>();
        repairs.ifPresent(found -> found.result().repairs().stream()
                .filter(r -> !r.edits().isEmpty())
                .forEach(r -> ways.add(way(r, found.plan()))));
        for (Remedy remedy : worked.safety().remedies()) {
            String sentence = sentence(remedy);
            ways.add(new Told.Fix(Words.of("fix.do"), sentence, () -> edits.apply(sentence, remedy)));
        }
        return ways;
    }

    private Told.Fix way(Repair repair, Plan plan) {
        String changes = String.join("; ", editTexts.of(repair.edits(), plan));
        BigDecimal more = repair.addedCost();
        String cost = more.signum() == 0
                ? Words.of("way.same")
                : Words.of(more.signum() > 0 ? "way.more" : "way.less", readout.minutes(more.abs()));
        return new Told.Fix(
                Words.of("fix.do"),
                Words.of("way", repair.edits().size(), Words.capital(changes), cost),
                () -> edits.take(Words.of("change.mend", repair.edits().size()), plan, repair.plan()));
    }

    /** Whether the repairs are the smallest, and what they leave. */
    Optional<String> verdict() {
        return repairs.map(found -> {
            RepairResult result = found.result();
            List<String> said = new ArrayList<>();
            if (result.repairs().isEmpty()) {
                said.add(Words.of("mend.none." + (result.provedSmallest() ? "proved" : "open")));
            } else {
                said.add(Words.of("mend", result.proof()));
            }
            if (!result.lossOnly().isEmpty()) {
                said.add(Words.of("mend.loss", result.lossOnly().size()));
            }
            if (!result.unmendable().isEmpty()) {
                said.add(Words.of("mend.left", result.unmendable().size()));
            }
            return String.join(" ", said);
        });
    }

    private String sentence(Remedy remedy) {
        if (remedy instanceof Remedy.Share share) {
            return Words.of("remedy.share", share.people(), names(share.steps()));
        }
        if (remedy instanceof Remedy.Move move) {
            return Words.of("remedy.move", names(List.of(move.step())), readout.moment(move.at()));
        }
        if (remedy instanceof Remedy.Split split) {
            return Words.of(
                    "remedy.split", names(List.of(split.step())), split.pieces().size());
        }
        Remedy.Gentler gentler = (Remedy.Gentler) remedy;
        List<String> levels = new ArrayList<>();
        gentler.levels()
                .forEach((step, level) -> levels.add(Words.of(
                        "remedy.level." + gentler.agent().name(), names(List.of(step)), readout.number(level, 1))));
        return Words.of("remedy.gentler", String.join(", ", levels));
    }

    private String names(List<String> steps) {
        return String.join(
                ", ",
                steps.stream()
                        .map(s -> Words.of("trail.step", edits.name(s), s))
                        .toList());
    }
}
