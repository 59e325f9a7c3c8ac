package baywright.swing.safety;

import baywright.safety.HazardSheet;
import baywright.safety.Signal;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.HazardSigns;
import baywright.swing.parts.Prose;
import baywright.swing.parts.TrailLine;
import baywright.swing.parts.TrailPopup;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Products that carry a hazard, each with its label elements, what to wear and what to do after a mishap. */
final class ProductsPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int SIGN = 40;

    private final transient Desk desk;
    private transient HazardSheet shown;

    ProductsPanel(Desk desk) {
        super(new MigLayout("insets 0, wrap 1, gap 0 4", "[grow, fill]"));
        this.desk = desk;
        setOpaque(false);
    }

    /** Shows the products of a sheet; the same ones again do nothing. */
    void show(HazardSheet sheet, SafetyWords words) {
        if (shown != null
                && sheet.products().equals(shown.products())
                && sheet.bayDays().equals(shown.bayDays())) {
            return;
        }
        shown = sheet;
        removeAll();
        if (sheet.products().isEmpty()) {
            JPanel none = new JPanel(new MigLayout("insets 0", "[][grow, fill]"));
            none.setOpaque(false);
            none.add(new JLabel(new FineSign()));
            none.add(new Prose(Words.of("products.none")), "wmin 0");
            add(none, "wmin 0");
        }
        sheet.products().forEach(product -> add(card(sheet, product, words), "wmin 0, gapbottom 14"));
        revalidate();
        repaint();
    }

    private JPanel card(HazardSheet sheet, HazardSheet.Product product, SafetyWords words) {
        JPanel card = new JPanel(new MigLayout("insets 0, gap 10 3", "[grow, fill][]", "[]"));
        card.setOpaque(false);
        JLabel title = new JLabel();
        title.putClientProperty("html.disable", true);
        title.putClientProperty("FlatLaf.styleClass", "h3");
        title.setText(product.title());
        card.add(title, "wmin 0");
        JButton used = new JButton(Words.of("product.used"));
        used.putClientProperty("JButton.buttonType", "borderless");
        used.getAccessibleContext().setAccessibleName(Words.of("product.used.of", product.title()));
        used.addActionListener(e -> TrailPopup.show(
                used, Words.of("product.used.of", product.title()), uses(sheet, product, words), desk::go));
        card.add(used, "wrap");
        label(card, sheet, product);
        product.statements().forEach(statement -> card.add(new Prose(statement), "span, wmin 0"));
        block(
                card,
                "product.wear",
                product.protection().isEmpty() ? List.of() : List.of(String.join(", ", product.protection())));
        block(card, "product.first-aid", product.firstAid());
        block(card, "product.spill", product.spill());
        if (!product.thinned().isEmpty()) {
            card.add(new Prose(Words.of("product.thinned", product.thinned())), "span, wmin 0");
        }
        if (!product.note().isEmpty()) {
            card.add(new Prose(Words.of("product.note", product.note())), "span, wmin 0");
        }
        return card;
    }

    private static void label(JPanel card, HazardSheet sheet, HazardSheet.Product product) {
        if (!product.label().pictograms().isEmpty()) {
            HazardSigns signs = new HazardSigns(product.label().pictograms(), SIGN);
            JLabel pictures = new JLabel(signs);
            pictures.setToolTipText(Words.capital(signs.words()));
            pictures.getAccessibleContext().setAccessibleName(signs.words());
            card.add(pictures, "growx 0, span, split 2");
            JPanel named = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 0", "[grow, fill]"));
            named.setOpaque(false);
            signal(named, sheet, product);
            named.add(new Prose(Words.capital(signs.words())), "wmin 0");
            card.add(named, "growx, wmin 0, wrap");
        } else {
            JPanel named = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 0", "[grow, fill]"));
            named.setOpaque(false);
            signal(named, sheet, product);
            card.add(named, "span, wmin 0, hidemode 3");
        }
    }

    private static void signal(JPanel named, HazardSheet sheet, HazardSheet.Product product) {
        Signal signal = product.label().signal();
        if (signal != Signal.NONE) {
            JLabel word = new JLabel(signal.word(sheet.locale()));
            word.putClientProperty("FlatLaf.styleClass", "h4");
            named.add(word, "wmin 0");
        }
    }

    private static void block(JPanel card, String key, List<String> lines) {
        if (!lines.isEmpty()) {
            JLabel heading = new JLabel(Words.of(key));
            heading.putClientProperty("FlatLaf.styleClass", "h4");
            card.add(heading, "span, gaptop 4, wmin 0");
            lines.forEach(line -> card.add(new Prose(line), "span, wmin 0"));
        }
    }

    private static List<TrailLine> uses(HazardSheet sheet, HazardSheet.Product product, SafetyWords words) {
        List<TrailLine> lines = new ArrayList<>();
        sheet.bayDays()
                .forEach(day -> day.tasks().stream()
                        .filter(task -> task.items().contains(product.title()))
                        .map(task -> TrailLine.of(
                                Words.of("product.use", words.day(day.day()), words.step(task.step())),
                                Destination.step(task.step())))
                        .forEach(lines::add));
        return lines;
    }

    /** Titles of the products in sight. */
    List<String> titles() {
        return shown == null
                ? List.of()
                : shown.products().stream().map(HazardSheet.Product::title).toList();
    }

    /** The sheet in sight. */
    HazardSheet shown() {
        return shown;
    }
}
