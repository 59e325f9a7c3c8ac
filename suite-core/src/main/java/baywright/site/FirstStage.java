package baywright.site;

import baywright.library.Item;
import baywright.library.ScriptCache;
import baywright.library.Stage;
import baywright.plan.ExampleCheck;
import baywright.plan.StepWork;
import baywright.quantity.Quantity;
import baywright.script.Problem;
import baywright.script.Type;
import baywright.vehicle.Shape;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A stage put together from answers, for someone who has never written a script. Its text grows with the answers; what is not answered yet is
 * not in it.
 *
 * @param id       of the stage
 * @param title    words for people
 * @param family   id of its family
 * @param surfaces ids of the surfaces that it works on
 * @param time     how long it takes, as typed
 * @param use      what it uses up; empty: nothing
 * @param risks    kinds of danger besides those of the item
 * @param needs    ids of states that must hold before
 * @param sets     ids of states that hold after
 * @param confirm  what is looked at in the end; empty: not said yet
 */
public record FirstStage(
        String id,
        String title,
        String family,
        List<String> surfaces,
        Optional<Time> time,
        Optional<Use> use,
        List<String> risks,
        List<String> needs,
        List<String> sets,
        String confirm) {

    /**
     * Hands-on minutes of one person, as typed.
     *
     * @param least  shortest
     * @param likely most frequent
     * @param most   longest
     * @param per    what it is counted by: {@code vehicle}, {@code m2}, {@code panel}
     */
    public record Time(String least, String likely, String most, String per) {}

    /**
     * A consumable.
     *
     * @param item   its entry in the price list
     * @param amount in the unit of its pack, as typed
     * @param per    what it is counted by
     */
    public record Use(Item item, String amount, String per) {}

    /** What is wrong with an answer. */
    public enum Fault {
        NO_TITLE,
        BAD_ID,
        TAKEN,
        NO_SURFACE,
        /** Not three numbers above zero, one not less than the other. */
        TIME,
        /** Not a number above zero. */
        AMOUNT
    }

    /**
     * What came of trying it.
     *
     * @param text     its script, with an example when it could be tried
     * @param problems of its script; when the others have errors, so that nothing can be tried, theirs
     * @param trial    what it comes to; empty when it cannot be tried
     * @param accepted whether the script loads, the step can be done and the example passes
     */
    public record Tried(String text, List<Problem> problems, Optional<Trial> trial, boolean accepted) {
        public Tried {
            problems = List.copyOf(problems);
        }
    }

    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}([.,]\\d{1,3})?");
    private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_UP);
    private static final String INDENT = "    ";

    public FirstStage {
        surfaces = List.copyOf(surfaces);
        risks = List.copyOf(risks);
        needs = List.copyOf(needs);
        sets = List.copyOf(sets);
    }

    /** Name of its script below the workspace. */
    public String file() {
        return "stages/" + family + "/" + id + ".groovy";
    }

    /** What is wrong with the answers given so far; time and use count when they are there. */
    public Set<Fault> faults(OpenShop shop) {
        Set<Fault> faults = EnumSet.noneOf(Fault.class);
        if (title.isBlank()) {
            faults.add(Fault.NO_TITLE);
        } else if (!Type.isId(id)) {
            faults.add(Fault.BAD_ID);
        } else if (shop.site().library().stageById().containsKey(id)
                || shop.texts().containsKey(file())) {
            faults.add(Fault.TAKEN);
        }
        if (surfaces.isEmpty()) {
            faults.add(Fault.NO_SURFACE);
        }
        if (time.isPresent() && !isInOrder(time.get())) {
            faults.add(Fault.TIME);
        }
        if (use.isPresent() && !isAboveZero(use.get().amount())) {
            faults.add(Fault.AMOUNT);
        }
        return faults;
    }

    private static boolean isAboveZero(String typed) {
        return NUMBER.matcher(typed.strip()).matches() && number(typed).signum() > 0;
    }

    private static boolean isInOrder(Time time) {
        return isAboveZero(time.least())
                && isAboveZero(time.likely())
                && isAboveZero(time.most())
                && number(time.least()).compareTo(number(time.likely())) <= 0
                && number(time.likely()).compareTo(number(time.most())) <= 0;
    }

    private static BigDecimal number(String typed) {
        return new BigDecimal(typed.strip().replace(',', '.'));
    }

    // the script

    /** Its script as far as it is answered. */
    public String text() {
        return text(List.of());
    }

    private String text(List<String> example) {
        List<String> lines = new ArrayList<>();
        lines.add("// figures: from memory, tune to your own records");
        lines.add("stage(" + quoted(id) + ") {");
        lines.add(INDENT + "title " + quoted(title));
        lines.add(INDENT + "family " + quoted(family));
        lines.add(INDENT + "revision 1");
        if (!surfaces.isEmpty()) {
            lines.add(INDENT + "worksOn " + all(surfaces));
        }
        block(lines, "before", needs.isEmpty() ? List.of() : List.of("needs " + all(needs)));
        block(lines, "after", sets.isEmpty() ? List.of() : List.of("sets " + all(sets)));
        block(
                lines,
                "time",
                time
                        .filter(FirstStage::isInOrder)
                        .map(t -> "attended " + minutes(t.least()) + ", " + minutes(t.likely()) + ", "
                                + minutes(t.most()) + ", per: " + quoted(t.per()))
                        .stream()
                        .toList());
        Optional<Use> used = use.filter(u -> isAboveZero(u.amount()));
        block(
                lines,
                "uses",
                used
                        .map(u -> "item " + quoted(u.item().id()) + ", "
                                + amount(number(u.amount()), u.item().pack()) + ", per: " + quoted(u.per()))
                        .stream()
                        .toList());
        List<String> dangers = new ArrayList<>();
        used.filter(u -> !u.item().hazards().isEmpty())
                .ifPresent(u -> dangers.add("from " + quoted(u.item().id())));
        risks.forEach(risk -> dangers.add("risk " + quoted(risk)));
        block(lines, "hazards", dangers);
        block(lines, "checks", confirm.isBlank() ? List.of() : List.of("confirm " + quoted(confirm.strip())));
        lines.addAll(example);
        lines.add("}");
        return String.join("\n", lines) + "\n";
    }

    private static void block(List<String> lines, String word, List<String> inside) {
        if (!inside.isEmpty()) {
            lines.add(INDENT + word + " {");
            inside.forEach(line -> lines.add(INDENT + INDENT + line));
            lines.add(INDENT + "}");
        }
    }

    private static String all(List<String> ids) {
        return ids.stream().map(FirstStage::quoted).collect(Collectors.joining(", "));
    }

    private static String minutes(String typed) {
        return number(typed).toPlainString() + ".min";
    }

    private static String amount(BigDecimal number, Quantity like) {
        return number.toPlainString() + "." + like.unit().symbol();
    }

    private static String quoted(String text) {
        String plain = text.strip().replaceAll("\\p{Cntrl}", " ");
        return "'" + plain.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }

    // trying

    /** Tries it on a vehicle of a shape and adds what came out as an example. Off the event thread: the library is loaded anew. */
    public Tried tryOn(OpenShop shop, Shape shape, ScriptCache cache) {
        OpenShop loaded = shop.withText(file(), text()).reloaded(cache);
        Optional<Stage> stage =
                Optional.ofNullable(loaded.site().library().stageById().get(id));
        List<Problem> problems = problems(loaded);
        if (stage.isEmpty() || problems.stream().anyMatch(FirstStage::isError)) {
            return new Tried(text(), problems, Optional.empty(), false);
        }
        Trial trial = Trial.of(loaded.site().library(), id, Trial.On.whole(shape), loaded.shop());
        if (!trial.faults().isEmpty() || trial.step().isEmpty()) {
            return new Tried(text(), problems, Optional.of(trial), false);
        }
        String text = text(example(shape, trial.step().get()));
        OpenShop again = shop.withText(file(), text).reloaded(cache);
        boolean passes = Optional.ofNullable(again.site().library().stageById().get(id))
                .map(new ExampleCheck(
                        again.site().library(), again.site().workspace().shapes())::of)
                .filter(ExampleCheck.StageOutcome::passes)
                .isPresent();
        List<Problem> left = problems(again);
        return new Tried(text, left, Optional.of(trial), passes && left.stream().noneMatch(FirstStage::isError));
    }

    private static boolean isError(Problem problem) {
        return problem.severity() == Problem.Severity.ERROR;
    }

    /** Its own; those of others only when they keep the library from being loaded. */
    private List<Problem> problems(OpenShop loaded) {
        List<Problem> own = loaded.problems().stream()
                .filter(problem -> problem.place().file().equals(file()))
                .toList();
        return own.stream().noneMatch(FirstStage::isError) && !loaded.isSound()
                ? loaded.problems().stream().filter(FirstStage::isError).toList()
                : own;
    }

    private List<String> example(Shape shape, StepWork work) {
        BigDecimal minutes = work.attendedMinutes().mean().add(work.setUpMinutes());
        List<String> lines = new ArrayList<>();
        lines.add(INDENT + "example " + quoted(shape.title()) + ", on: " + quoted(shape.id()) + ",");
        List<String> more = new ArrayList<>();
        more.add("attended: " + minutes.setScale(1, RoundingMode.FLOOR).toPlainString() + ".min.."
                + minutes.setScale(1, RoundingMode.CEILING).toPlainString() + ".min");
        if (!work.items().isEmpty()) {
            more.add(work.items().entrySet().stream()
                    .map(one -> quoted(one.getKey()) + ": "
                            + amount(one.getValue().amount().round(FOUR_DIGITS).stripTrailingZeros(), one.getValue()))
                    .collect(Collectors.joining(", ", "uses: [", "]")));
        }
        if (!sets.isEmpty()) {
            more.add("sets: [" + all(sets) + "]");
        }
        lines.add(more.stream().map(part -> INDENT + INDENT + INDENT + part).collect(Collectors.joining(",\n")));
        return lines;
    }
}
