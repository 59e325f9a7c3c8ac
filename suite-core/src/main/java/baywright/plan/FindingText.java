package baywright.plan;

import baywright.library.Stage;
import baywright.vehicle.Shape;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Words findings for people: one line, with the titles of the plan's stages and zones. In the program the words are the
 * program's own whatever the reader's locale; on paper they are of the paper's language as far as there are any.
 */
public final class FindingText {

    private static final int ZONES_NAMED = 4;
    private static final long MINUTES_OF_HOUR = 60;
    private static final long HOURS_OF_DAY = 24;
    private static final long SHOWN_AS_MINUTES = 120;
    private static final long SHOWN_AS_HOURS = 48;

    private final Locale locale;
    private final ResourceBundle texts;
    private final Map<String, String> steps;
    private final ZoneNames zones;
    private final boolean everyZone;
    private final Locale paper;
    private final UnaryOperator<String> said;

    /** For the findings of one plan. */
    public FindingText(Setting setting, Plan plan, Locale locale) {
        this(setting, plan, locale, false);
    }

    /** The same, which names every zone where {@code everyZone} is set, however many they are. */
    public FindingText(Setting setting, Plan plan, Locale locale, boolean everyZone) {
        this(
                locale,
                bundle(Locale.ROOT),
                StepNames.of(setting, plan, Locale.ENGLISH, Stage::title),
                new ZoneNames(setting.shape(), Locale.ENGLISH),
                everyZone,
                null,
                UnaryOperator.identity());
    }

    private FindingText(
            Locale locale,
            ResourceBundle texts,
            Map<String, String> steps,
            ZoneNames zones,
            boolean everyZone,
            Locale paper,
            UnaryOperator<String> said) {
        this.locale = locale;
        this.texts = texts;
        this.steps = steps;
        this.zones = zones;
        this.everyZone = everyZone;
        this.paper = paper;
        this.said = said;
    }

    /**
     * For a paper in a language; what has no words in it stays English.
     *
     * @param shape  the vehicle with its zones by the language's words
     * @param titles a stage's title in it
     * @param said   what else a script, an item or the shop says, in it
     */
    public static FindingText onPaper(
            Setting setting,
            Plan plan,
            Locale locale,
            Shape shape,
            Function<Stage, String> titles,
            UnaryOperator<String> said) {
        return new FindingText(
                locale,
                bundle(locale),
                StepNames.of(setting, plan, locale, titles),
                new ZoneNames(shape, locale),
                false,
                locale,
                said);
    }

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(
                "baywright.plan.findings",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** A few words for a code, as a heading. */
    public static String title(String code, Locale locale) {
        return bundle(locale).getString("title." + code);
    }

    /** The sentence: where, what, and the causes from the nearest one back; no full stop. */
    public String of(Finding finding) {
        String zone = finding.zones().isEmpty() ? "" : say("on", zones(finding.zones()));
        Reason reason = finding.reason();
        String code = finding.code();
        if (reason instanceof Reason.NeedUnmet r) {
            String key = code.equals(Codes.PREFERS) ? "prefers.missing" : code;
            return say(key, step(r.step()), zone, states(r.anyOf()), why(r.why()), causes(r));
        }
        if (reason instanceof Reason.MustNotHold r) {
            String key = code.equals(Codes.PREFERS) ? "prefers.present" : code;
            return say(key, step(r.step()), zone, "'" + r.state() + "'", why(r.why()), causes(r));
        }
        if (reason instanceof Reason.TooSoon r) {
            return say(
                    code,
                    step(r.step()),
                    zone,
                    time(r.waitedMinutes()),
                    step(r.after()),
                    time(r.leastMinutes()),
                    why(r.why()));
        }
        if (reason instanceof Reason.TooLate r) {
            return say(
                    code,
                    step(r.step()),
                    zone,
                    time(r.waitedMinutes()),
                    step(r.after()),
                    time(r.mostMinutes()),
                    why(r.why()));
        }
        if (reason instanceof Reason.LeftStanding r) {
            return say(code, step(r.step()), zone, time(r.mostMinutes()), why(r.why()));
        }
        if (reason instanceof Reason.Overlaps r) {
            String key = finding.zones().isEmpty() ? "overlaps.hands" : "overlaps.zone";
            return say(key, step(r.step()), zone, time(r.minutes()), step(r.with()));
        }
        if (reason instanceof Reason.BeforeStart r) {
            return say(code, step(r.step()), zone, time(r.minutes()));
        }
        if (reason instanceof Reason.Beyond r) {
            return beyond(finding, r, zone);
        }
        if (reason instanceof Reason.RuleSpeaks r) {
            return say(code, step(r.step()), zone, r.title(), r.why(), read(r.read()), note(r.note()));
        }
        return faulty(finding, zone);
    }

    private String beyond(Finding finding, Reason.Beyond reason, String zone) {
        List<Object> values = new ArrayList<>();
        values.add(finding.step().map(this::step).orElse(""));
        values.add(zone);
        for (Object value : reason.values()) {
            values.add(shown(value));
        }
        return say(reason.key(), values.toArray());
    }

    /** Figures and days the way of the paper; in the program days as files have them and figures with a point. */
    private Object shown(Object value) {
        if (value instanceof Reason.StepName name) {
            return step(name.id());
        } else if (value instanceof String text) {
            return said.apply(text);
        } else if (value instanceof BigDecimal figure) {
            return paper == null ? figure.toPlainString() : figure(figure);
        } else if (value instanceof LocalDateTime at) {
            return paper == null
                    ? at.toString().replace('T', ' ')
                    : DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                            .withLocale(paper)
                            .format(at);
        } else if (value instanceof LocalDate day && paper != null) {
            return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                    .withLocale(paper)
                    .format(day);
        }
        return value;
    }

    private String figure(BigDecimal figure) {
        NumberFormat format = NumberFormat.getInstance(paper);
        format.setMinimumFractionDigits(Math.max(0, figure.scale()));
        format.setMaximumFractionDigits(Math.max(0, figure.scale()));
        return format.format(figure);
    }

    private String read(Map<String, String> read) {
        String all = read.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : say("rule.read", all);
    }

    private String note(String note) {
        return note.isEmpty() ? "" : say("rule.softened", note);
    }

    /** Sentences for what a plan or a survey has written wrongly. */
    private String faulty(Finding finding, String zone) {
        Reason reason = finding.reason();
        String code = finding.code();
        String step = finding.step().map(this::step).orElse("");
        if (reason instanceof Reason.StageGone r) {
            return say(code, step, zone, r.stage(), nearest(r.nearest()));
        }
        if (reason instanceof Reason.RuleGone r) {
            return say(code, step, zone, r.rule(), nearest(r.nearest()));
        }
        if (reason instanceof Reason.RuleFails r) {
            return say(code, step, zone, r.rule(), r.message());
        }
        if (reason instanceof Reason.StageFails r) {
            return say(code, step, zone, r.message());
        }
        if (reason instanceof Reason.ZoneUnknown r) {
            return say(code, step, zone, r.zone(), nearest(r.nearest()));
        }
        if (reason instanceof Reason.WrongSurface r) {
            return say(code, step, zone, r.surface(), String.join(", ", r.worksOn()));
        }
        if (reason instanceof Reason.BadInput r) {
            return say(code, step, zone, r.input(), r.met(), r.wanted());
        }
        if (reason instanceof Reason.BadDriver r) {
            return say(code, step, zone, r.driver(), r.met());
        }
        if (reason instanceof Reason.NoBay r) {
            return say(code, step, zone, r.bay());
        }
        if (reason instanceof Reason.StepTwice r) {
            return say(code, r.step(), zone, r.count());
        }
        if (reason instanceof Reason.BadFact r) {
            String key = r.wanted().isEmpty() ? "bad-fact.unknown" : code;
            return say(key, step, zone, r.fact(), r.met(), r.wanted(), nearest(r.nearest()));
        }
        if (reason instanceof Reason.StateUnknown r) {
            return say(code, step, zone, r.state(), nearest(r.nearest()));
        }
        return say(code, step, zone);
    }

    // ---- causes

    private String causes(Reason.NeedUnmet reason) {
        Map<String, StringBuilder> byState = new LinkedHashMap<>();
        Map<String, Cause> last = new HashMap<>();
        for (Cause cause : reason.because()) {
            String state = stateOf(cause);
            boolean first = !byState.containsKey(state);
            append(byState.computeIfAbsent(state, s -> new StringBuilder()), lost(cause, first));
            last.put(state, cause);
        }
        byState.forEach((state, text) -> {
            if (wasCleared(reason.because(), state) && !(last.get(state) instanceof Cause.SetLater)) {
                append(text, say("cause.not-again", reason.step()));
            }
        });
        return joined(byState, reason.anyOf().size() == 1 ? reason.anyOf().get(0) : "", "cause.of");
    }

    private static boolean wasCleared(List<Cause> because, String state) {
        return because.stream()
                .anyMatch(c -> c instanceof Cause.ClearedBy by && by.state().equals(state));
    }

    private String causes(Reason.MustNotHold reason) {
        Map<String, StringBuilder> byState = new LinkedHashMap<>();
        for (Cause cause : reason.because()) {
            append(byState.computeIfAbsent(stateOf(cause), s -> new StringBuilder()), held(cause));
        }
        return joined(byState, reason.state(), "cause.of.held");
    }

    private void append(StringBuilder text, String clause) {
        String all = text.isEmpty() ? clause : say("and-then", text, clause);
        text.setLength(0);
        text.append(all);
    }

    private String joined(Map<String, StringBuilder> byState, String understood, String key) {
        StringBuilder all = new StringBuilder();
        byState.forEach(
                (state, text) -> append(all, state.equals(understood) ? text.toString() : say(key, state, text)));
        return all.toString();
    }

    private static String stateOf(Cause cause) {
        if (cause instanceof Cause.NeverSet c) {
            return c.state();
        } else if (cause instanceof Cause.Surveyed c) {
            return c.state();
        } else if (cause instanceof Cause.SetBy c) {
            return c.state();
        } else if (cause instanceof Cause.ClearedBy c) {
            return c.state();
        } else if (cause instanceof Cause.Perished c) {
            return c.state();
        } else if (cause instanceof Cause.NotYet c) {
            return c.state();
        } else if (cause instanceof Cause.BayLacks c) {
            return c.state();
        } else if (cause instanceof Cause.BayGives c) {
            return c.state();
        } else if (cause instanceof Cause.SetLater c) {
            return c.state();
        }
        return ((Cause.ClearedLater) cause).state();
    }

    private String lost(Cause cause, boolean first) {
        if (cause instanceof Cause.ClearedBy c) {
            return say("cause.cleared-by", step(c.step()));
        } else if (cause instanceof Cause.SetBy c) {
            return say("cause.set-before", step(c.step()));
        } else if (cause instanceof Cause.Surveyed) {
            return say("cause.surveyed.before");
        } else if (cause instanceof Cause.Perished c) {
            String key = c.step().isEmpty() ? "cause.perished.survey" : "cause.perished";
            return say(key, time(c.afterMinutes()), step(c.step()), time(c.lastsMinutes()));
        } else if (cause instanceof Cause.NotYet c) {
            return say("cause.not-yet", time(c.missingMinutes()), step(c.step()));
        } else if (cause instanceof Cause.BayLacks c) {
            return say(c.bay().isEmpty() ? "cause.bay-lacks.none" : "cause.bay-lacks", c.bay());
        } else if (cause instanceof Cause.SetLater c) {
            return say(first ? "cause.set-later" : "cause.set-later.again", step(c.step()));
        }
        return say("cause.never-set");
    }

    private String held(Cause cause) {
        if (cause instanceof Cause.SetBy c) {
            return say("cause.set-by", step(c.step()));
        } else if (cause instanceof Cause.ClearedLater c) {
            return say("cause.cleared-later", step(c.step()));
        } else if (cause instanceof Cause.BayGives c) {
            return say("cause.bay-gives", c.bay());
        }
        return say("cause.surveyed");
    }

    // ---- small words

    private String say(String key, Object... with) {
        return new MessageFormat(texts.getString(key), locale).format(with);
    }

    private String step(String id) {
        return steps.getOrDefault(id, id);
    }

    private String why(String why) {
        return why.isEmpty() ? "" : say("why", why);
    }

    private String nearest(String id) {
        return id.isEmpty() ? "" : say("nearest", id);
    }

    private String states(List<String> anyOf) {
        String quoted = anyOf.stream().map(s -> "'" + s + "'").collect(Collectors.joining(", "));
        return anyOf.size() == 1 ? quoted : say("one-of", quoted);
    }

    private String zones(List<String> ids) {
        return everyZone ? zones.each(ids) : zones.of(ids, ZONES_NAMED);
    }

    /** Minutes up to two hours, hours and minutes up to two days, days and hours beyond. */
    private String time(BigDecimal minutes) {
        if (minutes.compareTo(BigDecimal.valueOf(SHOWN_AS_MINUTES)) < 0) {
            BigDecimal shown = minutes.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
            return say("minutes", shown.toPlainString());
        }
        long whole = minutes.setScale(0, RoundingMode.HALF_UP).longValue();
        long hours = whole / MINUTES_OF_HOUR;
        if (hours >= SHOWN_AS_HOURS) {
            return say("days-hours", hours / HOURS_OF_DAY, hours % HOURS_OF_DAY);
        }
        long rest = whole % MINUTES_OF_HOUR;
        return rest == 0 ? say("hours", hours) : say("hours-minutes", hours, rest);
    }
}
