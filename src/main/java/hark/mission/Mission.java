package hark.mission;

import hark.ensemble.BeaconRadio;
import hark.ensemble.BodyPrior;
import hark.ensemble.Cause;
import hark.ensemble.OrbitSource;
import hark.ensemble.ReceiverRadio;
import hark.ensemble.Uncertain;
import hark.fault.FaultTree;
import hark.plan.PlanSettings;
import hark.plan.Procedure;
import hark.problem.Problem;
import hark.station.Station;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A mission folder, read and found valid. Immutable; nothing of it touches a disk any more.
 *
 * @param now the clock of a rehearsal or demo; empty for a mission that lives in real time
 * @param tumbleDegPerSecond tumble rate of the body (also among the body's numbers), deg/s
 * @param causes basic events, the mission's own over the stock ones
 * @param tree the fault tree over them
 * @param procedures stock and the mission's own
 * @param hazardLimit options above this hazard are ranked last, 0…1
 * @param warnings sensible to know, not wrong
 * @param crewRules what the crew keeps to beside its hours
 */
public record Mission(
    String name,
    Instant separation,
    Optional<Instant> now,
    double massKg,
    double areaSquareMeters,
    BodyPrior body,
    Uncertain tumbleDegPerSecond,
    List<BeaconRadio> beacons,
    ReceiverRadio receiver,
    List<OrbitSource> sources,
    List<Station> stations,
    double crewHoursPerWeek,
    List<Cause> causes,
    FaultTree tree,
    List<Procedure> procedures,
    double hazardLimit,
    List<Problem> warnings,
    CrewRules crewRules) {

  /** What a plan must keep to, none of this week's hours gone. */
  public PlanSettings planSettings() {
    return crewRules.settings(crewHoursPerWeek, hazardLimit);
  }

  /** The same with other causes and procedures. */
  public Mission with(List<Cause> otherCauses, List<Procedure> otherProcedures) {
    return copy(name, sources, stations, otherCauses, otherProcedures);
  }

  /** The same spacecraft on another orbit over other stations. */
  public Mission elsewhere(
      String otherName, List<OrbitSource> otherSources, List<Station> otherStations) {
    return copy(otherName, otherSources, otherStations, causes, procedures);
  }

  private Mission copy(
      String otherName,
      List<OrbitSource> otherSources,
      List<Station> otherStations,
      List<Cause> otherCauses,
      List<Procedure> otherProcedures) {
    return new Mission(
        otherName,
        separation,
        now,
        massKg,
        areaSquareMeters,
        body,
        tumbleDegPerSecond,
        beacons,
        receiver,
        otherSources,
        otherStations,
        crewHoursPerWeek,
        otherCauses,
        tree,
        otherProcedures,
        hazardLimit,
        warnings,
        crewRules);
  }
}
