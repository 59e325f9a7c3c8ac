package baywright.swing.plan;

import baywright.plan.Explanation;
import baywright.plan.Plan;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.parts.TonedLabel;
import baywright.vehicle.Zone;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** The states of a chosen zone along the plan, worked out only while in sight. */
final class StatesPart extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final JComboBox<Zone> zones = new JComboBox<>();
    private final StateTable table = new StateTable();
    private transient Optional<WorkedJob> worked = Optional.empty();
    private transient Optional<WorkedJob> explained = Optional.empty();
    private transient Optional<Explanation> explanation = Optional.empty();
    private transient Optional<TaskHandle> running = Optional.empty();
    private boolean filling;

    /** {@code chosen} gets the id of the step whose column is chosen. */
    StatesPart(Desk desk, Consumer<String> chosen) {
        super(new MigLayout("insets 8, gap 8, wrap 1", "[grow, fill]", "[][grow, fill]"));
        this.desk = desk;
        JPanel top = new JPanel(new MigLayout("insets 0, gap 8", "[][]unrel[grow, fill]"));
        JLabel of = new JLabel(Words.of("states.of"));
        of.setLabelFor(zones);
        zones.setRenderer(new ZoneCell());
        zones.addActionListener(e -> {
            if (!filling) {
                fill();
            }
        });
        top.add(of);
        top.add(zones, "wmax 190");
        top.add(new TonedLabel(Words.of("states.legend"), "faint", "small"), "wmin 0");
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(0, 0));
        scroll.setRowHeaderView(table.names());
        add(top);
        add(scroll, "hmin 0, wmin 0");
        table.getColumnModel().getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                table.chosenStep().ifPresent(chosen);
            }
        });
    }

    /** Takes over a newer result; works out the states only while in sight. */
    void show(Optional<WorkedJob> now) {
        worked = now;
        List<Zone> all = now.map(w -> w.setting().shape().zones()).orElse(List.of());
        if (!all.equals(offered())) {
            filling = true;
            Optional<String> before = zone();
            zones.setModel(new DefaultComboBoxModel<>(all.toArray(new Zone[0])));
            before.ifPresent(this::choose);
            filling = false;
        }
        refresh();
    }

    private List<Zone> offered() {
        return java.util.stream.IntStream.range(0, zones.getItemCount())
                .mapToObj(zones::getItemAt)
                .toList();
    }

    private Optional<String> zone() {
        return Optional.ofNullable((Zone) zones.getSelectedItem()).map(Zone::id);
    }

    /** Chooses a zone; an unknown one is ignored. */
    void choose(String id) {
        offered().stream().filter(z -> z.id().equals(id)).findFirst().ifPresent(zones::setSelectedItem);
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (desk != null) {
            refresh();
        }
    }

    @SuppressWarnings("ReferenceEquality") // each working out is another one, and comparing whole ones would take long
    private void refresh() {
        boolean newer = worked.isPresent() && (explained.isEmpty() || explained.get() != worked.get());
        if (!isVisible() || !newer) {
            if (worked.isEmpty()) {
                explanation = Optional.empty();
                explained = Optional.empty();
                fill();
            }
            return;
        }
        running.ifPresent(TaskHandle::cancel);
        WorkedJob of = worked.get();
        explained = worked;
        running = Optional.of(desk.run(new Task<>(
                Words.of("states.task"),
                progress -> Explanation.of(of.setting(), of.job().plan()),
                done -> {
                    explanation = Optional.of(done);
                    fill();
                },
                fault -> desk.say(Notice.failed(Words.of("states.failed", String.valueOf(fault.getMessage())))))));
    }

    private void fill() {
        Plan plan = explained.map(w -> w.job().plan()).orElse(new Plan(List.of()));
        table.show(explanation.flatMap(e -> zone().flatMap(e::zone)), plan);
    }

    StateTable table() {
        return table;
    }

    private static final class ZoneCell extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            putClientProperty("html.disable", true);
            return super.getListCellRendererComponent(
                    list, value instanceof Zone zone ? zone.title() : "", index, chosen, focus);
        }
    }
}
