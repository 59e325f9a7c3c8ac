package baywright.swing.safety;

import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.safety.SafetyCodes;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Measured light of the bays, and the steps that want more. */
final class LightPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final FoundList found;

    LightPanel(Desk desk) {
        super(new MigLayout("insets 0, wrap 1", "[grow, fill]"));
        setOpaque(false);
        found = new FoundList(desk, Words.of("light.fits"));
        add(found, "wmin 0");
    }

    void show(WorkedJob worked, SafetyWords words) {
        Map<String, Double> measured = worked.safe().settings().light().bays();
        List<String> lines = new ArrayList<>();
        for (Bay bay : worked.setting().bays()) {
            Double lux = measured.get(bay.id());
            lines.add(
                    lux == null
                            ? Words.of("light.unmeasured", bay.title())
                            : Words.of("light.measured", bay.title(), words.number(lux, 0)));
        }
        lines.add(Words.of("light.where"));
        List<Finding> findings = worked.safety().findings().stream()
                .filter(f -> f.code().equals(SafetyCodes.LIGHT))
                .toList();
        found.show(findings, words, lines);
    }

    FoundList found() {
        return found;
    }
}
