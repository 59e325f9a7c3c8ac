package baywright.workspace;

import baywright.plan.JobGoal;
import baywright.plan.Plan;
import baywright.safety.JobSafety;
import baywright.vehicle.Survey;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** The parts of a job while some of them are replaced: the one place that copies them all, so that none is forgotten. */
final class JobParts {

    String id;
    String title;
    String customer;
    Job.Vehicle vehicle;
    int vehicles;
    Optional<LocalDateTime> arrives;
    Optional<LocalDateTime> wanted;
    Optional<BigDecimal> cap;
    Optional<String> rate;
    List<String> wishes;
    List<JobGoal> goals;
    Survey survey;
    Plan plan;
    BigDecimal discountLabourPercent;
    JobSafety safety;
    Optional<String> language;
    BigDecimal discountPercent;
    List<JobPhoto> photos;

    JobParts(Job job) {
        id = job.id();
        title = job.title();
        customer = job.customer();
        vehicle = job.vehicle();
        vehicles = job.vehicles();
        arrives = job.arrives();
        wanted = job.wanted();
        cap = job.cap();
        rate = job.rate();
        wishes = job.wishes();
        goals = job.goals();
        survey = job.survey();
        plan = job.plan();
        discountLabourPercent = job.discountLabourPercent();
        safety = job.safety();
        language = job.language();
        discountPercent = job.discountPercent();
        photos = job.photos();
    }

    Job job() {
        return new Job(
                id,
                title,
                customer,
                vehicle,
                vehicles,
                arrives,
                wanted,
                cap,
                rate,
                wishes,
                goals,
                survey,
                plan,
                discountLabourPercent,
                safety,
                language,
                discountPercent,
                photos);
    }
}
