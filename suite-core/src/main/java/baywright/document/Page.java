package baywright.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A page of XHTML that grows piece by piece. It needs nothing beside it, runs no script, and every text is escaped. */
final class Page {

    private final StringBuilder html = new StringBuilder();

    /**
     * Begins a page.
     *
     * @param title  of the document
     * @param author who hands it out
     * @param foot   at the left of each sheet's foot, as plain text
     * @param count  CSS content at the right of it, such as {@code "Page " counter(page)}
     */
    Page(Locale locale, String title, String author, Paper paper, String foot, String count) {
        raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + text(locale.toLanguageTag())
                + "\">\n<head>\n<meta charset=\"UTF-8\"/>\n<title>" + text(title) + "</title>\n");
        raw("<meta name=\"author\" content=\"" + text(author) + "\"/>\n<meta name=\"description\" content=\""
                + text(title) + "\"/>\n<style>\n");
        raw("@page { size: " + paper.css() + "; margin: 16mm 16mm 18mm 16mm;\n  @bottom-left { content: \"" + css(foot)
                + "\"; font: 8pt Roboto, sans-serif; color: #444 }\n  @bottom-right { content: " + count
                + "; font: 8pt Roboto, sans-serif; color: #444 } }\n");
        raw(style() + "</style>\n</head>\n<body>\n");
    }

    private static String style() {
        try (InputStream in = Page.class.getResourceAsStream("document.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Ends it. */
    String end() {
        return html.append("</body>\n</html>\n").toString();
    }

    /** Markup as it stands. */
    Page raw(String markup) {
        html.append(markup);
        return this;
    }

    /** An element with a text in it; {@code tag} may bring attributes. */
    Page put(String tag, String plain) {
        return raw("<" + tag + ">" + text(plain) + close(tag));
    }

    /** The same, unless the text is empty. */
    Page say(String tag, String plain) {
        return plain.isEmpty() ? this : put(tag, plain);
    }

    Page open(String tag) {
        return raw("<" + tag + ">");
    }

    Page shut(String tag) {
        return raw(close(tag));
    }

    private static String close(String tag) {
        int space = tag.indexOf(' ');
        return "</" + (space < 0 ? tag : tag.substring(0, space)) + ">\n";
    }

    /** A text with what has a meaning in markup written otherwise. */
    static String text(String plain) {
        StringBuilder safe = new StringBuilder();
        plain.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                case '\n' -> safe.append("<br/>");
                default -> safe.append(isOfXml(c) ? Character.toString(c) : " ");
            }
        });
        return safe.toString();
    }

    /** Whether XML 1.0 allows a character; control signs are no part of any text. */
    private static boolean isOfXml(int c) {
        return c == '\t' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }

    /** A text within a string of a style sheet that stands in a page. */
    static String css(String plain) {
        StringBuilder safe = new StringBuilder();
        plain.codePoints().forEach(c -> {
            boolean isPlain = Character.isLetterOrDigit(c) || " .,:;·-/()".indexOf(c) >= 0;
            safe.append(isPlain ? Character.toString(c) : "\\" + String.format(Locale.ROOT, "%06x", c));
        });
        return safe.toString();
    }
}
