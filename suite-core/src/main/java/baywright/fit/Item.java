package baywright.fit;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One thing that may stay or fall out.
 *
 * @param id    its name
 * @param rank  how it is wanted, from 0; one of a lower rank is worth more than all of the higher ranks together
 * @param worth what it is worth beside others of its rank, not negative
 * @param least what it adds at least to {@link Terms#floor}, whatever else stays; not negative, 0 when unknown
 */
public record Item(String id, int rank, BigDecimal worth, BigDecimal least) {
    public Item {
        Objects.requireNonNull(id, "id");
        if (rank < 0) {
            throw new IllegalArgumentException("rank must be 0 or more, got " + rank);
        }
        if (worth.signum() < 0 || least.signum() < 0) {
            throw new IllegalArgumentException("worth and least must not be negative, got " + worth + " and " + least);
        }
    }
}
