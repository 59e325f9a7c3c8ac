package baywright.plan;

import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.Surface;
import baywright.plan.CompiledStep.Part;
import baywright.script.Nearest;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Turns steps into {@link CompiledStep}s and remembers them, and the terms of stages with them. */
final class StepCompiler {

    private static final int REMEMBERED = 20_000;

    private record Use(String stage, List<String> zones, Map<String, Value> with, Map<String, BigDecimal> drivers) {}

    private record TermsKey(String stage, Map<String, Object> with) {}

    /** Terms once worked out, with the sheet of facts that they were worked out for. */
    private record Known(int sheet, CompiledTerms terms) {}

    /** Rows are worked out together when terms and factors agree. */
    private record Group(CompiledTerms terms, List<BigDecimal> factors) {}

    private final Library library;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final FactSheet facts;
    private final Set<String> surfaces;
    private final WorkReckoner reckoner;
    private final Map<Use, CompiledStep> uses = new HashMap<>();
    private final Map<TermsKey, List<Known>> terms = new HashMap<>();

    StepCompiler(Setting setting, StateIndex states, VehicleIndex vehicle, FactSheet facts) {
        library = setting.library();
        this.states = states;
        this.vehicle = vehicle;
        this.facts = facts;
        surfaces = library.surfaces().stream().map(Surface::id).collect(Collectors.toSet());
        reckoner = new WorkReckoner(setting, vehicle, facts);
    }

    CompiledStep compile(Step step) {
        Use use = new Use(step.stage(), step.zones(), step.with(), step.drivers());
        CompiledStep known = uses.get(use);
        if (known == null) {
            if (uses.size() >= REMEMBERED) {
                uses.clear();
            }
            known = compile(use);
            uses.put(use, known);
        }
        return known;
    }

    private CompiledStep compile(Use use) {
        List<Function<String, Finding>> problems = new ArrayList<>();
        Stage stage = library.stageById().get(use.stage());
        if (stage == null) {
            String nearest =
                    Nearest.to(use.stage(), library.stageById().keySet()).orElse("");
            problems.add(id -> stop(Codes.STAGE_GONE, id, List.of(), new Reason.StageGone(id, use.stage(), nearest)));
        }
        int[] rows = rows(use, Optional.ofNullable(stage), problems);
        if (stage == null || rows.length == 0) {
            return CompiledStep.nothing(problems, Optional.ofNullable(stage));
        }
        Map<String, BigDecimal> drivers = drivers(use, problems);
        StepInputs inputs = StepInputs.of(stage, use.with());
        for (StepInputs.Refused r : inputs.refused()) {
            problems.add(id ->
                    stop(Codes.BAD_INPUT, id, List.of(), new Reason.BadInput(id, r.input(), r.met(), r.wanted())));
        }
        return compile(stage, rows, inputs.accepted(), drivers, problems);
    }

    /**
     * The terms of a stage come from a script. Whatever goes wrong in one is a finding at its step, so that one bad
     * stage does not hide what else is wrong with a plan.
     */
    private CompiledStep compile(
            Stage stage,
            int[] rows,
            Map<String, Value> with,
            Map<String, BigDecimal> drivers,
            List<Function<String, Finding>> problems) {
        List<Part> parts;
        try {
            parts = parts(stage, rows, with);
        } catch (RuntimeException failure) {
            String message = String.valueOf(failure.getMessage());
            problems.add(id -> stop(Codes.STAGE_FAILS, id, List.of(), new Reason.StageFails(id, stage.id(), message)));
            return CompiledStep.nothing(problems, Optional.of(stage));
        }
        StepWork work = reckoner.reckon(stage, rows, parts, with, drivers);
        boolean whole = contains(rows, vehicle.vehicle());
        return CompiledStep.of(problems, stage, with, rows, whole, parts, work);
    }

    private int[] rows(Use use, Optional<Stage> stage, List<Function<String, Finding>> problems) {
        ZoneChoice choice = ZoneChoice.of(use.zones(), vehicle.shape());
        List<String> strangers = unknown(choice);
        for (String unknown : strangers) {
            String nearest = Nearest.to(unknown, vehicle.ids()).orElse("");
            problems.add(id -> stop(Codes.ZONE_UNKNOWN, id, List.of(), new Reason.ZoneUnknown(id, unknown, nearest)));
        }
        if (use.zones().contains(VehicleIndex.VEHICLE)
                && vehicle.shape().zone(VehicleIndex.VEHICLE).isEmpty()) {
            return new int[] {vehicle.vehicle()};
        }
        if (choice.zones().isEmpty() && strangers.isEmpty()) {
            problems.add(id -> stop(Codes.NO_ZONE, id, List.of(), new Reason.NoZone(id)));
        }
        if (stage.isEmpty() || stage.get().surfaces().isEmpty()) {
            return choice.zones().stream().mapToInt(vehicle::row).toArray();
        }
        Map<String, List<String>> wrong = new LinkedHashMap<>();
        List<String> fitting = new ArrayList<>();
        for (String zone : choice.zones()) {
            String surface = vehicle.zone(vehicle.row(zone)).orElseThrow().surface();
            if (stage.get().surfaces().contains(surface)) {
                fitting.add(zone);
            } else {
                wrong.computeIfAbsent(surface, s -> new ArrayList<>()).add(zone);
            }
        }
        List<String> worksOn = stage.get().surfaces();
        wrong.forEach((surface, zones) -> problems.add(
                id -> stop(Codes.WRONG_SURFACE, id, zones, new Reason.WrongSurface(id, surface, worksOn))));
        return fitting.stream().mapToInt(vehicle::row).toArray();
    }

    private List<String> unknown(ZoneChoice choice) {
        List<String> unknown = new ArrayList<>(choice.unknown());
        unknown.remove(VehicleIndex.VEHICLE);
        choice.empty().stream()
                .filter(s -> !surfaces.contains(s))
                .map(s -> "surface:" + s)
                .forEach(unknown::add);
        return unknown;
    }

    private Map<String, BigDecimal> drivers(Use use, List<Function<String, Finding>> problems) {
        Map<String, BigDecimal> sane = new TreeMap<>();
        new TreeMap<>(use.drivers()).forEach((driver, amount) -> {
            if (Amounts.isSane(amount) && amount.signum() >= 0) {
                sane.put(driver, amount);
            } else {
                String met = amount.toString();
                problems.add(id -> stop(Codes.BAD_DRIVER, id, List.of(), new Reason.BadDriver(id, driver, met)));
            }
        });
        return sane;
    }

    private List<Part> parts(Stage stage, int[] rows, Map<String, Value> with) {
        Map<Integer, Group> bySheet = new HashMap<>();
        Map<Group, List<Integer>> groups = new LinkedHashMap<>();
        for (int row : rows) {
            Group group = bySheet.computeIfAbsent(
                    facts.sheetOf(row),
                    sheet -> new Group(termsOf(stage, with, sheet), reckoner.factorsOf(stage, sheet)));
            groups.computeIfAbsent(group, g -> new ArrayList<>()).add(row);
        }
        List<Part> parts = new ArrayList<>();
        groups.forEach((group, of) -> {
            int[] own = of.stream().mapToInt(r -> r).toArray();
            parts.add(new Part(own, vehicle.withNeighbours(own), group.terms()));
        });
        return parts;
    }

    /** The same terms serve every sheet that agrees on the facts which they were worked out from. */
    private CompiledTerms termsOf(Stage stage, Map<String, Value> with, int sheet) {
        Map<String, Object> raws = new TreeMap<>();
        with.forEach((name, value) -> raws.put(name, value.raw()));
        List<Known> known = terms.computeIfAbsent(new TermsKey(stage.id(), raws), k -> new ArrayList<>());
        for (Known candidate : known) {
            if (agree(candidate, sheet)) {
                return candidate.terms();
            }
        }
        CompiledTerms made = new CompiledTerms(stage.terms().of(with, facts.facts(sheet)), states);
        known.add(new Known(sheet, made));
        return made;
    }

    private boolean agree(Known known, int sheet) {
        for (String name : known.terms().terms.dependsOn()) {
            Value there = facts.facts(known.sheet()).get(name);
            Value here = facts.facts(sheet).get(name);
            if (there == null ? here != null : here == null || !there.raw().equals(here.raw())) {
                return false;
            }
        }
        return true;
    }

    private static boolean contains(int[] rows, int row) {
        for (int r : rows) {
            if (r == row) {
                return true;
            }
        }
        return false;
    }

    private static Finding stop(String code, String step, List<String> zones, Reason reason) {
        return new Finding(code, Severity.STOP, Optional.of(step), zones, reason);
    }
}
