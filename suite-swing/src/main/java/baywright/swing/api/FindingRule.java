package baywright.swing.api;

import baywright.site.JudgedJob;
import java.util.List;

/** A look at each proved job. Called off the event thread after every edit: it must be quick and pure. */
public interface FindingRule {

    /** Stable kebab-case id. */
    String id();

    List<Remark> judge(JudgedJob job);
}
