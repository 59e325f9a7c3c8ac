package baywright.workspace;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A photo of a job's vehicle, as its file names it.
 *
 * @param file    name of the picture in the job's folder {@code photos}; it may have gone meanwhile
 * @param caption words for people, may be empty
 * @param zone    id of the zone that it shows; empty: the whole vehicle
 * @param added   when it was added, local time of the site, where recorded
 */
public record JobPhoto(String file, String caption, Optional<String> zone, Optional<LocalDateTime> added) {

    /** What a name of a photo is, in words for a message. */
    static final String A_FILE_NAME =
            "the name of a file in the job's folder 'photos', of letters, digits, '-' and '_' with the ending jpg, jpeg"
                    + " or png, such as \"photo-1.jpg\"";

    private static final Pattern FILE_NAME = Pattern.compile("[A-Za-z0-9_-]{1,80}\\.(?i:jpg|jpeg|png)");

    /** @throws IllegalArgumentException when {@code file} is no plain name of a JPEG or PNG file */
    public JobPhoto {
        if (!isFileName(file)) {
            throw new IllegalArgumentException(
                    "'" + Shown.plain(file) + "' is no name of a photo; give " + A_FILE_NAME);
        }
    }

    /** A name with no folder in it, so that it cannot lead out of {@code photos}. */
    static boolean isFileName(String text) {
        return FILE_NAME.matcher(text).matches();
    }

    /** The same photo with other words. */
    public JobPhoto withCaption(String other) {
        return new JobPhoto(file, other, zone, added);
    }

    /** The same photo of another zone; empty: of the whole vehicle. */
    public JobPhoto on(Optional<String> other) {
        return new JobPhoto(file, caption, other, added);
    }
}
