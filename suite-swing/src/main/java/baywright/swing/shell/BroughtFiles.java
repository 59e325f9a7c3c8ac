package baywright.swing.shell;

import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.DocumentMaker;
import baywright.swing.api.Importer;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Task;
import baywright.swing.api.Texts;
import baywright.swing.plugins.LoadedJar;
import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** The importers and documents that plug-ins bring, as actions: each asks for a file and works in the background. */
final class BroughtFiles {

    private static final Texts TEXTS = Texts.beside(BroughtFiles.class, "texts");

    /** Asks the user for a file. */
    interface Chooser {

        /**
         * Asks and waits.
         *
         * @param endings how such files end, without the dot; perhaps none
         * @return empty when the user wants none
         */
        Optional<Path> choose(String title, List<String> endings, boolean toSave);
    }

    private final PluginHost host;
    private final Chooser chooser;

    BroughtFiles(PluginHost host, Chooser chooser) {
        this.host = host;
        this.chooser = chooser;
    }

    /** Asks by the system's usual dialog. */
    static Optional<Path> ask(Component over, String title, List<String> endings, boolean toSave) {
        JFileChooser dialog = new JFileChooser();
        dialog.setDialogTitle(title);
        if (!endings.isEmpty()) {
            dialog.setFileFilter(
                    new FileNameExtensionFilter(String.join(", ", endings), endings.toArray(String[]::new)));
        }
        int answer = toSave ? dialog.showSaveDialog(over) : dialog.showOpenDialog(over);
        return answer == JFileChooser.APPROVE_OPTION
                ? Optional.of(dialog.getSelectedFile().toPath())
                : Optional.empty();
    }

    List<SuiteAction> actions() {
        return Stream.concat(
                        host.importers().stream().map(this::bringIn),
                        host.makers().stream().map(this::make))
                .toList();
    }

    private SuiteAction bringIn(Importer importer) {
        String title = TEXTS.of("brought.in", importer.title());
        return SuiteAction.of(
                        "bring-in-" + importer.id(),
                        title,
                        desk -> chooser.choose(title, importer.extensions(), false)
                                .ifPresent(file -> bringIn(importer, file, desk)))
                .when(state -> state.shop().isPresent());
    }

    private void bringIn(Importer importer, Path file, Desk desk) {
        DeskState asked = desk.state();
        desk.run(new Task<Change>(
                TEXTS.of("brought.reading", file),
                progress -> importer.read(file, asked),
                desk::change,
                fault -> desk.say(Notice.failed(TEXTS.of("brought.unread", file, LoadedJar.reason(fault))))));
    }

    private SuiteAction make(DocumentMaker maker) {
        String title = TEXTS.of("brought.make", maker.title());
        return SuiteAction.of(
                        "make-" + maker.id(),
                        title,
                        desk -> chooser.choose(title, List.of(maker.extension()), true)
                                .ifPresent(file -> make(maker, file, desk)))
                .when(state -> state.worked().filter(maker::canMake).isPresent());
    }

    private void make(DocumentMaker maker, Path file, Desk desk) {
        desk.state()
                .worked()
                .ifPresent(worked -> desk.run(new Task<Path>(
                        TEXTS.of("brought.writing", file),
                        progress -> {
                            maker.write(worked, desk.readout().locale(), file);
                            return file;
                        },
                        written -> desk.say(Notice.done(TEXTS.of("brought.written", file))),
                        fault -> desk.say(
                                Notice.failed(TEXTS.of("brought.unwritten", file, LoadedJar.reason(fault)))))));
    }
}
