package baywright.site;

import baywright.library.ScriptCache;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A shop that is being worked at: a workspace as it was read, with what has been edited since. A value: an edit gives another one,
 * and nothing is written to disk.
 */
public final class OpenShop {

    private final Site site;
    private final Map<String, Job> jobs;

    private OpenShop(Site site, Map<String, Job> jobs) {
        this.site = site;
        this.jobs = Collections.unmodifiableMap(jobs);
    }

    /**
     * Reads a workspace. Off the event thread.
     *
     * @throws SiteTrouble when shop, price list, shapes or a script have an error
     * @throws baywright.workspace.WorkspaceException when there is no such folder or it cannot be read
     */
    public static OpenShop open(Path folder, Clock clock, ScriptCache cache) {
        Site site = Site.open(folder, clock, cache);
        Map<String, Job> jobs = new TreeMap<>();
        for (JobFile file : site.workspace().jobs()) {
            file.job().ifPresent(job -> jobs.put(job.id(), job));
        }
        return new OpenShop(site, jobs);
    }

    /** Library, shop and what proves and prices jobs. */
    public Site site() {
        return site;
    }

    /** Jobs that can be used, in order of their ids. */
    public List<Job> jobs() {
        return List.copyOf(jobs.values());
    }

    public Optional<Job> job(String id) {
        return Optional.ofNullable(jobs.get(id));
    }

    /** The same shop with a job changed or added. */
    public OpenShop withJob(Job job) {
        Map<String, Job> all = new TreeMap<>(jobs);
        all.put(job.id(), job);
        return new OpenShop(site, all);
    }
}
