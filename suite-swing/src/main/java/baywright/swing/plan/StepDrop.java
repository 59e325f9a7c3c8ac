package baywright.swing.plan;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.TransferHandler;

/** Steps dragged within the plan, and stages dragged into it. Only what this window drags is taken. */
final class StepDrop extends TransferHandler {

    private static final long serialVersionUID = 1L;

    private static final String STEPS = "baywright-steps:";
    private static final String STAGE = "baywright-stage:";

    private final transient StepTable table;
    private final transient BiConsumer<List<String>, Integer> move;
    private final transient BiConsumer<String, Integer> add;

    /**
     * For a table of steps.
     *
     * @param move steps and the place before which they are dropped
     * @param add  a stage and the place at which it is dropped
     */
    StepDrop(StepTable table, BiConsumer<List<String>, Integer> move, BiConsumer<String, Integer> add) {
        this.table = table;
        this.move = move;
        this.add = add;
    }

    /** What a stage is dragged as. */
    static Transferable stage(String id) {
        return new StringSelection(STAGE + id);
    }

    @Override
    public int getSourceActions(JComponent from) {
        return MOVE;
    }

    @Override
    protected Transferable createTransferable(JComponent from) {
        return new StringSelection(STEPS + String.join("\n", table.chosen()));
    }

    @Override
    public boolean canImport(TransferSupport support) {
        if (!support.isDataFlavorSupported(DataFlavor.stringFlavor)) {
            return false;
        }
        support.setShowDropLocation(true);
        return true;
    }

    @Override
    public boolean importData(TransferSupport support) {
        int place = support.isDrop() && support.getDropLocation() instanceof JTable.DropLocation at
                ? at.getRow()
                : table.getRowCount();
        Optional<String> text = text(support.getTransferable());
        if (text.filter(t -> t.startsWith(STEPS)).isPresent()) {
            move.accept(List.of(text.get().substring(STEPS.length()).split("\n", -1)), place);
            return true;
        }
        if (text.filter(t -> t.startsWith(STAGE)).isPresent()) {
            add.accept(text.get().substring(STAGE.length()), place);
            return true;
        }
        return false;
    }

    private static Optional<String> text(Transferable dragged) {
        try {
            return Optional.of((String) dragged.getTransferData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException e) {
            return Optional.empty();
        }
    }
}
