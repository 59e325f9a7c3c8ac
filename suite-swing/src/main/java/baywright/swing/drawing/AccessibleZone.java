package baywright.swing.drawing;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One zone as the reader of the screen meets it. */
final class AccessibleZone extends AccessibleContext implements Accessible, AccessibleComponent, AccessibleAction {

    private final VehicleView view;
    private final String zone;

    AccessibleZone(VehicleView view, String zone) {
        this.view = view;
        this.zone = zone;
        setAccessibleParent(view);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public String getAccessibleName() {
        return view.vehicle().zone(zone).orElseThrow().title();
    }

    @Override
    public String getAccessibleDescription() {
        return view.look(zone).says();
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
        states.add(AccessibleState.SHOWING);
        states.add(AccessibleState.VISIBLE);
        if (view.isChosen(zone)) {
            states.add(AccessibleState.SELECTED);
        }
        if (view.isFocused(zone)) {
            states.add(AccessibleState.FOCUSED);
        }
        return states;
    }

    @Override
    public int getAccessibleIndexInParent() {
        for (int i = 0; i < view.vehicle().zones().size(); i++) {
            if (view.vehicle().zones().get(i).id().equals(zone)) {
                return i;
            }
        }
        return -1;
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
        return view.getLocale();
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
    }

    @Override
    public AccessibleAction getAccessibleAction() {
        return this;
    }

    // the one action: choose it

    @Override
    public int getAccessibleActionCount() {
        return 1;
    }

    @Override
    public String getAccessibleActionDescription(int index) {
        return index == 0 ? AccessibleAction.CLICK : null;
    }

    @Override
    public boolean doAccessibleAction(int index) {
        if (index != 0) {
            return false;
        }
        view.pick(zone, false);
        return true;
    }

    // where it lies; colours and fonts are those of the whole

    @Override
    public Rectangle getBounds() {
        return view.drawing()
                .area(zone)
                .map(area -> view.place().createTransformedShape(area.shape()).getBounds())
                .orElseGet(Rectangle::new);
    }

    @Override
    public Point getLocation() {
        return getBounds().getLocation();
    }

    @Override
    public Point getLocationOnScreen() {
        if (!view.isShowing()) {
            return null;
        }
        Point point = view.getLocationOnScreen();
        point.translate(getBounds().x, getBounds().y);
        return point;
    }

    @Override
    public Dimension getSize() {
        return getBounds().getSize();
    }

    @Override
    public boolean contains(Point point) {
        Point moved = new Point(point);
        moved.translate(getBounds().x, getBounds().y);
        return view.at(moved).equals(Optional.of(zone));
    }

    @Override
    public Accessible getAccessibleAt(Point point) {
        return null;
    }

    @Override
    public void requestFocus() {
        view.requestFocusInWindow();
        view.focusOn(Optional.of(zone));
    }

    @Override
    public boolean isFocusTraversable() {
        return true;
    }

    @Override
    public Color getBackground() {
        return view.look(zone).fill();
    }

    @Override
    public Color getForeground() {
        return Ink.on(view.look(zone).fill());
    }

    @Override
    public Cursor getCursor() {
        return view.getCursor();
    }

    @Override
    public Font getFont() {
        return view.getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return view.getFontMetrics(font);
    }

    @Override
    public boolean isEnabled() {
        return view.isEnabled();
    }

    @Override
    public boolean isVisible() {
        return view.isVisible();
    }

    @Override
    public boolean isShowing() {
        return view.isShowing();
    }

    @Override
    public void setBackground(Color colour) {
        throw fixed();
    }

    @Override
    public void setForeground(Color colour) {
        throw fixed();
    }

    @Override
    public void setCursor(Cursor cursor) {
        throw fixed();
    }

    @Override
    public void setFont(Font font) {
        throw fixed();
    }

    @Override
    public void setEnabled(boolean enabled) {
        throw fixed();
    }

    @Override
    public void setVisible(boolean visible) {
        throw fixed();
    }

    @Override
    public void setLocation(Point point) {
        throw fixed();
    }

    @Override
    public void setBounds(Rectangle bounds) {
        throw fixed();
    }

    @Override
    public void setSize(Dimension size) {
        throw fixed();
    }

    private static UnsupportedOperationException fixed() {
        return new UnsupportedOperationException("a zone lies where the drawing puts it");
    }

    @Override
    public void addFocusListener(FocusListener listener) {
        view.addFocusListener(listener);
    }

    @Override
    public void removeFocusListener(FocusListener listener) {
        view.removeFocusListener(listener);
    }
}
