package baywright.swing.quote;

import baywright.document.LedgerCsv;
import baywright.money.Quote;
import baywright.site.WorkedJob;
import baywright.swing.api.DocumentMaker;
import baywright.workspace.SafeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

/** Every line of a quote, unrounded, for a spreadsheet. */
final class LedgerSheet implements DocumentMaker {

    @Override
    public String id() {
        return "quote-lines";
    }

    @Override
    public String title() {
        return Words.of("sheet.title");
    }

    @Override
    public String extension() {
        return "csv";
    }

    @Override
    public boolean canMake(WorkedJob job) {
        return job.offer() instanceof Quote;
    }

    /** Its words and numbers are those of the file's form, whatever the language. */
    @Override
    public void write(WorkedJob job, Locale language, Path file) throws IOException {
        SafeFile.replace(file, LedgerCsv.of(((Quote) job.offer()).ledger()).getBytes(StandardCharsets.UTF_8));
    }
}
