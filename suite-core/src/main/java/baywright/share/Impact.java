package baywright.share;

import baywright.chance.Watch;
import baywright.library.Library;
import baywright.site.Site;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;

/**
 * What another library would make of the jobs of a shop: the same as if every job were worked anew with both.
 *
 * @param changes   what differs between the libraries, by kind and id
 * @param jobs      the jobs whose figures, findings or papers move, in order of their ids
 * @param same      jobs that were worked anew and come to the same
 * @param untouched jobs that use nothing of what changed, and were not worked anew
 */
public record Impact(List<ImpactChange> changes, List<ImpactOfJob> jobs, int same, int untouched) {

    public Impact {
        changes = List.copyOf(changes);
        jobs = List.copyOf(jobs);
    }

    /**
     * Works out what another library would make of a site's jobs, on all cores. The site's clock stands still meanwhile. Off the
     * event thread.
     *
     * @param site   with its library as it is
     * @param after  the other library
     * @param papers that were handed out
     * @param watch  told how many jobs are done, and asked whether to stop
     * @throws CancellationException when it was stopped
     */
    public static Impact of(Site site, Library after, ImpactPapers papers, Watch watch) {
        return new ImpactRun(site, after, papers, watch).impact();
    }

    /** What differs in meaning between two libraries, by kind and id. */
    public static List<ImpactChange> changes(Library before, Library after) {
        return ImpactLibraries.changes(before, after);
    }

    /** Jobs that were proved and then stop. */
    public List<ImpactOfJob> stopping() {
        return jobs.stream()
                .filter(j -> j.before().holds() && !j.after().holds())
                .toList();
    }

    /** Jobs that stopped and then prove. */
    public List<ImpactOfJob> freed() {
        return jobs.stream()
                .filter(j -> !j.before().holds() && j.after().holds())
                .toList();
    }

    /** How many of the jobs each change moves by itself, the one that moves most first, then by kind and id. */
    public List<Map.Entry<ImpactChange, Integer>> movers() {
        Map<ImpactChange, Integer> moved = new TreeMap<>();
        jobs.forEach(j -> j.causes().forEach(c -> moved.merge(c.change(), 1, Integer::sum)));
        return moved.entrySet().stream()
                .sorted(Map.Entry.<ImpactChange, Integer>comparingByValue().reversed())
                .toList();
    }
}
