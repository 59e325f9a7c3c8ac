package baywright.document;

import baywright.document.QuoteDocument.Vehicle;
import baywright.document.QuoteDocument.ZoneNote;
import baywright.quantity.Quantity;
import baywright.safety.Pictogram;
import baywright.site.Site;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What the crew takes along: the steps in order with everything that hands need to know, and no prices. Sentences are in the
 * card's language already.
 *
 * @param language BCP 47 language and country
 * @param shop     its name
 * @param title    of the job
 * @param vehicle  what is worked on
 * @param arrives  when it comes, if agreed
 * @param wanted   when it must be ready, if agreed
 * @param notes    what was found that hands must mind
 * @param photos   of the survey, made small; empty also where they were not asked for
 * @param days     steps in the plan's order, by the day on which they begin
 * @param library  SHA-256 of the library that it was made with
 */
public record JobCard(
        String language,
        String shop,
        String title,
        Vehicle vehicle,
        Optional<LocalDateTime> arrives,
        Optional<LocalDateTime> wanted,
        List<ZoneNote> notes,
        List<CardPhoto> photos,
        List<Day> days,
        String library) {

    public JobCard {
        notes = List.copyOf(notes);
        photos = List.copyOf(photos);
        days = List.copyOf(days);
    }

    /**
     * A photo of the survey.
     *
     * @param caption words of whoever took it; may be empty
     * @param where   title of the zone; empty: the whole vehicle
     * @param jpeg    Base64 (RFC 4648) of a JPEG file; empty where it cannot be shown
     * @param trouble why there is no picture; empty where there is one
     */
    public record CardPhoto(String caption, String where, String jpeg, String trouble) {}

    /** Steps that begin on one day. */
    public record Day(LocalDate day, List<StepCard> steps) {
        public Day {
            steps = List.copyOf(steps);
        }
    }

    /**
     * One step.
     *
     * @param number    place in the plan, from 1
     * @param step      its id
     * @param title     of its stage
     * @param zones     where, in words
     * @param bay       title of the bay; may be empty
     * @param people    how many it takes at least
     * @param checker   whether a second person looks
     * @param minutes   mean hands-on minutes of one person with set-up, for one vehicle
     * @param at        when it is fixed to start
     * @param inputs    what it is set to where that is not the usual
     * @param equipment what it is done with
     * @param materials what it uses, for one vehicle
     * @param waits     what must stand after it
     * @param thin      zones where paint is taken off that is thin
     * @param dangers   what may hurt
     * @param checks    what is confirmed before the next step
     * @param mistakes  what commonly goes wrong
     */
    public record StepCard(
            int number,
            String step,
            String title,
            String zones,
            String bay,
            int people,
            boolean checker,
            BigDecimal minutes,
            Optional<LocalDateTime> at,
            List<String> inputs,
            List<String> equipment,
            List<Material> materials,
            List<Wait> waits,
            List<ThinZone> thin,
            Dangers dangers,
            List<String> checks,
            List<String> mistakes) {
        public StepCard {
            inputs = List.copyOf(inputs);
            equipment = List.copyOf(equipment);
            materials = List.copyOf(materials);
            waits = List.copyOf(waits);
            thin = List.copyOf(thin);
            checks = List.copyOf(checks);
            mistakes = List.copyOf(mistakes);
        }
    }

    /**
     * A consumable.
     *
     * @param amount   as it comes from the pack
     * @param dilution how it is thinned; empty: used as it is
     */
    public record Material(String title, Quantity amount, String dilution) {}

    /** Minutes that must pass; {@code most} empty: as long as it likes. */
    public record Wait(BigDecimal least, Optional<BigDecimal> most, String why) {}

    /** A zone with its lowest reading in µm, empty when it was not read. */
    public record ThinZone(String zone, Optional<BigDecimal> lowest) {}

    /**
     * What may hurt.
     *
     * @param pictograms of the items
     * @param risks      physical dangers
     * @param wear       protection
     * @param apart      what must not meet, with the reason
     */
    public record Dangers(List<Pictogram> pictograms, List<String> risks, List<String> wear, List<String> apart) {
        public Dangers {
            pictograms = List.copyOf(pictograms);
            risks = List.copyOf(risks);
            wear = List.copyOf(wear);
            apart = List.copyOf(apart);
        }

        boolean isEmpty() {
            return pictograms.isEmpty() && risks.isEmpty() && wear.isEmpty() && apart.isEmpty();
        }
    }

    /**
     * The card of a job.
     *
     * @param language two or three letters, with or without a country
     */
    public static JobCard of(Site site, WorkedJob worked, String language) {
        return of(site, worked, language, true);
    }

    /** The same with the photos of the survey only where they are asked for. Photos are read from the disk. */
    public static JobCard of(Site site, WorkedJob worked, String language, boolean withPhotos) {
        return new CardDraft(site, worked, language).card(withPhotos);
    }
}
