package baywright.safety;

import java.util.List;

/** Someone who may do the work, with the ids of what they are skilled in. */
public record Worker(String id, String name, List<String> skills) {

    /** Skill of those trained in the safe use of diisocyanates (Regulation (EU) 2020/1149, from memory). */
    public static final String TWO_PACK = "two-pack";

    public Worker {
        skills = List.copyOf(skills);
    }
}
