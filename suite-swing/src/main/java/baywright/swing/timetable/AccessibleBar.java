package baywright.swing.timetable;

import baywright.swing.timetable.ChartRow.Bar;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One bar as the reader of the screen meets it. */
final class AccessibleBar extends AccessibleContext implements Accessible, AccessibleComponent {

    private final TimeChart chart;
    private final Bar bar;

    AccessibleBar(TimeChart chart, Bar bar) {
        this.chart = chart;
        this.bar = bar;
        setAccessibleParent(chart);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public String getAccessibleName() {
        return chart.picture().map(p -> p.says().apply(bar.entry())).orElse("");
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LIST_ITEM;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.ENABLED);
        states.add(AccessibleState.FOCUSABLE);
        states.add(AccessibleState.SELECTABLE);
        states.add(AccessibleState.VISIBLE);
        states.add(AccessibleState.SHOWING);
        if (chart.isChosen(bar)) {
            states.add(AccessibleState.SELECTED);
            if (chart.isFocusOwner()) {
                states.add(AccessibleState.FOCUSED);
            }
        }
        return states;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return chart.indexOf(bar);
    }

    @Override
    public int getAccessibleChildrenCount() {
        return 0;
    }

    @Override
    public Accessible getAccessibleChild(int index) {
        return null;
    }

    @Override
    public Locale getLocale() {
        return chart.getLocale();
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
    }

    @Override
    public Color getBackground() {
        return chart.getBackground();
    }

    @Override
    public void setBackground(Color colour) {}

    @Override
    public Color getForeground() {
        return chart.getForeground();
    }

    @Override
    public void setForeground(Color colour) {}

    @Override
    public Cursor getCursor() {
        return chart.getCursor();
    }

    @Override
    public void setCursor(Cursor cursor) {}

    @Override
    public Font getFont() {
        return chart.getFont();
    }

    @Override
    public void setFont(Font font) {}

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return chart.getFontMetrics(font);
    }

    @Override
    public boolean isEnabled() {
        return true;
    }

    @Override
    public void setEnabled(boolean enabled) {}

    @Override
    public boolean isVisible() {
        return true;
    }

    @Override
    public void setVisible(boolean visible) {}

    @Override
    public boolean isShowing() {
        return chart.isShowing();
    }

    @Override
    public boolean contains(Point point) {
        return new Rectangle(getSize()).contains(point);
    }

    @Override
    public Point getLocationOnScreen() {
        if (!chart.isShowing()) {
            return null;
        }
        Point at = chart.getLocationOnScreen();
        Point in = getLocation();
        at.translate(in.x, in.y);
        return at;
    }

    @Override
    public Point getLocation() {
        return getBounds().getLocation();
    }

    @Override
    public void setLocation(Point at) {}

    @Override
    public Rectangle getBounds() {
        return chart.boxOf(bar);
    }

    @Override
    public void setBounds(Rectangle bounds) {}

    @Override
    public Dimension getSize() {
        return getBounds().getSize();
    }

    @Override
    public void setSize(Dimension size) {}

    @Override
    public Accessible getAccessibleAt(Point point) {
        return null;
    }

    @Override
    public boolean isFocusTraversable() {
        return true;
    }

    @Override
    public void requestFocus() {
        chart.requestFocusInWindow();
        chart.choose(bar.entry());
    }

    @Override
    public void addFocusListener(FocusListener listener) {}

    @Override
    public void removeFocusListener(FocusListener listener) {}
}
