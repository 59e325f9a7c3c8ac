package baywright.swing.shell;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.api.ApiVersion;
import baywright.swing.api.Change;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Importer;
import baywright.swing.api.Notice;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.Remark;
import baywright.swing.api.SettingsPage;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import baywright.swing.plugins.Jars;
import baywright.workspace.Job;
import baywright.workspace.JobEdit;
import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GuestPluginsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Path shop;
    private Path user;
    private final PluginHost host = new PluginHost();
    private final List<Notice> notices = new ArrayList<>();
    private final List<Throwable> faults = new ArrayList<>();
    private ShopDesk desk;
    private GuestPlugins guests;

    @BeforeEach
    void openTheVans() throws Exception {
        Screen.needed();
        Look.LIGHT.apply();
        shop = DemoShops.copy("millrace-works", folder.resolve("shop"));
        user = Files.createDirectory(folder.resolve("user"));
        Files.createDirectory(shop.resolve("plugins"));
        UserSettings settings = UserSettings.inMemory();
        desk = new ShopDesk(
                DemoShops.SCRIPTS, settings, new UserReadout(settings, Locale.UK), host::rules, faults::add);
        host.give(desk);
        guests = new GuestPlugins(desk, host, Optional.of(user), Duration.ofSeconds(20));
        OpenShop open = OpenShop.open(shop, CLOCK, DemoShops.SCRIPTS);
        run(() -> {
            desk.show(new Told(notices));
            desk.open(open, Optional.of("bramblegate-vans"));
        });
        host.start(guests.page());
    }

    @AfterEach
    void noFault() {
        desk.stop();
        assertThat(faults).isEmpty();
    }

    @Test
    void theExampleOfTheDemoRunsAfterAYesAndRemarksOnTheVans() throws Exception {
        Jars.ofFolder(Path.of("..", "demo", "example-plugin", "src"), shop.resolve("plugins/roof-work.jar"));
        run(() -> guests.look(Optional.of(shop)));
        until(() -> !notices.isEmpty());
        assertThat(notices).singleElement().extracting(Notice::text).asString().contains("came with the workspace");
        assertThat(host.rules()).isEmpty();

        JComponent page = on(() -> settingsPage().open(desk));
        JCheckBox yes = boxes(page).findFirst().orElseThrow();
        assertThat(yes.getAccessibleContext().getAccessibleName()).isEqualTo("roof-work.jar may run");
        run(yes::doClick);
        until(() -> boxes(page).anyMatch(JCheckBox::isSelected) && !host.rules().isEmpty());
        run(desk::prove);
        until(() -> !desk.state().working());

        assertThat(on(desk::state).remarks())
                .isNotEmpty()
                .extracting(Remark::rule)
                .containsOnly("roof-work");
        SuiteAction count = host.actions().stream()
                .filter(action -> action.id().equals("roof-work-count"))
                .findFirst()
                .orElseThrow();
        run(() -> count.does().accept(desk));
        assertThat(notices.get(notices.size() - 1).text()).endsWith("steps of this plan work on the roof.");
        Path table = folder.resolve("zones.csv");
        SuiteAction make = files(table).actions().get(0);
        assertThat(make.title()).isEqualTo("Hand out: Table of zones…");
        assertThat(make.enabled().test(on(desk::state))).isTrue();
        run(() -> make.does().accept(desk));
        until(() -> notices.stream().anyMatch(n -> n.text().endsWith("zones.csv is written.")));
        assertThat(table).content().startsWith("zone,title,surface\r\n").contains("roof,");

        JCheckBox off = boxes(page).findFirst().orElseThrow();
        run(off::doClick);
        until(() -> boxes(page).noneMatch(JCheckBox::isSelected) && host.rules().isEmpty());
        assertThat(host.makers()).isEmpty();
    }

    @Test
    void oneForANewerDoorIsNamedAndTheOtherRuns() throws Exception {
        Jars.ofClass(
                user,
                "Ahead",
                "public PluginInfo info() { return new PluginInfo(\"ahead\", \"Ahead of time\", \"1\", new ApiVersion(1, 99)); }"
                        + "public void start(PluginContext suite) {}");
        Jars.ofClass(
                user,
                "Good",
                Jars.info("good")
                        + "public void start(PluginContext suite) { suite.add(SuiteAction.of(\"good\", \"Good\", d -> {})); }");
        run(() -> guests.look(Optional.empty()));
        until(() -> !host.actions().isEmpty() && !notices.isEmpty());
        assertThat(notices).singleElement().extracting(Notice::text).asString().contains("Ahead of time", "1.99");
    }

    private BroughtFiles files(Path chosen) {
        return new BroughtFiles(host, (title, endings, toSave) -> Optional.of(chosen));
    }

    @Test
    void aFileIsBroughtInAsOneEditAndABadOneIsTold() throws Exception {
        host.start(new Bringing());
        Path good = Files.writeString(folder.resolve("title.txt"), "Vans, spring");
        SuiteAction action = files(good).actions().get(0);
        assertThat(action.title()).isEqualTo("Bring in: Titles…");
        run(() -> action.does().accept(desk));
        until(() -> title().equals("Vans, spring"));
        run(desk::undo);
        assertThat(on(this::title)).isEqualTo("Six delivery vans, fortnightly visit");

        Path gone = folder.resolve("gone.txt");
        run(() -> files(gone).actions().get(0).does().accept(desk));
        until(() -> !notices.isEmpty());
        assertThat(notices).singleElement().extracting(Notice::weight).isEqualTo(Notice.Weight.FAILED);
        assertThat(notices.get(0).text()).contains("gone.txt cannot be brought in");
        assertThat(on(this::title)).isEqualTo("Six delivery vans, fortnightly visit");
    }

    private String title() {
        return desk.state().job().orElseThrow().title();
    }

    /** Brings in a title for the chosen job. */
    private static final class Bringing implements SuitePlugin {
        @Override
        public PluginInfo info() {
            return new PluginInfo("bringing", "Bringing", "1", ApiVersion.CURRENT);
        }

        @Override
        public void start(PluginContext suite) {
            suite.add(new Importer() {
                @Override
                public String id() {
                    return "titles";
                }

                @Override
                public String title() {
                    return "Titles";
                }

                @Override
                public List<String> extensions() {
                    return List.of("txt");
                }

                @Override
                public Change read(Path file, DeskState state) throws IOException {
                    String title = Files.readString(file);
                    Job job = state.job().orElseThrow();
                    return new Change(
                            "Name the job",
                            "",
                            shop -> shop.withJob(JobEdit.of(job).title(title).job()));
                }
            });
        }
    }

    private SettingsPage settingsPage() {
        return host.pages().stream()
                .filter(page -> page.id().equals("plug-ins"))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<JCheckBox> boxes(Component in) {
        Stream<JCheckBox> here = in instanceof JCheckBox box ? Stream.of(box) : Stream.empty();
        Stream<JCheckBox> below = in instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(GuestPluginsTest::boxes)
                : Stream.empty();
        return Stream.concat(here, below);
    }

    /** Keeps what the user would read. */
    private record Told(List<Notice> notices) implements Front {
        @Override
        public void go(Destination place) {}

        @Override
        public void say(Notice notice) {
            notices.add(notice);
        }

        @Override
        public void show(List<RunningTask> tasks) {}

        @Override
        public void again() {}
    }
}
