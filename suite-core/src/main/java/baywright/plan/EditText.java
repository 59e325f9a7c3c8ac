package baywright.plan;

import baywright.plan.Composition.Because;
import java.text.MessageFormat;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

/** Words edits, and the reasons of composed steps, for people: one line each, with the titles of stages and zones. */
public final class EditText {

    private static final int ZONES_NAMED = 4;

    private final Setting setting;
    private final Locale locale;
    private final ResourceBundle texts;
    private final ZoneNames names;

    /** For plans of one setting; a language without texts of its own gets the English ones. */
    public EditText(Setting setting, Locale locale) {
        this.setting = setting;
        this.locale = locale;
        names = new ZoneNames(setting.shape(), locale);
        texts = ResourceBundle.getBundle(
                "baywright.plan.edits",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** A sentence for each edit of a repair, which begins with this plan; no full stops. */
    public List<String> of(List<Edit> edits, Plan plan) {
        List<String> sentences = new ArrayList<>();
        Plan now = plan;
        for (Edit edit : edits) {
            sentences.add(of(edit, now));
            now = edit.applyTo(now);
        }
        return sentences;
    }

    /** What to say of a stop that no edit mends short of leaving work out. */
    public String onlyByLoss() {
        return texts.getString("loss");
    }

    /** What to say of a stop that no edit mends. */
    public String unmendable() {
        return texts.getString("none");
    }

    /** Why a step of a composed plan is there; no full stop. */
    public String of(Because because, Plan plan) {
        String zones = because.zones().equals(List.of(VehicleIndex.VEHICLE)) ? "" : zones(because.zones());
        String key = because.forStep().isEmpty() ? "because.wish" : because.ends() ? "because.ends" : "because.needs";
        String on = zones.isEmpty() ? "" : say("because.on", zones);
        String name = because.forStep().isEmpty()
                ? ""
                : title(step(plan, because.forStep())) + " (" + because.forStep() + ")";
        return because.rule().isEmpty()
                ? say(key, because.state(), on, name)
                : say("because.rule", because.rule(), on, name);
    }

    /** The sentence for one edit of this plan. */
    public String of(Edit edit, Plan plan) {
        Plan after = edit.applyTo(plan);
        if (edit instanceof Edit.Insert insert) {
            Step step = insert.step();
            String with = step.with().entrySet().stream()
                    .map(e -> say("input.value", e.getKey(), Texts.of(e.getValue())))
                    .sorted()
                    .collect(Collectors.joining(", "));
            String key = with.isEmpty() ? "insert" : "insert.with";
            return say(key, title(step), zones(step.zones()), where(after, step.id()), with);
        }
        Step step = step(plan, edit.stepId());
        String name = title(step) + " (" + step.id() + ")";
        if (edit instanceof Edit.Move) {
            return say(step.at().isPresent() ? "move.free" : "move", name, where(after, step.id()));
        }
        if (edit instanceof Edit.Drop) {
            return say("drop", name);
        }
        if (edit instanceof Edit.ChangeInput change) {
            return change.value()
                    .map(v -> say("input", name, change.input(), Texts.of(v)))
                    .orElseGet(() -> say("input.usual", name, change.input(), usual(step, change.input())));
        }
        if (edit instanceof Edit.ChangeZones) {
            return otherZones(name, step, step(after, step.id()));
        }
        Optional<String> at = step(after, step.id())
                .at()
                .map(t -> DateTimeFormatter.ofPattern(texts.getString("date"), locale)
                        .format(t));
        return at.map(t -> say("start", name, t)).orElseGet(() -> say("start.free", name));
    }

    private String otherZones(String name, Step before, Step after) {
        List<String> had = ZoneChoice.resolve(before.zones(), setting.shape());
        List<String> has = ZoneChoice.resolve(after.zones(), setting.shape());
        List<String> more = has.stream().filter(z -> !had.contains(z)).toList();
        List<String> fewer = had.stream().filter(z -> !has.contains(z)).toList();
        if (fewer.isEmpty() == more.isEmpty()) {
            return say("zones.other", name, zones(after.zones()));
        }
        return fewer.isEmpty() ? say("zones.more", name, zones(more)) : say("zones.fewer", name, zones(fewer));
    }

    /** Which step it then stands before. */
    private String where(Plan after, String id) {
        List<Step> steps = after.steps();
        int index = 0;
        while (!steps.get(index).id().equals(id)) {
            index++;
        }
        if (index == 0) {
            return texts.getString("first");
        }
        if (index == steps.size() - 1) {
            return texts.getString("last");
        }
        Step next = steps.get(index + 1);
        return say("before", title(next) + " (" + next.id() + ")");
    }

    private static Step step(Plan plan, String id) {
        return plan.steps().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the plan has no step '" + id + "'"));
    }

    private String title(Step step) {
        return StepNames.stage(setting, step.stage(), locale);
    }

    private String usual(Step step, String input) {
        return Optional.ofNullable(setting.library().stageById().get(step.stage())).stream()
                .flatMap(s -> s.inputs().stream())
                .filter(i -> i.name().equals(input))
                .map(i -> Texts.of(i.usual()))
                .findFirst()
                .orElse("");
    }

    private String zones(List<String> written) {
        return names.of(ZoneChoice.resolve(written, setting.shape()), ZONES_NAMED);
    }

    private String say(String key, Object... values) {
        return new MessageFormat(texts.getString(key), locale).format(values);
    }
}
