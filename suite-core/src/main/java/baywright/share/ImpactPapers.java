package baywright.share;

import baywright.site.WorkedJob;
import baywright.workspace.Job;
import java.util.List;
import java.util.Optional;

/** Papers that were handed out and rest on what their jobs were that day. Asked from several threads. */
public interface ImpactPapers {

    /** Nothing was handed out. */
    ImpactPapers NONE = new ImpactPapers() {
        @Override
        public Optional<String> newest(Job job) {
            return Optional.empty();
        }

        @Override
        public List<String> differences(Job job, WorkedJob worked) {
            return List.of();
        }
    };

    /** Name of a job's newest paper. */
    Optional<String> newest(Job job);

    /** What that paper would say otherwise if it were made of the job as it is worked now; plain texts, for comparing. */
    List<String> differences(Job job, WorkedJob worked);
}
