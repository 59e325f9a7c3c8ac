package baywright.cli;

import baywright.script.Problem;
import baywright.site.Site;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A job with the site that it belongs to.
 *
 * @param site     its site
 * @param file     its folder as it was read
 * @param job      what the folder says
 * @param warnings what is wrong with site or job without making them useless
 */
record OpenedJob(Site site, JobFile file, Job job, List<Problem> warnings) {

    /**
     * Opens the workspace around a job's folder.
     *
     * @throws BadInput                     when there is no such job
     * @throws baywright.site.SiteTrouble when its files cannot be used
     */
    static OpenedJob at(Session session, Path given) {
        JobPath path = JobPath.of(session, given);
        Site site = Site.open(path.workspace(), session.clock(), session.cache());
        JobFile file = site.workspace().job(path.folder()).orElseThrow(() -> session.badInput("job.none", given));
        Job job = site.job(file);
        List<Problem> warnings = Stream.concat(site.warnings().stream(), Site.problemsOf(file).stream())
                .toList();
        if (!session.json()) {
            new ProblemPrinter(session).print(session.console().err(), path.workspace(), warnings);
        }
        return new OpenedJob(site, file, job, warnings);
    }
}
