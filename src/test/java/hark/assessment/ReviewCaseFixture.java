package hark.assessment;

import hark.assessment.Assessment.GoingOn;
import hark.assessment.ReviewCase.Arguments;
import hark.assessment.ReviewCase.Dated;
import hark.assessment.ReviewCase.Effort;
import hark.assessment.ReviewCase.LastDate;
import hark.assessment.ReviewCase.Part;
import hark.assessment.ReviewCase.Shift;
import hark.assessment.ReviewCase.Step;
import hark.assessment.ReviewCase.Unheard;
import hark.assessment.ReviewCase.Watch;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An invented case for going on; its numbers stand for no computation. Weights sum to 1. */
public final class ReviewCaseFixture {
  private ReviewCaseFixture() {}

  /** That of the invented satellite of {@link AssessmentFixture}. */
  public static ReviewCase sandpiper() {
    return new ReviewCase(
        "Sandpiper | one",
        AssessmentFixture.NOW,
        Instant.parse("2026-11-17T09:30:00Z"),
        new Assessment.Silence(Optional.of(Instant.parse("2026-11-06T15:22:40Z")), 11),
        20,
        8.5,
        0.34,
        0.02,
        0.29,
        List.of(
            new GoingOn(0, 0),
            new GoingOn(2, 0.11),
            new GoingOn(5, 0.22),
            new GoingOn(10, 0.34),
            new GoingOn(20, 0.43)),
        List.of(new Step(0, 10, 0.34), new Step(10, 20, 0.09)),
        new Effort(0.01, 10, OptionalDouble.empty(), 85, 0.21),
        List.of(
            new Dated(
                Instant.parse("2026-11-22T11:00:00Z"),
                Optional.of(Instant.parse("2026-11-29T11:00:00Z")),
                0,
                "computer hung ends by itself",
                0.07,
                "24 simulated cases, no command",
                Optional.of("send-nothing")),
            new Dated(
                Instant.parse("2027-02-02T00:00:00Z"),
                Optional.of(Instant.parse("2027-02-20T00:00:00Z")),
                3,
                "full sun: no shadow on any orbit",
                Double.NaN,
                "orbit and Sun",
                Optional.of("wait-for-full-sun"))),
        Optional.of(
            new LastDate(
                506,
                0.0104,
                Instant.parse("2027-08-01T00:00:00Z"),
                Optional.of(Instant.parse("2029-09-01T00:00:00Z")),
                Optional.empty())),
        List.of(
            new Unheard("sends", "It sends now and has been missed", 0.3, parts("array shortfall")),
            new Unheard("silent", "It will not be heard again", 0.692, parts("Spacecraft lost"))),
        0.008,
        Optional.of(
            new Watch("Quay", true, 14, 1.4, 0.25, List.of(new Part("array shortfall", 0.2)))),
        List.of(new Shift("prior of array shortfall", "halved", 0.28, "doubled", 0.41)),
        List.of("Priors are beliefs."),
        new Arguments(
            List.of("The next 10 h of people's time hear it with 34 %."),
            List.of(),
            "Stopping is defensible once 20 h more have brought nothing."));
  }

  private static List<Part> parts(String title) {
    return List.of(new Part(title, 0.22));
  }
}
