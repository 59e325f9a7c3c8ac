package baywright.safety;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The hazard and precautionary statements of Regulation (EC) No 1272/2008, annexes III and IV, in one language, as of
 * 2025-09-01. A text is given ready to print: what stands in angle brackets in the regulation is a note to the supplier
 * and is left out. Data: see {@code ghs/SOURCE.md}.
 */
public final class Statements {

    /** To be printed wherever the texts are passed on. */
    public static final String LICENCE =
            "Statements: © European Union, https://eur-lex.europa.eu, 1998-2025, CC BY 4.0";

    /** Languages that there are texts in. */
    public static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "nl");

    private static final Map<String, Statements> READ = new ConcurrentHashMap<>();
    private static final Pattern PLACE_TO_FILL = Pattern.compile("<[^<>]*>");
    private static final Pattern SPACE_BEFORE_STOP = Pattern.compile("\\s+([.,;])");
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");

    /** One of several alternatives that has no words, as in {@code doctor/…}. */
    private static final Pattern LEFT_OPEN = Pattern.compile("\\s?/\\s?…/?");

    private static final Map<String, String> AS_THE_DATA_SHEET_SAYS = Map.of(
            "en", "what the safety data sheet names",
            "de", "das im Sicherheitsdatenblatt genannte Mittel",
            "fr", "ce que la fiche de données de sécurité indique",
            "es", "lo que indica la ficha de datos de seguridad",
            "nl", "wat het veiligheidsinformatieblad noemt");

    /** A sensitiser that nobody has named, which the sentence of EUH208 cannot do without. */
    private static final Map<String, String> SOME_SENSITISER = Map.of(
            "en", "a sensitising substance",
            "de", "einen sensibilisierenden Stoff",
            "fr", "une substance sensibilisante",
            "es", "una sustancia sensibilizante",
            "nl", "een sensibiliserende stof");

    private final String language;
    private final Map<String, String> texts;

    private Statements(String language, Map<String, String> texts) {
        this.language = language;
        this.texts = texts;
    }

    /** The texts in a reader's language, in English where there are none in it. */
    public static Statements in(Locale locale) {
        String language = LANGUAGES.contains(locale.getLanguage()) ? locale.getLanguage() : "en";
        return READ.computeIfAbsent(language, Statements::read);
    }

    private static Statements read(String language) {
        try {
            JsonNode all = new ObjectMapper().readTree(Resources.bytes("ghs/clp-hpstatements-" + language + ".json"));
            Map<String, String> texts = new LinkedHashMap<>();
            for (JsonNode code : all.get("codes")) {
                JsonNode text = all.get("statements").get("latest/" + language + "/" + code.textValue());
                texts.put(code.textValue(), text.textValue());
            }
            return new Statements(language, texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String language() {
        return language;
    }

    /** Every code, in the regulation's order. */
    public List<String> codes() {
        return List.copyOf(texts.keySet());
    }

    /** Whether the regulation has this code. */
    public boolean knows(String code) {
        return texts.containsKey(code);
    }

    /** The text as published, with its places to fill in. */
    public Optional<String> published(String code) {
        return Optional.ofNullable(texts.get(code));
    }

    /** The text without the places to fill in; empty for a code that the regulation does not have. */
    public Optional<String> text(String code) {
        return text(code, "");
    }

    /**
     * The text with one thing filled in for the first place, such as the name of a sensitiser for {@code EUH208}.
     *
     * @param fill empty: leave all places out
     */
    public Optional<String> text(String code, String fill) {
        String usual = code.equals("EUH208") ? SOME_SENSITISER.get(language) : "";
        String first = fill.isEmpty() ? usual : fill;
        return published(code)
                .map(t -> tidy(PLACE_TO_FILL.matcher(t).replaceFirst(java.util.regex.Matcher.quoteReplacement(first))));
    }

    /**
     * The text for a sheet of the shop, on which nobody fills in what the regulation leaves open: an alternative without
     * words is left out, a single one points to the safety data sheet.
     */
    public Optional<String> printed(String code) {
        return text(code)
                .map(t -> tidy(LEFT_OPEN
                        .matcher(t)
                        .replaceAll(" ")
                        .replace("…", " " + AS_THE_DATA_SHEET_SAYS.get(language) + " ")));
    }

    private static String tidy(String text) {
        String bare = PLACE_TO_FILL.matcher(text).replaceAll("");
        String single = SPACES.matcher(bare).replaceAll(" ").strip();
        String tidy = SPACE_BEFORE_STOP.matcher(single).replaceAll("$1");
        return Character.isLetter(tidy.charAt(tidy.length() - 1)) ? tidy + "." : tidy;
    }

    /** The text, or the one clear sentence that there is none. */
    public String textOrWhyNot(String code) {
        return text(code)
                .orElseGet(
                        () -> "'" + code + "' is not an EU code: Regulation (EC) No 1272/2008 has no statement of that"
                                + " number" + (UnTable.read().has(code) ? "; the UN table has one" : ""));
    }

    /** The codes of a list that the regulation does not have, in their order. */
    public List<String> unknown(List<String> codes) {
        List<String> unknown = new ArrayList<>(codes);
        unknown.removeIf(this::knows);
        return unknown;
    }
}
