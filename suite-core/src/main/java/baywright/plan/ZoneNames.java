package baywright.plan;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names the zones of a vehicle in a sentence, and all zones of a surface in one word: {@code all painted panels, all glass
 * and 8 more}.
 */
public final class ZoneNames {

    /** A surface with fewer zones is named by them. */
    private static final int SMALLEST_GROUP = 2;

    /** A group is named by what it lacks when that is so much less than what it has. */
    private static final int MOST_LACKING = 2;

    private static final int LEAST_PER_LACKING = 4;

    private final Shape shape;
    private final Locale locale;
    private final ResourceBundle texts;
    private final Map<String, String> titles = new HashMap<>();

    /** For one vehicle; a language without texts of its own gets the English ones. */
    public ZoneNames(Shape shape, Locale locale) {
        this.shape = shape;
        this.locale = locale;
        texts = ResourceBundle.getBundle(
                "baywright.plan.zones",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        shape.zones().forEach(zone -> titles.put(zone.id(), inSentence(zone.title(), locale)));
    }

    /** Every zone by its own name; an id that the vehicle does not have stays as it is. */
    public String each(Collection<String> ids) {
        return ids.stream().map(this::title).collect(Collectors.joining(", "));
    }

    /**
     * Zones by groups where a whole surface is meant, the others by name, in the vehicle's order.
     *
     * @param ids   zones, each once
     * @param named how many names at most, from 1; one more where it is the last
     */
    public String of(Collection<String> ids, int named) {
        Set<String> left = new LinkedHashSet<>(ids);
        List<Name> names = groups(left);
        left.forEach(id -> names.add(new Name(title(id), 1)));
        if (names.size() <= named + 1) {
            return joined(names);
        }
        int more = names.stream().skip(named).mapToInt(Name::zones).sum();
        return new MessageFormat(texts.getString("more"), locale)
                .format(new Object[] {joined(names.subList(0, named)), more});
    }

    /** A name with the number of zones that it stands for. */
    private record Name(String text, int zones) {}

    private static String joined(List<Name> names) {
        return names.stream().map(Name::text).collect(Collectors.joining(", "));
    }

    /** Names of the surfaces that are meant as a whole; takes their zones away from what is left. */
    private List<Name> groups(Set<String> left) {
        List<Name> names = new ArrayList<>();
        bySurface().forEach((surface, zones) -> {
            List<String> there = zones.stream().filter(left::contains).toList();
            List<String> lacking =
                    zones.stream().filter(id -> !left.contains(id)).toList();
            boolean whole = lacking.isEmpty() && zones.size() >= SMALLEST_GROUP;
            boolean nearly = !lacking.isEmpty()
                    && lacking.size() <= MOST_LACKING
                    && there.size() >= LEAST_PER_LACKING * lacking.size();
            if (whole || nearly) {
                String all = all(surface);
                names.add(new Name(whole ? all : say("but", all, each(lacking)), there.size()));
                there.forEach(left::remove);
            }
        });
        return names;
    }

    private Map<String, List<String>> bySurface() {
        Map<String, List<String>> zones = new LinkedHashMap<>();
        for (Zone zone : shape.zones()) {
            zones.computeIfAbsent(zone.surface(), s -> new ArrayList<>()).add(zone.id());
        }
        return zones;
    }

    /** A surface that a shop has made up is called by its id. */
    private String all(String surface) {
        String key = "all." + surface;
        return texts.containsKey(key) ? texts.getString(key) : say("all", surface);
    }

    private String title(String id) {
        return titles.getOrDefault(id, id);
    }

    private String say(String key, Object... with) {
        return new MessageFormat(texts.getString(key), locale).format(with);
    }

    /** A title within a sentence: a small first letter, unless it is an abbreviation or the language is German. */
    static String inSentence(String title, Locale locale) {
        if (locale.getLanguage().equals("de") || title.length() < 2 || Character.isUpperCase(title.charAt(1))) {
            return title;
        }
        return Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }
}
