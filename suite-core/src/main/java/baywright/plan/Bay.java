package baywright.plan;

import java.util.List;

/**
 * A place in the shop where work is done.
 *
 * @param id         stable kebab-case id
 * @param title      words for people
 * @param kind       what a stage asks for: wash, lit, clean, film …; one bay may serve as several
 * @param conditions conditions that it gives: shade, lit, drained, ventilated …
 */
public record Bay(String id, String title, List<String> kind, List<String> conditions) {
    public Bay {
        kind = List.copyOf(kind);
        conditions = List.copyOf(conditions);
    }
}
