package hark.assessment;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Everything Hark can say about a mission at a time: one immutable value. Every page, table, export
 * and document is a view of it. Names of the parts are those of the JSON contract; what people need
 * beside the contract follows after it.
 *
 * @param horizonDays how far it looks ahead, days
 * @param members number of simulated bodies
 * @param remainder weight of event sets larger than two, at the pairs' mean likelihood
 * @param remainderBound the same if those sets explained the evidence perfectly
 * @param misfit predictive tail probability of the evidence: small means that no member explains it
 *     well
 * @param silence how long and over how many listened passes nothing was heard
 * @param crewHoursPerWeek hours the mission file grants
 * @param warnings what {@code hark check} warns of, as lines
 * @param treeDisagreements event sets that count here and of which the fault tree says otherwise
 *     than the simulation
 * @param longLook dates of return beyond the horizon; empty unless asked for
 * @param tree the fault tree with its weights, the top first, then in the order a walk meets them
 */
public record Assessment(
    String mission,
    Instant now,
    Instant separation,
    double horizonDays,
    int members,
    long seed,
    double remainder,
    double remainderBound,
    double misfit,
    Silence silence,
    List<Explanation> explanations,
    List<CauseView> causes,
    List<Group> groups,
    List<ObjectView> objects,
    List<StationView> stations,
    List<EvidenceView> evidence,
    List<EnergyPoint> energy,
    List<Shadow> shadows,
    double cutoffSoc,
    List<Window> windows,
    Plan plan,
    List<GoingOn> goingOn,
    double crewHoursPerWeek,
    List<ProcedureView> procedures,
    List<String> warnings,
    List<TreeDisagreement> treeDisagreements,
    Optional<LongLook> longLook,
    List<TreeNode> tree) {

  /** The same with a look beyond the horizon. */
  public Assessment with(LongLook look) {
    return new Assessment(
        mission,
        now,
        separation,
        horizonDays,
        members,
        seed,
        remainder,
        remainderBound,
        misfit,
        silence,
        explanations,
        causes,
        groups,
        objects,
        stations,
        evidence,
        energy,
        shadows,
        cutoffSoc,
        windows,
        plan,
        goingOn,
        crewHoursPerWeek,
        procedures,
        warnings,
        treeDisagreements,
        Optional.of(look),
        tree);
  }

  /**
   * Days since something was heard, and passes listened to in vain since then. {@code lastHeard}
   * empty: never heard.
   */
  public record Silence(Optional<Instant> lastHeard, int silentPasses) {}

  /** A disjoint explanation: this set of events and no other. */
  public record Explanation(
      List<String> events, String title, double prior, double posterior, double error) {}

  /**
   * A cause's marginal: events begun by now; {@code later} those still to come.
   *
   * @param inseparableGroup id of a {@link Group}, or empty
   */
  public record CauseView(
      String id,
      String title,
      String branch,
      double prior,
      double posterior,
      double later,
      double error,
      double ifPriorHalved,
      double ifPriorDoubled,
      Optional<String> inseparableGroup,
      SelfRecovery selfRecovery,
      String mechanism,
      String signature,
      CauseDetail detail) {}

  /**
   * What to do about a cause and what would settle it.
   *
   * @param endedBy what ends it, in words; empty when nothing does
   * @param confirms what would speak for it
   * @param refutes what would speak against it
   * @param procedures titles of the mission's procedures that address it
   * @param begins when it begins, given that it happens
   * @param sources where its prior is anchored
   */
  public record CauseDetail(
      List<String> endedBy,
      String confirms,
      String refutes,
      List<String> procedures,
      String begins,
      List<String> sources) {}

  /**
   * A gate or event of the fault tree. Nothing here says that its inputs exclude each other.
   *
   * @param join {@code or}, {@code and}, {@code at_least}, {@code not} for a gate; {@code event}
   *     for a basic event; {@code elsewhere} for a leaf whose truth is kept elsewhere
   * @param atLeast how many of the inputs; 0 but for {@code at_least}
   * @param inputs ids, in the order written
   * @param prior that it holds within 30 days, all events independent; empty for {@code elsewhere}
   * @param now that it holds by now, of all sets up to two events; empty for {@code elsewhere}
   * @param error Monte-Carlo standard error of {@code now}
   */
  public record TreeNode(
      String id,
      String title,
      String join,
      int atLeast,
      List<String> inputs,
      OptionalDouble prior,
      OptionalDouble now,
      double error) {
    /** Keeps its own copy. */
    public TreeNode {
      inputs = List.copyOf(inputs);
    }
  }

  /**
   * When a cause would end by itself, in the members that have it.
   *
   * @param probability that the first audible time without any action lies within the horizon
   * @param note in words: "not before…", "never"
   */
  public record SelfRecovery(
      double probability,
      Optional<Instant> p10,
      Optional<Instant> p50,
      Optional<Instant> p90,
      String note) {}

  /**
   * A means that would tell causes of a group apart.
   *
   * @param means what would have to be done
   * @param shows which causes would show something then, and what
   * @param doesNot which would not
   */
  public record Separator(String means, String shows, String doesNot) {}

  /** Causes that share one likelihood: listening cannot separate them. */
  public record Group(
      String id,
      String title,
      List<String> causes,
      double prior,
      double posterior,
      double error,
      String wouldSeparate,
      List<Separator> separators) {}

  /** A catalogued object and how likely it is ours; {@code none} for none of them. */
  public record ObjectView(String object, String name, double prior, double posterior) {}

  /**
   * A station and how likely it works as believed.
   *
   * @param faults what it would be if not, likeliest first; with {@code works} they sum to 1
   */
  public record StationView(String station, double prior, double works, List<FaultView> faults) {
    /** Keeps its own copy. */
    public StationView {
      faults = List.copyOf(faults);
    }

    /** A station of which no fault is told. */
    public StationView(String station, double prior, double works) {
      this(station, prior, works, List.of());
    }
  }

  /** A fault of a station, its words, and how likely it has it. */
  public record FaultView(String id, String title, double posterior) {}

  /**
   * An entry and how it moved each cause, in bits of odds.
   *
   * @param tail predictive tail probability of this entry alone: small means that no member
   *     explains it well; empty for what is not weighed
   */
  public record EvidenceView(
      int entry,
      Instant at,
      String kind,
      String title,
      Map<String, Double> bits,
      OptionalDouble tail) {
    /** An entry whose tail is not known. */
    public EvidenceView(
        int entry, Instant at, String kind, String title, Map<String, Double> bits) {
      this(entry, at, kind, title, bits, OptionalDouble.empty());
    }
  }

  /** Weight at separation of three or more events at once, which are not worked out. */
  public double remainderAtStart() {
    return Math.max(0, 1 - explanations.stream().mapToDouble(Explanation::prior).sum());
  }

  /** State of charge and activity at a time. {@code sunlit} is the share of sunlight. */
  public record EnergyPoint(
      Instant time,
      double socP05,
      double socP25,
      double socP50,
      double socP75,
      double socP95,
      double transmitting,
      double sunlit,
      States states) {}

  /** Shares of the bus states; they sum to 1. */
  public record States(double off, double boot, double safe, double nominal) {}

  /** A stretch without full sunlight, for the time axis. */
  public record Shadow(Instant from, Instant to) {}

  /**
   * A time at which a station could hear at least one candidate.
   *
   * @param id station and AOS of the heaviest candidate
   * @param geometry the pass of each candidate
   * @param minutesSinceSunrise at culmination, minutes on board since the end of shadow; negative
   *     values mean in shadow
   * @param planned id of the planned procedure, or empty
   * @param notAvailable why nobody may sit there then, in words; empty when somebody may
   */
  public record Window(
      String id,
      String station,
      Instant aos,
      Instant culmination,
      Instant los,
      double maxElevationDeg,
      List<Geometry> geometry,
      double beaconOn,
      double beaconOnError,
      double socP25,
      double socP50,
      double socP75,
      double minutesSinceSunrise,
      boolean unattended,
      Optional<String> planned,
      List<Option> options,
      Optional<String> notAvailable) {}

  /** One candidate's pass in a window. */
  public record Geometry(
      String object,
      Instant aos,
      Instant culmination,
      Instant los,
      double maxElevationDeg,
      double aosAzimuthDeg,
      double culminationAzimuthDeg,
      double losAzimuthDeg,
      double culminationRangeKm,
      boolean sunlitAtCulmination) {}

  /**
   * A procedure at a window.
   *
   * @param reach probability that a command would be received and could matter; empty for options
   *     that send nothing
   * @param rank 1 is best
   * @param cautions for whoever decides on it in this window, beside those of the procedure
   */
  public record Option(
      String procedure,
      String title,
      double heardThisPass,
      double heardThisPassError,
      double heardByHorizon,
      double informationBits,
      double costHours,
      double hazard,
      Optional<Double> reach,
      int rank,
      String why,
      List<String> cautions) {
    /** An option that needs no caution of its own. */
    public Option(
        String procedure,
        String title,
        double heardThisPass,
        double heardThisPassError,
        double heardByHorizon,
        double informationBits,
        double costHours,
        double hazard,
        Optional<Double> reach,
        int rank,
        String why) {
      this(
          procedure,
          title,
          heardThisPass,
          heardThisPassError,
          heardByHorizon,
          informationBits,
          costHours,
          hazard,
          reach,
          rank,
          why,
          List.of());
    }
  }

  /** What to do over the horizon. */
  public record Plan(
      List<Choice> choices,
      double costHours,
      double heardByHorizon,
      double upperBound,
      double meanDaysToHear) {}

  /** A procedure chosen for a window. */
  public record Choice(String window, String procedure) {}

  /** Weight found against hours spent. */
  public record GoingOn(double costHours, double heard) {}

  /** A procedure as people read it. */
  public record ProcedureView(
      String id,
      String title,
      String kind,
      List<String> cautions,
      List<String> forbiddenIf,
      String markdown) {}
}
