package baywright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.editor.Rename.Kind;
import baywright.editor.Rename.RefusedException;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.library.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class RenameTest {

    /** Something of the shipped library that has an id. */
    record Target(Kind kind, String stage, String id) {}

    private static Rename.Change rename(String text, Kind kind, String from, String to) throws RefusedException {
        return Rename.of(Map.of("a.groovy", text), kind, from, to, Scripts.library());
    }

    private static String renamed(String text, Kind kind, String from, String to) throws RefusedException {
        return rename(text, kind, from, to).applyTo(Map.of("a.groovy", text)).get("a.groovy");
    }

    @Test
    void onlyWhatMeansTheStateIsRenamed() throws RefusedException {
        String text = Scripts.PROBE.replace("title 'Probe'", "title 'washed'");
        assertThat(renamed(text, Kind.STATE, "washed", "hand-washed"))
                .isEqualTo(text.replace("state 'washed'", "state 'hand-washed'")
                        .replace("sets 'washed'", "sets 'hand-washed'"));
    }

    @Test
    void anInputIsRenamedInItsStageAndWhereAFormNeedsIt() throws RefusedException {
        String text = """
                stage('a') {
                    inputs { count 'passes', from: 1, to: 3, usual: 1 }
                    checks { confirm "$passes times, ${passes + 1} in all" }
                    time { attended 1.min, 2.min, 3.min, times: passes }
                    example 'passes', on: 'saloon', with: [passes: 2], drivers: [passes: 1]
                }
                stage('b', like: 'a') { time { attended 1.min, 2.min, 3.min, times: passes } }
                stage('c') { inputs { count 'passes', from: 1, to: 3, usual: 1 } }
                """;
        Map<String, String> files = Map.of("a.groovy", text);
        assertThat(Rename.input(files, "a", "passes", "all-passes")
                        .applyTo(files)
                        .get("a.groovy"))
                .isEqualTo("""
                        stage('a') {
                            inputs { count 'all-passes', from: 1, to: 3, usual: 1 }
                            checks { confirm "${input('all-passes')} times, ${input('all-passes') + 1} in all" }
                            time { attended 1.min, 2.min, 3.min, times: input('all-passes') }
                            example 'passes', on: 'saloon', with: ['all-passes': 2], drivers: [passes: 1]
                        }
                        stage('b', like: 'a') { time { attended 1.min, 2.min, 3.min, times: input('all-passes') } }
                        stage('c') { inputs { count 'passes', from: 1, to: 3, usual: 1 } }
                        """);
    }

    @Test
    void aNameIsFollowedToItsTexts() throws RefusedException {
        String text = """
                state 'wet', means: 'w'
                stage('a') {
                    def water = 'wet'
                    after { sets water }
                    before {
                        ['wet', 'dry'].each { refuses it }
                        for (s in ['wet']) { prefers s }
                        needs heavy == 'wet' ? 'wet' : 'dry'
                    }
                }
                """;
        assertThat(renamed(text, Kind.STATE, "wet", "soaked")).isEqualTo("""
                state 'soaked', means: 'w'
                stage('a') {
                    def water = 'soaked'
                    after { sets water }
                    before {
                        ['soaked', 'dry'].each { refuses it }
                        for (s in ['soaked']) { prefers s }
                        needs heavy == 'wet' ? 'soaked' : 'dry'
                    }
                }
                """);
    }

    @Test
    void aTextThatNoArgumentExplainsIsADoubt() throws RefusedException {
        String text = "state 'wet', means: 'wet'\nstage('a') {\n    def x = [k: 'wet']\n    before { needs x.k }\n}\n";
        Rename.Change change = rename(text, Kind.STATE, "wet", "soaked");
        assertThat(change.doubts()).containsExactly("a.groovy:3:17");
        assertThat(change.edits().get("a.groovy")).hasSize(1);
    }

    @Test
    void anItemIsRenamedBehindKeepApartToo() throws RefusedException {
        String text =
                "stage('a') { hazards { keepApart 'iron-remover', 'acid' }\n uses { item 'iron-remover', 1.ml } }";
        assertThat(renamed(text, Kind.ITEM, "iron-remover", "fallout-remover"))
                .isEqualTo(text.replace("iron-remover", "fallout-remover"));
    }

    @Test
    void whoeverKeepsTheOtherFilesIsToldTheirFields() throws RefusedException {
        assertThat(rename(Scripts.PROBE, Kind.STAGE, "probe", "trial").fields())
                .containsExactly(new Rename.Field("jobs/*/job.json", "plan.steps[].stage"));
    }

    @Test
    void aRenameThatCannotBeIsRefusedWithTheReason() {
        assertThatThrownBy(() -> rename(Scripts.PROBE, Kind.STATE, "wahsed", "x"))
                .hasMessage("no state is called 'wahsed'; nearest is 'washed'");
        assertThatThrownBy(() -> rename(Scripts.PROBE, Kind.STATE, "washed", "Washed"))
                .hasMessageStartingWith("'Washed' is no id: ");
        assertThatThrownBy(() -> rename(Scripts.PROBE, Kind.STATE, "washed", "cool"))
                .hasMessage("state 'cool' is already there, at a.groovy:3:7");
        assertThatThrownBy(() -> rename(Scripts.PROBE, Kind.FACT, "size", "bulk"))
                .hasMessage("fact 'size' is built in and keeps its id");
        Map<String, String> files = Map.of("a.groovy", Scripts.PROBE);
        assertThatThrownBy(() -> Rename.input(files, "probe", "pases", "x"))
                .hasMessage("stage 'probe' has no input 'pases'; nearest is 'passes'");
        assertThatThrownBy(() -> Rename.input(files, "probe", "passes", "load"))
                .hasMessageStartingWith("input 'load' is already there");
        assertThatThrownBy(() -> Rename.input(files, "probe", "passes", "in"))
                .hasMessage("'in' is a word of the grammar; no input can be called so");
    }

    @Property(tries = 25)
    void renamingThereAndBackIsTheSame(@ForAll("targets") Target target) throws RefusedException {
        Map<String, String> files = Scripts.shipped();
        String other = target.id().contains("-") ? "quite-another" : "another";
        Map<String, String> there = apply(files, target, target.id(), other);
        assertThat(there).isNotEqualTo(files);
        assertThat(apply(there, target, other, target.id())).isEqualTo(files);
    }

    /** Conditions of rules ask by function, compare answers and give lists a name; all of it follows. */
    @Test
    void whatRulesAskForFollows() throws RefusedException {
        Map<String, String> files = Scripts.shipped();
        for (String[] one : new String[][] {
            {"STAGE", "polish"},
            {"STAGE", "refine-sand"},
            {"STATE", "masked"},
            {"STATE", "rinsed"},
            {"FAMILY", "sanding"},
            {"SURFACE", "lamp"},
            {"FACT", "repainted-days"}
        }) {
            files = new TreeMap<>(Rename.of(files, Kind.valueOf(one[0]), one[1], "quite-" + one[1], Scripts.library())
                    .applyTo(files));
        }
        files = Rename.input(files, "machine-sand", "grit", "coarseness").applyTo(files);
        files = Rename.input(files, "de-mask", "refits", "puts-back").applyTo(files);
        assertThat(files.get("rules/paint.groovy"))
                .contains("last('quite-sanding') == 'machine-sand'", "lastInput('machine-sand', 'coarseness')")
                .contains("step.stage == 'quite-refine-sand'", "'one-step', 'quite-polish', 'finishing-polish'")
                .doesNotContain("'polish'", "'sanding'", "'refine-sand'", "'repainted-days'");
        assertThat(files.get("rules/chemistry.groovy"))
                .contains("until: 'quite-rinsed'", "zone.surface == 'quite-lamp'");
        assertThat(files.get("rules/masking.groovy")).contains("input('puts-back') == 'clip-on'");
        assertThat(Scripts.load(files).errors()).isEmpty();
    }

    /** One thing of each kind gets another id, all at once: a load of the whole library costs seconds. */
    @Property(tries = 2)
    void theLibraryMeansTheSameAfterwards(@ForAll long seed) throws RefusedException {
        Map<String, String> files = Scripts.shipped();
        Random random = new Random(seed);
        Map<String, String> back = new TreeMap<>();
        for (Kind kind : List.of(Kind.STATE, Kind.SURFACE, Kind.FAMILY, Kind.FACT, Kind.INPUT, Kind.STAGE)) {
            List<Target> all = all().stream().filter(t -> t.kind() == kind).toList();
            Target target = all.get(random.nextInt(all.size()));
            String other = "renamed-" + kind.word();
            files = apply(files, target, target.id(), other);
            back.put(other, target.id());
        }
        LibraryLoader.Loaded loaded = Scripts.load(files);
        assertThat(loaded.errors()).isEmpty();
        String said = said(loaded.library());
        for (Map.Entry<String, String> one : back.entrySet()) {
            assertThat(said).contains(one.getKey());
            said = said.replace(one.getKey(), one.getValue());
        }
        assertThat(said).isEqualTo(said(Scripts.library()));
    }

    /** An item is declared in the price list, which is not renamed here: then all that is wrong is that it is missing. */
    @Test
    void anItemIsRenamedInEveryStage() throws RefusedException {
        Map<String, String> files =
                apply(Scripts.shipped(), new Target(Kind.ITEM, "", "iron-remover"), "iron-remover", "x");
        assertThat(String.join("", files.values()))
                .doesNotContain("'iron-remover'")
                .contains("item 'x', 75.ml");
    }

    private static Map<String, String> apply(Map<String, String> files, Target target, String from, String to)
            throws RefusedException {
        boolean input = target.kind() == Kind.INPUT;
        String stage = target.stage();
        Rename.Change change = input
                ? Rename.input(files, stage, from, to)
                : Rename.of(files, target.kind(), from, to, itemAs(target, from));
        return new TreeMap<>(change.applyTo(files));
    }

    /** The library with the item under the id that it has at the moment. */
    private static Library itemAs(Target target, String id) {
        Library library = Scripts.library();
        if (target.kind() != Kind.ITEM || id.equals(target.id())) {
            return library;
        }
        Item item = library.itemById().get(target.id());
        Item renamed = new Item(
                id,
                item.title(),
                item.pack(),
                item.price(),
                item.spoils(),
                item.density(),
                item.hazards(),
                item.protection(),
                item.groups(),
                item.note());
        return Library.of(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(renamed), List.of(), "");
    }

    private static String said(Library library) {
        StringBuilder all = new StringBuilder();
        all.append(library.states()).append(library.surfaces()).append(library.families());
        all.append(library.facts()).append(library.factors());
        for (Stage stage : library.stages()) {
            all.append(stage.id()).append(stage.family()).append(stage.surfaces());
            all.append(stage.inputs()).append(stage.examples()).append(stage.usualTerms());
        }
        // Places move with the length of an id, sets have no order.
        return all.toString().replaceAll("[pP]lace=[^,\\]]*", "").replaceAll("(dependsOn|from)=\\[[^]]*]", "");
    }

    @Provide
    Arbitrary<Target> targets() {
        return Arbitraries.of(all());
    }

    private static List<Target> all() {
        Library library = Scripts.library();
        List<Target> all = new ArrayList<>();
        library.states().forEach(s -> all.add(new Target(Kind.STATE, "", s.id())));
        library.stages().forEach(s -> all.add(new Target(Kind.STAGE, "", s.id())));
        library.facts().stream()
                .filter(f -> !f.id().equals("size"))
                .forEach(f -> all.add(new Target(Kind.FACT, "", f.id())));
        library.surfaces().stream()
                .filter(f -> !f.id().equals("vehicle"))
                .forEach(f -> all.add(new Target(Kind.SURFACE, "", f.id())));
        library.families().forEach(f -> all.add(new Target(Kind.FAMILY, "", f.id())));
        library.stages().forEach(s -> s.inputs().forEach(i -> all.add(new Target(Kind.INPUT, s.id(), i.name()))));
        library.stages().stream()
                .flatMap(s -> s.usualTerms().uses().stream())
                .map(u -> u.item())
                .distinct()
                .forEach(i -> all.add(new Target(Kind.ITEM, "", i)));
        return all;
    }
}
