package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.quantity.Unit;
import baywright.vehicle.Reading;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsFileTest {

    private static final Shape SHAPE = new Shape("car", "Car", BigDecimal.ONE, List.of(zone("bonnet"), zone("roof")));

    @TempDir
    Path folder;

    private static Zone zone(String id) {
        return new Zone(id, id, "paint", "steel", Map.of(), List.of());
    }

    private ReadingsFile read(String text) {
        return read(text, ReadingsForm.UNSAID);
    }

    private ReadingsFile read(String text, ReadingsForm form) {
        Path file = folder.resolve("after.csv");
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return ReadingsFile.read(file, form, SHAPE);
    }

    private static ReadingsForm form(Character separator, Character decimal, Unit unit) {
        return new ReadingsForm(
                Optional.ofNullable(separator), Optional.ofNullable(decimal), Optional.ofNullable(unit));
    }

    private List<String> films(String text) {
        ReadingsFile read = read(text);
        assertThat(read.problems()).isEmpty();
        return films(read);
    }

    private static List<String> films(ReadingsFile read) {
        List<String> films = new ArrayList<>();
        read.byZone()
                .forEach((zone, list) -> list.forEach(r -> films.add(
                        zone + " " + r.micrometres().stripTrailingZeros().toPlainString())));
        return films;
    }

    private String problem(String text) {
        return problem(read(text));
    }

    private static String problem(ReadingsFile read) {
        assertThat(read.byZone()).isEmpty();
        assertThat(read.problems()).hasSize(1);
        return read.problems().get(0).toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "zone,um\nbonnet,108.5\nroof,112\n",
                "zone,um,note\r\nbonnet,108.5,\"near the edge, left\"\r\nroof,112,\r\n",
                "zone;um\nbonnet;108,5\nroof;112",
                "zone\tum\nbonnet\t108,5\nroof\t112",
                "zone,um\nbonnet,\"108,5\"\nroof,112",
                "um;zone\n108.5;bonnet\n112;roof",
                "Zone;µm\nbonnet;108,5\nroof;112",
                "zone;reading;unit\nbonnet;108,5;um\nroof;112;µm",
                "zone;1;note\n;um;\nbonnet;108,5;\nroof;112;",
                "zone,um\n\nbonnet,108.5\n\nroof,112\n\n"
            })
    void theSameReadingsInManyForms(String text) {
        assertThat(films(text)).containsExactly("bonnet 108.5", "roof 112");
    }

    @Test
    void severalReadingsInARowWithGaps() {
        assertThat(films("zone;um 1;um 2;um 3;note\nbonnet;108,5;112;110;\nroof;117;;118,5;hot\nbonnet;111;;;\n"))
                .containsExactly("bonnet 108.5", "bonnet 112", "bonnet 110", "bonnet 111", "roof 117", "roof 118.5");
    }

    @Test
    void readingsKnowTheirLine() {
        assertThat(read("zone,um 1,um 2\nbonnet,108,110\n\nroof,112,\n")
                        .byZone()
                        .get("roof"))
                .containsExactly(new Reading(new BigDecimal("112"), "after.csv:4"));
    }

    /** 1 mil = 25.4 µm exactly, from the inch of 25.4 mm of 1959; NIST SP 811, appendix B. */
    @Test
    void milsBecomeMicrometresExactly() {
        assertThat(films("zone,mil 1,mil 2,mil 3\nbonnet,2.5,3,5\n"))
                .containsExactly("bonnet 63.5", "bonnet 76.2", "bonnet 127");
        assertThat(films(read("zone,1\nbonnet,4.724\n", form(null, null, Unit.MIL))))
                .containsExactly("bonnet 119.9896");
    }

    /** Law: there and back to 1e-9. */
    @Property
    void thereAndBack(@ForAll("films") BigDecimal um) {
        BigDecimal mil = um.divide(new BigDecimal("25.4"), 20, RoundingMode.HALF_EVEN);
        BigDecimal back = new baywright.quantity.Quantity(mil, Unit.MIL).inBase();

        assertThat(back.subtract(um).abs()).isLessThan(new BigDecimal("1e-9"));
    }

    @Provide
    static Arbitrary<BigDecimal> films() {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ONE, BigDecimal.valueOf(20_000))
                .ofScale(3);
    }

    @Test
    void aFileWithoutAUnitIsAskedFor() {
        assertThat(problem("zone,1,2\nbonnet,4.4,4.5\n"))
                .isEqualTo("after.csv:1:1: the file does not say whether its readings are in um or in mil;"
                        + " name the columns so, such as zone,um or zone,mil 1,mil 2");
        assertThat(films(read("zone,1,2\nbonnet,104,105\n", form(null, null, Unit.MICROMETRE))))
                .containsExactly("bonnet 104", "bonnet 105");
    }

    @Test
    void twoUnitsSideBySideAreAskedFor() {
        assertThat(problem("zone,um,mil\nbonnet,112,4.41\n"))
                .isEqualTo("after.csv:1:1: some columns are in um, others in mil; keep those of one unit");
    }

    @Test
    void aUnitOfARowMustBeOne() {
        assertThat(problem("zone,reading,unit\nbonnet,112,mm\n"))
                .isEqualTo("after.csv:2:12: unit: the text 'mm' is no unit of this row's readings; give um or mil");
        assertThat(problem("zone,um,unit\nbonnet,112,mil\n"))
                .isEqualTo("after.csv:2:12: unit: the text 'mil' is no unit of this row's readings; give um");
    }

    /** RFC 4180; a decimal mark is never guessed from one row. */
    @Test
    void mixedDecimalMarksAreAskedFor() {
        assertThat(problem("zone;um\nbonnet;108,5\nroof;112.5\n"))
                .isEqualTo("after.csv:3:6: the decimal mark of '112.5' is not the comma of the others;"
                        + " write all numbers with one mark");
    }

    @Test
    void aCommaThatMayPartThousandsIsAskedFor() {
        assertThat(problem("zone;mil\nbonnet;4,724\nroof;4,801\n"))
                .isEqualTo("after.csv:2:8: the comma in '4,724' may part thousands or decimals;"
                        + " write all numbers with a point, or one of them with fewer decimals");
        assertThat(films("zone;mil\nbonnet;4,724\nroof;4,8\n")).containsExactly("bonnet 119.9896", "roof 121.92");
        assertThat(films(read("zone;mil\nbonnet;4,724\n", form(null, ',', null))))
                .containsExactly("bonnet 119.9896");
    }

    @Test
    void whatWasSaidGoesBeforeWhatWouldFollow() {
        assertThat(problem(read("zone;um\nbonnet;108,5\n", form(null, '.', null))))
                .contains("after.csv:2:8: the decimal mark of '108,5' is not the point of the others");
        assertThat(problem(read("zone;um\nbonnet;108,5\n", form(',', null, null))))
                .contains("the header is 'zone;um'");
    }

    @Test
    void aUnitThatDoesNotFitTheFiguresIsDoubted() {
        ReadingsFile read = read("zone,um\nbonnet,4.4\nroof,4.5\n");

        assertThat(read.hasErrors()).isFalse();
        assertThat(read.problems())
                .extracting(FileProblem::toString)
                .containsExactly(
                        "after.csv:2:8: every reading is given in um and looks like mil; check the unit in the header");
        assertThat(read("zone,mil\nbonnet,104\n").problems()).hasSize(1);
    }

    @Test
    void unknownColumnsAreNotPassedOver() {
        assertThat(problem("zone,um,um2,thickness\nbonnet,1,2,3\n")).contains("the header is 'zone,um,um2,thickness'");
    }

    @Test
    void unknownZonesAreNamedWhereTheyStand() {
        assertThat(problem("um,zone\n112,bonet\n"))
                .isEqualTo("after.csv:2:5: zone: 'bonet' is no zone of the shape 'car'; nearest is 'bonnet'");
    }

    @Test
    void everyBadCellIsToldAtOnceWithItsPlace() {
        ReadingsFile read = read("zone;um 1;um 2\nbonnet;thin;112\nroof;0;-3\nroof;;\nroof;1;2;3\n");

        assertThat(read.problems())
                .extracting(p -> p.line() + ":" + p.column())
                .containsExactly("2:8", "3:6", "3:8", "4:6", "5:1");
    }

    @Test
    void aByteOrderMarkIsReadOver() {
        ReadingsFile read = read("\uFEFFzone,um\nbonnet,112\n");

        assertThat(read.hasErrors()).isFalse();
        assertThat(films(read)).containsExactly("bonnet 112");
    }

    @Test
    void aMissingFileIsNamed() {
        assertThat(problem(ReadingsFile.read(folder.resolve("gone.csv"), ReadingsForm.UNSAID, SHAPE)))
                .contains("gone.csv: there is no such file");
    }

    /** RFC 4180, section 2, rule 7. */
    @Test
    void quotedCells() {
        assertThat(CsvTable.of("\"aaa\",\"b\"\"bb\",\"ccc\"\r\n", ',').rows().get(0))
                .extracting(CsvTable.Cell::text)
                .containsExactly("aaa", "b\"bb", "ccc");
    }

    /** An independent reader of the same standard reads the same cells. */
    @Property
    void cellsAreThoseOfAnotherReader(@ForAll("tables") List<List<String>> rows, @ForAll("separators") char separator)
            throws IOException {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                text.append(i == 0 ? "" : String.valueOf(separator));
                text.append('"').append(row.get(i).replace("\"", "\"\"")).append('"');
            }
            text.append("\r\n");
        }
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
        List<List<String>> theirs = format.parse(new StringReader(text.toString())).stream()
                .map(CSVRecord::toList)
                .toList();

        assertThat(CsvTable.of(text.toString(), separator).rows().stream()
                        .map(row -> row.stream().map(CsvTable.Cell::text).toList())
                        .toList())
                .isEqualTo(theirs);
    }

    @Provide
    static Arbitrary<List<List<String>>> tables() {
        Arbitrary<String> cell =
                Arbitraries.strings().withChars("ab ,;\"\t\n\r=").ofMaxLength(6);
        return cell.list().ofMinSize(2).ofMaxSize(4).list().ofMaxSize(5);
    }

    @Provide
    static Arbitrary<Character> separators() {
        return Arbitraries.of(',', ';', '\t');
    }

    /** A cell that begins with = + - @ is written so that a spreadsheet does not run it. */
    @Test
    void cellsThatASpreadsheetWouldRunAreDefused() {
        assertThat(CsvLine.of(List.of("=1+1", "+cmd", "-x", "@a", "-3.5", "12", "a,b", "say \"no\"", "")))
                .isEqualTo("'=1+1,'+cmd,'-x,'@a,-3.5,12,\"a,b\",\"say \"\"no\"\"\",\r\n");
    }
}
