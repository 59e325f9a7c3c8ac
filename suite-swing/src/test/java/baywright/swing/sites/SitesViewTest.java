package baywright.swing.sites;

import static baywright.swing.Screen.everything;
import static baywright.swing.Screen.run;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.ScriptCache;
import baywright.pack.KeyFolder;
import baywright.pack.PackFile;
import baywright.pack.PackMaker;
import baywright.pack.SigningKey;
import baywright.pack.TrustList;
import baywright.pack.Version;
import baywright.share.Clash;
import baywright.share.Taking;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.workspace.Workspace;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SitesViewTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);
    private static final String SCRIPT = "stages/wash/contact-wash.groovy";
    private static final String SMALL = "stages/words.groovy";
    private static final String OURS = "attended 0.9.min, 1.3.min, 2.2.min";
    private static final String THEIRS = "attended 1.9.min, 2.3.min, 3.2.min";

    @TempDir
    private static Path folder;

    private static Path pack;
    private static Around around;
    private static SigningKey stranger;

    @TempDir
    Path own;

    private TestDesk desk;
    private SitesView view;
    private Path shop;

    /** A pack of the shipped library of another site, where contact washing takes a minute more. */
    @BeforeAll
    static void makeAPack() throws Exception {
        Screen.needed();
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
        around = new Around(CLOCK, ScriptCache.in(folder.resolve("cache")), new KeyFolder(folder.resolve("settings")));
        Path giver = DemoShops.copy("millrace-works", folder.resolve("giver"));
        Path script = giver.resolve(SCRIPT);
        Files.writeString(script, Files.readString(script).replace(OURS, THEIRS));
        stranger = new KeyFolder(folder.resolve("stranger")).make("the-mill");
        PackMaker.About about = new PackMaker.About(
                "slow-wash", Version.of("1.0.0"), "The Mill", "washing takes longer", "CC-BY-4.0", List.of(), false);
        pack = folder.resolve("slow-wash-1.0.0.pack");
        PackFile.write(
                PackMaker.make(Workspace.open(giver), PackMaker.Selection.EVERYTHING, about, List.of())
                        .pack()
                        .signedBy(stranger),
                pack);
    }

    private void openAll() throws Exception {
        shop = DemoShops.copy("millrace-works", own.resolve("shop"));
        open();
    }

    /** The shop without jobs and with a single script. */
    private void openSmall() throws Exception {
        shop = DemoShops.copyWithFewScripts("millrace-works", own.resolve("shop"));
        for (String below : List.of("jobs", "stages")) {
            try (Stream<Path> all = Files.walk(shop.resolve(below))) {
                for (Path path : all.filter(p -> Files.isRegularFile(p) && !p.endsWith("shapes.json"))
                        .toList()) {
                    Files.delete(path);
                }
            }
        }
        Files.writeString(shop.resolve(SMALL), "family 'wash', title: 'Washing'\n");
        open();
    }

    private void open() throws Exception {
        run(() -> {
            desk = new TestDesk(OpenShop.open(shop, CLOCK, around.cache()));
            view = new SitesView(desk, around);
            view.chooseBy(() -> Optional.of(pack), own.resolve("made.pack"));
            desk.listen((before, now) -> view.show(now));
            view.show(desk.state());
        });
    }

    private static List<Object> column(JTable table, int column) {
        return IntStream.range(0, table.getRowCount())
                .mapToObj(row -> table.getValueAt(row, column))
                .toList();
    }

    private String script() throws Exception {
        return Files.readString(shop.resolve(SCRIPT));
    }

    @Test
    void aPackIsTakenWithItsClashDecidedAndTakenBack() throws Exception {
        openAll();
        String before = script();
        run(() -> {
            assertThat(view.shown()).isEqualTo("empty");
            view.choose();
            assertThat(view.shown()).isEqualTo("offer");
            assertThat(view.offer().takeButton().isEnabled()).isFalse();
            assertThat(column(view.offer().clashes().table(), 0)).containsExactly("undecided");
            view.offer().clashes().decide(Clash.Side.THEIRS);
            assertThat(column(view.offer().clashes().table(), 0)).containsExactly("theirs");
            assertThat(column(view.offer().changes(), ChangeRows.NAME)).containsExactly("1 change", "  contact-wash");
            assertThat(view.offer().said()).contains("1.9 / 2.3 / 3.2 min");
            assertThat(view.offer().impact().summary()).doesNotContain("No job moves");
            assertThat(column(view.offer().impact().table(), 3))
                    .isNotEmpty()
                    .allMatch(said -> said.toString().startsWith("+"));
            assertThat(view.offer().impact().details()).contains("stage contact-wash");
            assertThat(view.offer().takeButton().isEnabled()).isTrue();

            view.offer().changes().setValueAt(false, 1, ChangeRows.WANTED);
            assertThat(column(view.offer().changes(), ChangeRows.WANTED)).containsExactly(false, false);
            assertThat(view.offer().verdict()).startsWith("Nothing changes here");
            view.offer().changes().setValueAt(true, 0, ChangeRows.WANTED);
            assertThat(view.offer().verdict()).startsWith("1 declaration changes");

            view.offer().take();
            assertThat(desk.notices).last().extracting(Notice::weight).isEqualTo(Notice.Weight.WARN);
            assertThat(Taking.lockOf(shop).packs())
                    .as("nobody has answered for it")
                    .isEmpty();
            view.offer().answer("Ines", "read every script");
            view.offer().take();
        });
        assertThat(script()).contains(THEIRS);
        run(() -> {
            assertThat(desk.rereads).isEqualTo(1);
            assertThat(desk.state().shop().orElseThrow().texts().get(SCRIPT)).contains(THEIRS);
            assertThat(view.shown()).isEqualTo("packs");
            assertThat(column(view.packs().table(), 0)).containsExactly("slow-wash");
            assertThat(column(view.packs().table(), 2)).containsExactly("taken on the word of Ines: read every script");
            assertThat(column(view.packs().table(), 4)).containsExactly("as it came");
            view.takeBack();
            assertThat(view.shown()).isEqualTo("empty");
        });
        assertThat(script()).isEqualTo(before);
    }

    /** A small pack of another site that brings a rule, two stages and an item, and needs a pack. */
    private Path smallPack(String version) throws Exception {
        Path giver = DemoShops.copyWithoutJobs("millrace-works", own.resolve("giver-" + version));
        Files.writeString(
                giver.resolve("stages/house.groovy"),
                Stream.of("brush", "wipe")
                        .map(id -> "stage('" + id + "') {\n    title 'The " + id
                                + "'\n    family 'outgoing'\n    revision 1\n    worksOn 'paint'\n"
                                + "    time { attended 4.min, 5.min, 9.min }\n    checks { confirm 'As agreed' }\n"
                                + "    example 'an estate', on: 'estate', attended: 5.5.min..5.5.min\n}\n")
                        .collect(Collectors.joining("\n")));
        Path items = giver.resolve("items.json");
        Files.writeString(
                items,
                Files.readString(items)
                        .replaceFirst(
                                "\"items\": \\[",
                                "\"items\": [\n    {\"id\": \"house-brush\", \"title\": \"House brush\", \"pack\": \"1 each\","
                                        + " \"price\": 4},"));
        PackMaker.About about = new PackMaker.About(
                "house", Version.of(version), "The Mill", "small things", "CC-BY-4.0", List.of(), false);
        Path made = own.resolve("house-" + version + ".pack");
        PackMaker.Made house = PackMaker.make(Workspace.open(giver), PackMaker.Selection.EVERYTHING, about, List.of());
        assertThat(house.errors()).isEmpty();
        PackFile.write(house.pack(), made);
        return made;
    }

    @Test
    void changesStandUnderTheirKindAndTheBoxOfAKindIsForAllOfIt() throws Exception {
        shop = DemoShops.copyWithoutJobs("millrace-works", own.resolve("shop"));
        open();
        Path house = smallPack("1.0.0");
        run(() -> {
            view.chooseBy(() -> Optional.of(house), own.resolve("made.pack"));
            view.choose();
            JTable changes = view.offer().changes();
            assertThat(column(changes, ChangeRows.KIND)).containsExactly("Stages", "new", "new", "Items", "new");
            assertThat(column(changes, ChangeRows.NAME))
                    .containsExactly("2 changes", "  brush", "  wipe", "1 change", "  house-brush");
            changes.setRowSelectionInterval(0, 0);
            assertThat(view.offer().said()).isEqualTo("stage brush\nstage wipe");
            changes.setValueAt(false, 0, ChangeRows.WANTED);
            assertThat(column(changes, ChangeRows.WANTED)).containsExactly(false, false, false, true, true);
            changes.setValueAt(true, 2, ChangeRows.WANTED);
            assertThat(column(changes, ChangeRows.WANTED)).containsExactly(true, false, true, true, true);
            changes.setValueAt(false, 4, ChangeRows.WANTED);
            view.offer().answer("Ines", "read every script");
            view.offer().take();
        });
        assertThat(Files.readString(shop.resolve("stages/house.groovy")))
                .contains("stage('wipe')")
                .doesNotContain("stage('brush')");
        assertThat(Files.readString(shop.resolve("items.json"))).doesNotContain("house-brush");
        assertThat(Taking.lockOf(shop).packs().get(0).leftOut()).contains("stage brush");
    }

    @Test
    void aClashIsDecidedByKeyLeftOpenAgainAndTakenBack() throws Exception {
        openAll();
        run(() -> {
            view.choose();
            ClashPart clashes = view.offer().clashes();
            press(clashes.table(), KeyStroke.getKeyStroke('t'));
            assertThat(column(clashes.table(), 0)).containsExactly("theirs");
            press(clashes.table(), KeyStroke.getKeyStroke('o'));
            assertThat(column(clashes.table(), 0)).containsExactly("ours");
            press(clashes.table(), KeyStroke.getKeyStroke("DELETE"));
            assertThat(column(clashes.table(), 0)).containsExactly("undecided");
            assertThat(view.offer().takeButton().isEnabled()).isFalse();
            press(clashes.table(), KeyStroke.getKeyStroke("BACK_SPACE"));
            assertThat(column(clashes.table(), 0)).containsExactly("ours");
            press(clashes.table(), KeyStroke.getKeyStroke("BACK_SPACE"));
            assertThat(column(clashes.table(), 0)).containsExactly("theirs");
        });
    }

    private static void press(JTable table, KeyStroke key) {
        Object name =
                table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(key);
        table.getActionMap().get(name).actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, ""));
    }

    @Test
    void anExampleThatNoLongerHoldsIsTold() throws Exception {
        openAll();
        Files.writeString(shop.resolve(SCRIPT), script().replace(OURS, "attended 9.min, 9.min, 9.min"));
        open();
        run(() -> {
            view.choose();
            view.offer().clashes().decide(Clash.Side.THEIRS);
            assertThat(view.offer().verdict()).contains("No longer true afterwards: wash/contact-wash.groovy");
            assertThat(view.offer().takeButton().isEnabled()).isTrue();
        });
    }

    @Test
    void aDamagedPackIsRefusedInOneSentenceAndNothingIsWritten() throws Exception {
        openSmall();
        byte[] bytes = Files.readAllBytes(pack);
        bytes[bytes.length / 2] ^= 1;
        Path damaged = Files.write(own.resolve("damaged.pack"), bytes);
        run(() -> {
            view.chooseBy(() -> Optional.of(damaged), own.resolve("made.pack"));
            view.choose();
            assertThat(desk.notices).singleElement().satisfies(notice -> {
                assertThat(notice.weight()).isEqualTo(Notice.Weight.FAILED);
                assertThat(notice.text()).contains("damaged.pack").doesNotContain("\n");
            });
            assertThat(view.shown()).isEqualTo("empty");
        });
        assertThat(shop.resolve("packs")).doesNotExist();
    }

    @Test
    void keysAreMadeTrustedWithdrawnAndSignAPack() throws Exception {
        openSmall();
        run(() -> {
            assertThat(view.trust().keys()).isEqualTo("There is no key yet.");
            view.making().fill("house", "1.x", "for all");
            view.making().make();
            assertThat(desk.notices).last().extracting(Notice::text).asString().contains("Semantic Versioning");
            view.trust().makeKey();
            assertThat(view.trust().keys()).startsWith("millrace-works: ");

            view.trust().fill("The Mill", stranger.signer().toString(), "Ines");
            view.trust().trust();
            assertThat(TrustList.of(shop).all())
                    .extracting(TrustList.Trusted::name)
                    .containsExactly("The Mill");
            assertThat(column(view.trust().table(), 1))
                    .containsExactly(stranger.signer().fingerprint());
            view.trust().table().setRowSelectionInterval(0, 0);
            view.trust().withdraw();
            assertThat(TrustList.of(shop).all()).isEmpty();

            view.making().fill("house", "1.2.0", "for all");
            view.making().make();
            assertThat(view.making().found()).contains("SHA-256");
        });
        assertThat(PackFile.read(own.resolve("made.pack"))
                        .signature()
                        .orElseThrow()
                        .signer())
                .isEqualTo(around.keys().read("millrace-works").signer());
    }

    @Test
    void everythingHasANameAndEditsAreSavedFirst() throws Exception {
        openSmall();
        run(() -> {
            desk.change("an edit", s -> s.withText(SMALL, s.texts().get(SMALL) + "\n"));
            view.choose();
            assertThat(desk.notices).singleElement().satisfies(notice -> {
                assertThat(notice.text()).contains("save everything first");
                notice.more().orElseThrow().does().accept(desk);
            });
            assertThat(desk.saves).isEqualTo(1);
            assertThat(view.shown()).isEqualTo("empty");
            assertThat(view.actions()).extracting(SuiteAction::id).contains("sites-take", "sites-take-back");
            List<String> nameless = everything(view.component())
                    .filter(c -> c instanceof JTable
                            || c instanceof JTextComponent text && text.isFocusable()
                            || c instanceof JComboBox
                            || c instanceof AbstractButton)
                    .filter(c -> c.getAccessibleContext().getAccessibleName() == null
                            || c.getAccessibleContext().getAccessibleName().isBlank())
                    .filter(c -> !(c.getParent() instanceof javax.swing.JScrollBar))
                    .map(Component::toString)
                    .toList();
            assertThat(nameless).isEmpty();
        });
    }
}
