package baywright.swing;

import baywright.swing.ShopView.Figure;
import baywright.swing.ShopView.FindingView;
import baywright.swing.ShopView.Grade;
import baywright.swing.ShopView.JobView;
import baywright.swing.ShopView.StepView;
import java.util.List;

/** Invented shops to show. */
final class Shops {

    private Shops() {}

    static ShopView twoJobs() {
        List<StepView> steps = List.of(
                new StepView("s1", "Arrival check", "whole vehicle", "Mon 08:00", "12 min"),
                new StepView("s2", "Contact wash", "bonnet, roof, doors and 9 more", "Mon 08:14", "38 min"),
                new StepView("s3", "Iron fallout removal", "bonnet, roof, doors and 9 more", "Mon 08:52", "21 min"));
        List<FindingView> findings = List.of(
                new FindingView(Grade.STOP, "s3", "Iron fallout removal needs 'rinsed' on bonnet; nobody set it"),
                new FindingView(Grade.WARN, "s2", "Contact wash would rather find 'shade'"),
                new FindingView(Grade.NOTE, "", "Tailgate was repainted 14 months ago"));
        List<Figure> figures = List.of(
                new Figure("Hands-on", "11 h 14 min"),
                new Figure("Materials", "GBP 61.40"),
                new Figure("Net", "GBP 592.25"),
                new Figure("VAT 20 %", "GBP 118.45"),
                new Figure("Price", "GBP 710.70"));
        return new ShopView(
                "Millrace Works",
                List.of(
                        new JobView(
                                "Family estate with a cap",
                                "dark green estate · M. Rowan",
                                "",
                                figures,
                                steps,
                                findings),
                        new JobView("Six vans", "six white medium vans · Deliveries", "", figures, steps, List.of())));
    }

    static ShopView noJobs() {
        return new ShopView("Saltmarsh Quay", List.of());
    }
}
