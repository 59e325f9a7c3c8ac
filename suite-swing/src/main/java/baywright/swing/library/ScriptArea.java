package baywright.swing.library;

import baywright.swing.api.Colours;
import java.awt.Color;
import java.awt.Font;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.InputMap;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import org.fife.ui.rsyntaxtextarea.RSyntaxDocument;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.fife.ui.rsyntaxtextarea.Style;
import org.fife.ui.rsyntaxtextarea.SyntaxConstants;
import org.fife.ui.rsyntaxtextarea.SyntaxScheme;
import org.fife.ui.rsyntaxtextarea.TokenTypes;

/** The text of a script in the colours of the look. Undo is the desk's business, not its own. */
final class ScriptArea extends RSyntaxTextArea {

    private static final long serialVersionUID = 1L;
    private static final int TAB = 4;
    private static final int NEVER = Integer.MAX_VALUE;

    ScriptArea() {
        setSyntaxEditingStyle(SyntaxConstants.SYNTAX_STYLE_GROOVY);
        ((RSyntaxDocument) getDocument()).setSyntaxStyle(new StageTokens());
        setTabsEmulated(true);
        setTabSize(TAB);
        setAutoIndentEnabled(true);
        setCloseCurlyBraces(true);
        setCodeFoldingEnabled(true);
        setMarkOccurrences(false);
        setUseFocusableTips(false);
        setHyperlinksEnabled(false);
        setPopupMenu(null);
        setParserDelay(NEVER);
        InputMap keys = getInputMap();
        for (int menu : new int[] {InputEvent.CTRL_DOWN_MASK, InputEvent.META_DOWN_MASK}) {
            keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_Z, menu), "none");
            keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_Y, menu), "none");
            keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_Z, menu | InputEvent.SHIFT_DOWN_MASK), "none");
        }
        dress();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (getSyntaxScheme() != null) {
            dress();
        }
    }

    private void dress() {
        Font font = UIManager.getFont("monospaced.font");
        if (font != null) {
            setFont(font);
        }
        setBackground(Colours.of("tile"));
        Color ink = UIManager.getColor("TextArea.foreground");
        setForeground(ink);
        setCaretColor(ink);
        setSelectionColor(UIManager.getColor("TextArea.selectionBackground"));
        setSelectedTextColor(UIManager.getColor("TextArea.selectionForeground"));
        setUseSelectedTextColor(true);
        setCurrentLineHighlightColor(Colours.of("script.line"));
        setMatchedBracketBGColor(Colours.of("script.mark"));
        setMatchedBracketBorderColor(Colours.of("line"));
        SyntaxScheme scheme = new SyntaxScheme(false);
        Style[] styles = scheme.getStyles();
        for (int type = 0; type < styles.length; type++) {
            styles[type] = new Style(ink);
        }
        colour(
                styles,
                "script.comment",
                TokenTypes.COMMENT_EOL,
                TokenTypes.COMMENT_MULTILINE,
                TokenTypes.COMMENT_DOCUMENTATION);
        colour(styles, "script.word", TokenTypes.RESERVED_WORD_2);
        colour(styles, "script.grammar", TokenTypes.RESERVED_WORD, TokenTypes.LITERAL_BOOLEAN);
        colour(
                styles,
                "script.number",
                TokenTypes.LITERAL_NUMBER_DECIMAL_INT,
                TokenTypes.LITERAL_NUMBER_FLOAT,
                TokenTypes.LITERAL_NUMBER_HEXADECIMAL,
                TokenTypes.ERROR_NUMBER_FORMAT);
        colour(
                styles,
                "script.text",
                TokenTypes.LITERAL_STRING_DOUBLE_QUOTE,
                TokenTypes.LITERAL_CHAR,
                TokenTypes.ERROR_STRING_DOUBLE,
                TokenTypes.ERROR_CHAR);
        scheme.setStyles(styles);
        setSyntaxScheme(scheme);
    }

    private static void colour(Style[] styles, String name, int... types) {
        for (int type : types) {
            styles[type] = new Style(Colours.of(name));
        }
    }
}
