package baywright.cli;

import baywright.money.CapFit;
import baywright.money.Quote;
import baywright.plan.EditText;
import baywright.plan.Finding;
import baywright.plan.Repair;
import baywright.plan.RepairResult;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Shows the repairs of a plan: what to change, what it adds, and whether fewer changes would do. */
final class RepairPrinter {

    private static final String INDENT = "   ";

    private final Session session;
    private final Job job;
    private final RepairResult result;
    private final EditText sentences;
    private final FindingPrinter findings;
    private final Numbers numbers;
    private final Map<Repair, WorkedJob> worked = new LinkedHashMap<>();

    RepairPrinter(Session session, Site site, Job job, RepairResult result) {
        this.session = session;
        this.job = job;
        this.result = result;
        Setting setting = site.setting(job);
        this.sentences = new EditText(setting, session.console().locale());
        this.findings = new FindingPrinter(session, session.sentences(setting, job.plan()));
        this.numbers = new Numbers(site.shop().locale());
        result.repairs().forEach(repair -> worked.put(repair, site.work(job.withPlan(repair.plan()))));
    }

    /** Whether one of the repairs leaves no stop at all. */
    boolean mends() {
        return !result.repairs().isEmpty()
                && result.lossOnly().isEmpty()
                && result.unmendable().isEmpty();
    }

    /** Whether one of the repairs leaves no stop of the order, and none about safety either. */
    boolean clears() {
        return mends() && worked.values().stream().anyMatch(w -> w.judged().holds());
    }

    void print(String shownJob) {
        if (mends() && result.repairs().get(0).edits().isEmpty()) {
            session.say(clears() ? "mend.nothing" : "mend.nothing.order", job.title());
            printSafety(shownJob);
            return;
        }
        for (int i = 0; i < result.repairs().size(); i++) {
            printOne(result.repairs().get(i), i + 1);
            session.console().out().println();
        }
        printRest(result.lossOnly(), sentences.onlyByLoss());
        printRest(result.unmendable(), sentences.unmendable());
        session.say(
                "mend.verdict",
                job.title(),
                result.repairs().size(),
                session.text("mend.smallest." + Answers.word(result.proof()), least()));
        if (!result.repairs().isEmpty()) {
            session.say("mend.next", session.command(), shownJob);
        }
        printSafety(shownJob);
    }

    /** What no change of the order mends. */
    private void printSafety(String shownJob) {
        boolean stopped = !result.repairs().isEmpty()
                && worked.values().stream().noneMatch(w -> w.safety().holds());
        if (stopped) {
            long stops = worked.get(result.repairs().get(0)).safety().findings().stream()
                    .filter(f -> f.severity() == Severity.STOP)
                    .count();
            session.say("mend.safety", session.command(), shownJob, stops);
        }
    }

    private int least() {
        return result.figures().least();
    }

    private void printRest(List<Finding> stops, String why) {
        if (stops.isEmpty()) {
            return;
        }
        findings.print(stops);
        session.console().out().println(INDENT + INDENT + why);
        session.console().out().println();
    }

    void printOne(Repair repair, int number) {
        Console console = session.console();
        console.out()
                .println(console.paint(
                        Ink.HEAD,
                        session.text(
                                "mend.repair",
                                number,
                                repair.edits().size(),
                                change(repair.addedCost()),
                                price(repair))));
        for (String sentence : sentences.of(repair.edits(), job.plan())) {
            List<String> lines = Wrap.lines(sentence, Console.WIDTH - 2 * INDENT.length());
            console.out().println(INDENT + "-  " + lines.get(0));
            lines.stream().skip(1).forEach(line -> console.out().println(INDENT + INDENT + line));
        }
    }

    private String change(BigDecimal perVehicle) {
        BigDecimal minutes = perVehicle.multiply(BigDecimal.valueOf(job.vehicles()));
        String key =
                switch (minutes.signum()) {
                    case -1 -> "mend.minutes.less";
                    case 0 -> "mend.minutes.same";
                    default -> "mend.minutes.more";
                };
        return session.text(key, numbers.duration(minutes.abs()));
    }

    private String price(Repair repair) {
        WorkedJob mended = worked.get(repair);
        if (!(mended.offer() instanceof Quote quote)) {
            return session.text(
                    mended.proof().holds() && !mended.safety().holds() ? "mend.no-price.safety" : "mend.no-price");
        }
        String cap = quote.cap().map(this::fit).orElse("");
        return session.text("mend.price", numbers.money(quote.price().gross()), cap);
    }

    private String fit(CapFit fit) {
        return session.text(
                fit.fits() ? "mend.cap.fits" : "mend.cap.over", numbers.money(fit.fits() ? fit.spare() : fit.over()));
    }

    ObjectNode json() {
        ObjectNode answer = Answers.object();
        answer.put("job", job.id());
        answer.put("mends", mends());
        answer.put("provedSmallest", result.provedSmallest());
        answer.put("proof", Answers.word(result.proof()));
        answer.put("leastEdits", least());
        ArrayNode repairs = answer.putArray("repairs");
        for (Repair repair : result.repairs()) {
            ObjectNode one = repairs.addObject();
            ArrayNode edits = one.putArray("edits");
            sentences.of(repair.edits(), job.plan()).forEach(edits::add);
            one.put("addedMinutes", Answers.figure(repair.addedCost().multiply(BigDecimal.valueOf(job.vehicles()))));
            one.put("safetyHolds", worked.get(repair).safety().holds());
            if (worked.get(repair).offer() instanceof Quote quote) {
                one.put("gross", quote.price().gross().getAmount());
            }
        }
        answer.set(
                "left",
                findings.json(Stream.concat(result.lossOnly().stream(), result.unmendable().stream())
                        .toList()));
        return answer;
    }
}
