package baywright.editor;

import baywright.script.Place;
import java.util.ArrayList;
import java.util.List;

/** Turns offsets of a text into places and back. A place counts code points, an offset counts chars. */
public final class TextPlaces {

    private final String file;
    private final String text;
    private final List<Integer> starts = new ArrayList<>();

    public TextPlaces(String file, String text) {
        this.file = file;
        this.text = text;
        starts.add(text.startsWith("\uFEFF") ? 1 : 0);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (c == '\n' || (c == '\r' && !pair)) {
                starts.add(i + 1);
            }
        }
    }

    /** The place of an offset, which lies from 0 to the length of the text. */
    public Place place(int offset) {
        int low = 0;
        int high = starts.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (starts.get(middle) <= offset) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        int start = Math.min(starts.get(low), offset);
        return new Place(file, low + 1, text.codePointCount(start, offset) + 1);
    }

    /** The offset of a place; one behind the end of its line gives the end of that line. */
    public int offset(Place place) {
        if (place.line() < 1 || place.line() > starts.size()) {
            return place.line() < 1 ? 0 : text.length();
        }
        int at = starts.get(place.line() - 1);
        for (int column = 1; column < place.column() && at < text.length(); column++) {
            if (text.charAt(at) == '\n' || text.charAt(at) == '\r') {
                break;
            }
            at += Character.charCount(text.codePointAt(at));
        }
        return at;
    }
}
