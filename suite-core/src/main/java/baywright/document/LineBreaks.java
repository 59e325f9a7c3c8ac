package baywright.document;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line may end: as Unicode has it, but never after a colon within a word, such as in {@code 08:20} or {@code 1:10}. */
final class LineBreaks implements FSTextBreaker {

    private final BreakIterator usual = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        usual.setText(newText);
    }

    @Override
    public int next() {
        int at = usual.next();
        while (at != BreakIterator.DONE && at < text.length() && text.charAt(at - 1) == ':') {
            at = usual.next();
        }
        return at;
    }
}
