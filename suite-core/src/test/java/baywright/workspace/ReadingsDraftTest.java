package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.vehicle.Reading;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ReadingsDraftTest {

    private static final String PLAIN = "zone,um,note\nbonnet,108.5,\nbonnet,112,\"near the edge, left\"\nroof,124,\n";
    private static final String WIDE = "zone;mil 1;mil 2;mil 3;note\r\nbonnet;4,2;4,4;4,3;\r\nroof;4,6;;4,7;hot\r\n";

    private static Source source(String text) {
        return new Source("readings.csv", text);
    }

    private static Map<String, List<Reading>> read(String text) {
        Report report = new Report(source(text));
        Map<String, List<Reading>> readings =
                ReadingsCsv.read(report, ReadingsForm.UNSAID).byZone();
        assertThat(report.problems().stream().filter(FileProblem::isError)).isEmpty();
        return readings;
    }

    private static List<Reading> um(String... numbers) {
        return java.util.Arrays.stream(numbers)
                .map(number -> new Reading(new BigDecimal(number), "typed"))
                .toList();
    }

    private static String with(String text, String zone, List<Reading> readings) {
        Map<String, List<Reading>> all = new LinkedHashMap<>(read(text));
        all.put(zone, readings);
        return ReadingsDraft.onto(source(text), all, false);
    }

    @Test
    void aChangedReadingIsOneChangedCell() {
        assertThat(with(PLAIN, "bonnet", um("108.5", "110"))).isEqualTo(PLAIN.replace("bonnet,112,", "bonnet,110,"));
    }

    @Test
    void aReadingMoreIsARowMoreBehindTheOneBefore() {
        assertThat(with(PLAIN, "bonnet", um("108.5", "109", "112")))
                .isEqualTo(PLAIN.replace("bonnet,108.5,\n", "bonnet,108.5,\nbonnet,109,\n"));
    }

    @Test
    void aReadingBeforeTheFirstIsARowBeforeIt() {
        assertThat(with(PLAIN, "bonnet", um("90", "91", "108.5", "112")))
                .isEqualTo(PLAIN.replace("bonnet,108.5,\n", "bonnet,90,\nbonnet,91,\nbonnet,108.5,\n"));
    }

    @Test
    void aReadingLessLeavesTheNotesOfTheOthers() {
        assertThat(with(PLAIN, "bonnet", um("112"))).isEqualTo(PLAIN.replace("bonnet,108.5,\n", ""));
    }

    @Test
    void aNewZoneComesLast() {
        assertThat(with(PLAIN, "boot-lid", um("99"))).isEqualTo(PLAIN + "boot-lid,99,\n");
        assertThat(with(PLAIN.stripTrailing(), "boot-lid", um("99")))
                .isEqualTo(PLAIN.stripTrailing() + "\nboot-lid,99,");
    }

    @Test
    void aFileOfMilAndCommasStaysOne() {
        // 111.76 um are 4.4 mil; 120 um are 4.7244 mil, of which a thousandth is told
        assertThat(with(WIDE, "roof", um("111.76", "120")))
                .isEqualTo(WIDE.replace("roof;4,6;;4,7;hot", "roof;4,4;;4,724;hot"));
    }

    @Test
    void aWideRowTakesAReadingMoreWhereACellIsFree() {
        assertThat(with(WIDE, "roof", um("116.84", "119.38", "121.92")))
                .isEqualTo(WIDE.replace("roof;4,6;;4,7;hot", "roof;4,6;4,7;4,8;hot"));
        assertThat(with(WIDE, "bonnet", um("106.68", "111.76", "109.22", "101.6")))
                .isEqualTo(WIDE.replace("bonnet;4,2;4,4;4,3;\r\n", "bonnet;4,2;4,4;4,3;\r\nbonnet;4;;;\r\n"));
    }

    @Test
    void aZoneWithoutReadingsLosesItsRows() {
        assertThat(with(PLAIN, "bonnet", List.of())).isEqualTo("zone,um,note\nroof,124,\n");
        assertThat(with("zone,um\nroof,1", "roof", List.of())).isEqualTo("zone,um\n");
    }

    /** Of 4,724 alone nobody knows whether its comma parts thousands; a zero before it tells. */
    @Test
    void aCommaThatCouldPartThousandsIsMadeClear() {
        String file = "zone;mil\nroof;4,7\nroof;4,724\n";
        Map<String, List<Reading>> one =
                Map.of("roof", List.of(read(file).get("roof").get(1)));

        String told = ReadingsDraft.onto(source(file), one, true);

        assertThat(told).isEqualTo("zone;mil\nroof;04,724\n");
        assertThat(read(told).get("roof").get(0).micrometres()).isEqualByComparingTo("119.9896");
    }

    @Property(tries = 1000)
    void whateverAFileBecomesItIsReadAsWhatItBecame(
            @ForAll("files") String file, @ForAll("readings") Map<String, List<Reading>> after) {
        String changed = ReadingsDraft.onto(source(file), after, false);

        Map<String, List<Reading>> found = read(changed);
        assertThat(found.keySet()).isEqualTo(after.keySet());
        // a thousandth of a mil is 0.0254 um; half of it is the most that rounding takes
        BigDecimal close = new BigDecimal(file.contains("mil") ? "0.0127" : "0");
        after.forEach((zone, readings) -> {
            assertThat(found.get(zone)).hasSameSizeAs(readings);
            for (int i = 0; i < readings.size(); i++) {
                assertThat(found.get(zone)
                                .get(i)
                                .micrometres()
                                .subtract(readings.get(i).micrometres())
                                .abs())
                        .isLessThanOrEqualTo(close);
            }
        });
    }

    @Property(tries = 200)
    void whatIsTheSameStaysLetterByLetter(@ForAll("files") String file) {
        assertThat(ReadingsDraft.onto(source(file), read(file), false)).isEqualTo(file);
    }

    /** Read by a library of its own: rows of zones that did not change are there as they were, in their order. */
    @Property(tries = 200)
    void otherZonesKeepTheirRows(@ForAll("files") String file, @ForAll("readings") Map<String, List<Reading>> after)
            throws IOException {
        Map<String, List<Reading>> mixed = new LinkedHashMap<>(read(file));
        mixed.put("zone-1", after.getOrDefault("zone-1", List.of()));

        assertThat(others(ReadingsDraft.onto(source(file), mixed, false))).isEqualTo(others(file));
    }

    private static List<List<String>> others(String file) throws IOException {
        CSVFormat format =
                CSVFormat.RFC4180.builder().setDelimiter(file.charAt(4)).get();
        List<List<String>> rows = new ArrayList<>();
        for (CSVRecord row : format.parse(new StringReader(file))) {
            if (!row.get(0).equals("zone-1")) {
                rows.add(row.toList());
            }
        }
        return rows;
    }

    // random values

    @Provide
    Arbitrary<Map<String, List<Reading>>> readings() {
        return Arbitraries.randomValue(random -> {
            Map<String, List<Reading>> all = new LinkedHashMap<>();
            for (int zone = 0; zone < 4; zone++) {
                List<Reading> some = new ArrayList<>();
                for (int i = random.nextInt(6); i > 0; i--) {
                    some.add(new Reading(BigDecimal.valueOf(80_000 + random.nextInt(9) * 10_500L, 3), "typed"));
                }
                if (!some.isEmpty()) {
                    all.put("zone-" + zone, some);
                }
            }
            return all;
        });
    }

    /** Files of one or several readings a row, with or without a column of units and a note. */
    @Provide
    Arbitrary<String> files() {
        return Arbitraries.randomValue(ReadingsDraftTest::file);
    }

    private static String file(Random random) {
        boolean mil = random.nextBoolean();
        boolean unitColumn = random.nextBoolean();
        int across = 1 + random.nextInt(3);
        String separator = random.nextBoolean() ? "," : ";";
        String end = random.nextBoolean() ? "\n" : "\r\n";
        StringBuilder out = new StringBuilder("zone");
        for (int i = 1; i <= across; i++) {
            out.append(separator).append(unitColumn ? "reading " + i : (mil ? "mil " : "um ") + i);
        }
        out.append(unitColumn ? separator + "unit" : "")
                .append(separator)
                .append("note")
                .append(end);
        for (int row = random.nextInt(9); row > 0; row--) {
            out.append("zone-").append(random.nextInt(4));
            int filled = random.nextInt(across);
            for (int i = 0; i < across; i++) {
                BigDecimal um = BigDecimal.valueOf(80_000 + random.nextInt(9) * 10_500L, 3);
                String number = mil
                        ? um.divide(new BigDecimal("25.4"), 1, RoundingMode.HALF_UP)
                                .toString()
                        : um.toString();
                out.append(separator).append(i == filled || random.nextBoolean() ? number : "");
            }
            out.append(unitColumn ? separator + (mil ? "mil" : "um") : "")
                    .append(separator)
                    .append(random.nextBoolean() ? "\"so, " + row + "; \"\"here\"\"\"" : "")
                    .append(row == 1 && random.nextBoolean() ? "" : end);
        }
        return out.toString();
    }
}
