package baywright.swing.start;

import baywright.library.Library;
import baywright.site.OpenShop;
import baywright.site.Site;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Task;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.EmptyState;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import baywright.workspace.WorkspaceException;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;

/** Jobs on the left, the chosen one on the right. */
final class JobsView implements WorkbenchView {

    private final Desk desk;
    private final JobList list = new JobList();
    private final JobPage page = new JobPage();
    private final EmptyState hint = new EmptyState(Words.of("jobs.none.heading"), Words.of("jobs.none"), List.of());
    private final CardLayout cards = new CardLayout();
    private final JPanel right = new JPanel(cards);
    private final JSplitPane split;
    private final Map<String, Known> known = new HashMap<>();
    private boolean working;
    private boolean filling;

    /** A job as it was worked out last, by what that depends on. */
    private record Known(Job job, Library library, Shop shop, JobView view) {

        boolean isOf(Job other, Site site) {
            return job.equals(other) && library.equals(site.library()) && shop.equals(site.shop());
        }
    }

    JobsView(Desk desk) {
        this.desk = desk;
        right.add(hint, "hint");
        right.add(page, "job");
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, scroll, right);
        split.setDividerLocation(UIScale.scale(290));
        split.setBorder(null);
        split.setName("jobs");
        list.addListSelectionListener(e -> {
            if (!filling && !e.getValueIsAdjusting() && list.getSelectedValue() != null) {
                desk.choose(list.getSelectedValue().id());
            }
        });
    }

    @Override
    public JComponent component() {
        return split;
    }

    @Override
    public JComponent focus() {
        return list;
    }

    JobList list() {
        return list;
    }

    JobPage page() {
        return page;
    }

    @Override
    public void show(DeskState state) {
        if (state.shop().isEmpty()) {
            return;
        }
        OpenShop shop = state.shop().get();
        JobViews views = new JobViews(shop.shop(), desk.readout().locale());
        state.worked()
                .ifPresent(worked -> shop.job(worked.job().id())
                        .filter(job -> job.equals(worked.job()))
                        .ifPresent(job -> known.put(job.id(), known(job, shop.site(), views.of(worked)))));
        List<JobView> rows = new ArrayList<>();
        boolean lacks = false;
        for (Job job : shop.jobs()) {
            Known before = known.get(job.id());
            rows.add(before == null ? JobViews.waiting(job) : before.view());
            lacks |= before == null || !before.isOf(job, shop.site());
        }
        fill(rows, state);
        // the job that was chosen comes first: it is worked out for all workbenches, with nothing else beside it
        if (lacks && !working && !state.working()) {
            workOut(shop);
        }
    }

    private static Known known(Job job, Site site, JobView view) {
        return new Known(job, site.library(), site.shop(), view);
    }

    private void fill(List<JobView> rows, DeskState state) {
        filling = true;
        try {
            list.show(rows);
            int chosen = state.jobId()
                    .map(id -> rows.stream().map(JobView::id).toList().indexOf(id))
                    .orElse(-1);
            list.setSelectedIndex(chosen);
            if (chosen >= 0 && rows.get(chosen).trouble().isEmpty()) {
                page.show(rows.get(chosen));
                cards.show(right, "job");
            } else if (chosen >= 0) {
                hint.say(rows.get(chosen).title(), rows.get(chosen).trouble());
                cards.show(right, "hint");
            } else {
                hint.say(Words.of("jobs.none.heading"), Words.of(rows.isEmpty() ? "jobs.none" : "jobs.choose"));
                cards.show(right, "hint");
            }
        } finally {
            filling = false;
        }
    }

    /** Works out the jobs that are not known as they are now; edits made meanwhile lead to another round. */
    private void workOut(OpenShop shop) {
        working = true;
        JobViews views = new JobViews(shop.shop(), desk.readout().locale());
        Map<String, Known> before = Map.copyOf(known);
        desk.run(new Task<>(
                Words.of("jobs.working"),
                progress -> workedOut(shop, views, before, progress),
                found -> {
                    working = false;
                    known.putAll(found);
                    show(desk.state());
                },
                fault -> working = false));
    }

    private static Map<String, Known> workedOut(
            OpenShop shop, JobViews views, Map<String, Known> before, Task.Progress progress) {
        Map<String, Known> found = new HashMap<>();
        List<Job> jobs = shop.jobs();
        for (int i = 0; i < jobs.size() && !progress.cancelled(); i++) {
            Job job = jobs.get(i);
            Known old = before.get(job.id());
            if (old == null || !old.isOf(job, shop.site())) {
                found.put(job.id(), known(job, shop.site(), view(job, shop.site(), views)));
            }
            progress.at((i + 1.0) / jobs.size());
        }
        return found;
    }

    private static JobView view(Job job, Site site, JobViews views) {
        try {
            return views.of(site.work(job));
        } catch (WorkspaceException e) {
            return JobViews.trouble(job, e.getMessage());
        }
    }
}
