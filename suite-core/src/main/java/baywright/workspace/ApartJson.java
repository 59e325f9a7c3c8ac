package baywright.workspace;

import baywright.plan.Severity;
import baywright.safety.ApartPair;
import baywright.safety.SafetySettings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * {@code safety.apart} of {@code shop.json}: pairs of the shop's own, and usual pairs told otherwise. What a pair of a usual
 * id leaves out is as usual; {@code "severity": "off"} drops it and wants a reason.
 */
final class ApartJson {

    static final String OFF = "off";
    static final ApartPair.Within WITHIN_USUALLY = ApartPair.Within.TOGETHER;
    static final Severity SEVERITY_USUALLY = Severity.STOP;

    private static final int LONGEST = 1440;
    private static final Map<String, Optional<Severity>> SEVERITIES = severities();
    static final Map<String, ApartPair.Within> WITHIN =
            ShopJson.inOrder(Map.entry("together", ApartPair.Within.TOGETHER), Map.entry("day", ApartPair.Within.DAY));
    private static final Pattern SELECTOR = Pattern.compile("(" + String.join("|", ApartPair.KINDS) + "):.*\\S.*");
    private static final String A_SELECTOR = "a selector such as \"group:acid\"; it begins with "
            + ApartPair.KINDS.stream().map(k -> k + ":").collect(Collectors.joining(", "));

    private ApartJson() {}

    private static Map<String, Optional<Severity>> severities() {
        Map<String, Optional<Severity>> all = new LinkedHashMap<>();
        for (Severity severity : Severity.values()) {
            all.put(severity.name().toLowerCase(Locale.ROOT), Optional.of(severity));
        }
        all.put(OFF, Optional.empty());
        return all;
    }

    static List<ApartPair> read(Fields in) {
        Map<String, ApartPair> pairs = new LinkedHashMap<>();
        SafetySettings.USUAL.apart().forEach(p -> pairs.put(p.id(), p));
        for (Fields one : in.objects("apart")) {
            String id = one.id("id");
            Optional<ApartPair> usual = Optional.ofNullable(pairs.get(id));
            Optional<ApartPair> pair = pair(one, id, usual);
            pair.ifPresentOrElse(p -> pairs.put(id, p), () -> pairs.remove(id));
            one.done();
        }
        return new ArrayList<>(pairs.values());
    }

    /** Empty: dropped, or not to be read. */
    private static Optional<ApartPair> pair(Fields in, String id, Optional<ApartPair> usual) {
        List<String> first = selectors(in, "first", usual.map(ApartPair::first));
        List<String> second = selectors(in, "second", usual.map(ApartPair::second));
        ApartPair.Within within =
                in.choice("within", WITHIN, usual.map(ApartPair::within).orElse(WITHIN_USUALLY));
        int minutes = in.whole(
                "minutes", Span.from(0, LONGEST), usual.map(ApartPair::minutes).orElse(0));
        Optional<Severity> severity = in.choice(
                "severity",
                SEVERITIES,
                Optional.of(usual.map(ApartPair::severity).orElse(SEVERITY_USUALLY)));
        String why = in.text("why", usual.map(ApartPair::why).orElse(""));
        if (severity.isEmpty() && in.text("why", "").isBlank()) {
            in.refuse("severity", "drops what protects people", "say the reason in why");
        }
        return severity.map(grade -> new ApartPair(id, first, second, within, minutes, grade, why));
    }

    private static List<String> selectors(Fields in, String name, Optional<List<String>> usual) {
        List<String> given = in.texts(name, SELECTOR, A_SELECTOR).stream()
                .filter(ApartPair::isSelector)
                .toList();
        if (!given.isEmpty()) {
            return given;
        }
        if (usual.isEmpty() && !in.report().hasErrors()) {
            in.refuse(name, "names nothing", "give " + A_SELECTOR);
        }
        return usual.orElse(List.of());
    }
}
