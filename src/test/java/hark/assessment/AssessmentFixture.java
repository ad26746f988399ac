package hark.assessment;

import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.EvidenceView;
import hark.assessment.Assessment.Explanation;
import hark.assessment.Assessment.GoingOn;
import hark.assessment.Assessment.Group;
import hark.assessment.Assessment.ObjectView;
import hark.assessment.Assessment.Plan;
import hark.assessment.Assessment.Silence;
import hark.assessment.Assessment.StationView;
import hark.assessment.Assessment.Window;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * An invented assessment, whole and consistent, for tests of everything that shows one. Start from
 * {@link #sandpiper()}, change what the test is about, then {@link #build()}. The numbers are made
 * up here and stand for no computation: explanations and remainder sum to 1, causes are their
 * marginals, the group is the sum of its causes.
 */
public final class AssessmentFixture {
  /** The fixture's clock. */
  public static final Instant NOW = Instant.parse("2026-11-14T09:30:00Z");

  /** The fixture's separation. */
  public static final Instant SEPARATION = Instant.parse("2026-11-05T04:10:00Z");

  private Instant now = NOW;
  private double horizonDays = 3;
  private double remainder = 0.008;
  private double misfit = 0.31;
  private Silence silence = new Silence(Optional.of(Instant.parse("2026-11-06T15:22:40Z")), 11);
  private List<Explanation> explanations = FixtureCauses.explanations();
  private List<CauseView> causes = FixtureCauses.causes();
  private List<Group> groups = FixtureCauses.groups();
  private List<ObjectView> objects =
      List.of(
          new ObjectView("98101", "OBJECT A", 0.45, 0.52),
          new ObjectView("98102", "OBJECT B", 0.30, 0.27),
          new ObjectView("98103", "OBJECT C", 0.20, 0.16),
          new ObjectView("none", "none of these", 0.05, 0.05));
  private List<StationView> stations =
      List.of(new StationView("Fen Hill", 0.95, 0.982), new StationView("Quay", 0.90, 0.915));
  private List<Window> windows = FixtureWindows.windows();
  private Plan plan = FixtureWindows.plan();
  private List<GoingOn> goingOn =
      List.of(
          new GoingOn(0, 0),
          new GoingOn(2, 0.11),
          new GoingOn(5, 0.22),
          new GoingOn(10, 0.34),
          new GoingOn(20, 0.43));
  private List<String> warnings = List.of();
  private List<EvidenceView> evidence = FixtureRecord.evidence();
  private List<TreeDisagreement> treeDisagreements = List.of();
  private Optional<LongLook> longLook = Optional.empty();

  private AssessmentFixture() {}

  /** A satellite heard twice in its first two days, then silent for eleven passes. */
  public static AssessmentFixture sandpiper() {
    return new AssessmentFixture();
  }

  public AssessmentFixture now(Instant value) {
    now = value;
    return this;
  }

  public AssessmentFixture horizonDays(double value) {
    horizonDays = value;
    return this;
  }

  public AssessmentFixture remainder(double value) {
    remainder = value;
    return this;
  }

  public AssessmentFixture misfit(double value) {
    misfit = value;
    return this;
  }

  public AssessmentFixture silence(Silence value) {
    silence = value;
    return this;
  }

  public AssessmentFixture explanations(List<Explanation> value) {
    explanations = value;
    return this;
  }

  public AssessmentFixture causes(List<CauseView> value) {
    causes = value;
    return this;
  }

  public AssessmentFixture groups(List<Group> value) {
    groups = value;
    return this;
  }

  public AssessmentFixture objects(List<ObjectView> value) {
    objects = value;
    return this;
  }

  public AssessmentFixture stations(List<StationView> value) {
    stations = value;
    return this;
  }

  public AssessmentFixture windows(List<Window> value) {
    windows = value;
    return this;
  }

  public AssessmentFixture plan(Plan value) {
    plan = value;
    return this;
  }

  public AssessmentFixture goingOn(List<GoingOn> value) {
    goingOn = value;
    return this;
  }

  public AssessmentFixture warnings(List<String> value) {
    warnings = value;
    return this;
  }

  public AssessmentFixture evidence(List<EvidenceView> value) {
    evidence = value;
    return this;
  }

  public AssessmentFixture treeDisagreements(List<TreeDisagreement> value) {
    treeDisagreements = value;
    return this;
  }

  public AssessmentFixture longLook(LongLook value) {
    longLook = Optional.of(value);
    return this;
  }

  /** The assessment as it stands. */
  public Assessment build() {
    return new Assessment(
        "Sandpiper",
        now,
        SEPARATION,
        horizonDays,
        3200,
        1,
        remainder,
        0.013,
        misfit,
        silence,
        explanations,
        causes,
        groups,
        objects,
        stations,
        evidence,
        FixtureRecord.energy(now, horizonDays),
        FixtureRecord.shadows(now, horizonDays),
        0.12,
        windows,
        plan,
        goingOn,
        20,
        FixtureWindows.procedures(),
        warnings,
        treeDisagreements,
        longLook,
        FixtureCauses.tree());
  }
}
