package hark.ensemble;

import hark.evidence.Entry;
import hark.power.SimulationRequest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * An ensemble that is drawn from the prior alone and flown once, from separation to a far end, and
 * then answers for any record at any time in between: a diagnosis only weighs. For many records of
 * one mission, such as simulated campaigns.
 *
 * <p>Good for records of silences, sounds, checks and a few telemetered numbers of ordinary
 * sharpness. Nothing is drawn where the evidence points to: what narrows an onset to hours, a
 * voltage to hundredths, a carrier to some hertz, or asks for a very unlucky hearing, leaves few
 * bodies behind a cause. {@link Posterior#effectiveBodies} tells how many and the stated errors
 * follow, roughly; {@link Diagnosis#of} draws more where they are wanted. On the demo's record, 720
 * bodies a set (12,800 in all) leave 5 to 15 behind most causes that may begin at any time, where
 * guided draws give 45.
 *
 * <p>Sunlight is that of the element sets known at the mission's time when the ensemble was built;
 * bursts are followed as {@link BurstPattern} rounds them.
 *
 * <p>Memory, for two weeks: some 25 kB a body, and at most {@value KeptHearings#MOST} remembered
 * answers of some 4 kB. Immutable but for what is remembered, which never changes an answer;
 * several threads may ask at once.
 */
public final class KeptEnsemble {
  /** Groups of hearings; a multiple of the groups of bodies. */
  private static final int HEARING_GROUPS = 4 * Draws.GROUPS;

  /** Hearings of each group for each object. */
  private static final int HEARINGS = 12;

  /** Rows of pairs, of whose events both change the electrical system or not. */
  private static final int ROWS_PER_PAIR = 4 * Draws.GROUPS;

  private static final int ROWS_PER_SHARED_PAIR = 8 * Draws.GROUPS;

  /** Bodies that are lighter when a command is sent are not flown anew for it. */
  private static final double WORTH_COMMANDING = 1e-6;

  private final DiagnosisInput mission;
  private final Sky sky;
  private final SimulationRequest flight;
  private final Population population;
  private final HearingNodes[] nodes;
  private final Ear ear;
  private final KeptHearings hearings = new KeptHearings(HEARING_GROUPS);

  private KeptEnsemble(DiagnosisInput mission, Workers workers) {
    this.mission = mission;
    sky = Sky.of(mission);
    double end = mission.seconds(mission.end());
    flight = KeptBodies.flight(end);
    Population.Setting setting =
        new Population.Setting(sky.illumination(), OnsetProposal.evenUntil(end), flight);
    Growth growth = new Growth(mission, setting);
    growth.begin(ROWS_PER_PAIR, ROWS_PER_SHARED_PAIR);
    growth.simulate(workers);
    population = growth.population();
    nodes = new PlainNodes(mission, HEARING_GROUPS, HEARINGS).draw();
    ear = new Ear(mission.beacons(), mission.body().typical());
  }

  /**
   * Draws and flies; takes about 0.1 ms of processor a body and day.
   *
   * @param mission its evidence is ignored; its time says which element sets are known, and its end
   *     is the last that may be asked about
   */
  public static KeptEnsemble of(DiagnosisInput mission, Workers workers) {
    DiagnosisInput plain = mission.at(mission.now(), mission.end(), List.of());
    return new KeptEnsemble(plain, workers);
  }

  /** Number of bodies. */
  public int bodies() {
    return population.bodies.size();
  }

  /**
   * What a record leaves of the prior at a time.
   *
   * @param evidence entries in force by then, in the order of time
   * @throws IllegalArgumentException when the time is after the end of the ensemble
   */
  public Posterior posterior(Instant now, List<Entry> evidence, Workers workers) {
    Asked asked = ask(inside(now, now.plusSeconds(1), evidence), workers);
    return new Posterior(asked.weighed(), asked.weighed().likelihood());
  }

  /**
   * The same with what lies ahead, as the plan needs it.
   *
   * @param end horizon; not after the end of the ensemble
   */
  public Diagnosis diagnosis(Instant now, Instant end, List<Entry> evidence, Workers workers) {
    DiagnosisInput input = inside(now, end, evidence);
    Asked asked = ask(input, workers);
    return Diagnosis.of(
        asked.weighed(), (weights, times) -> ahead(input, asked.whole(), weights), workers);
  }

  /** One record weighed, with its bodies up to the far end. */
  private record Asked(Weighed weighed, Population whole) {}

  private Asked ask(DiagnosisInput input, Workers workers) {
    Sky there = sky.at(input);
    List<Clue> clues = new Clues(input, there).all();
    Population whole = asked(input, there, clues, workers);
    return new Asked(weighed(input, there, clues, upToNow(input, whole), workers), whole);
  }

  private DiagnosisInput inside(Instant now, Instant end, List<Entry> evidence) {
    if (end.isAfter(mission.end().plusSeconds(1))) {
      throw new IllegalArgumentException(
          "the ensemble ends at " + mission.end() + ", before " + end);
    }
    return mission.at(now, end, evidence);
  }

  private static Population upToNow(DiagnosisInput input, Population whole) {
    double now = input.seconds(input.now());
    double from = Population.gridStart(input);
    List<Body> past = whole.bodies.stream().map(body -> KeptBodies.cut(body, from, now)).toList();
    return new Population(whole.sets, whole.members, past, whole.draws);
  }

  private Weighed weighed(
      DiagnosisInput input, Sky there, List<Clue> clues, Population weighing, Workers workers) {
    Remembering memory = hearings.during(input, clues, weighing.bodies.size());
    Weighing made =
        new Weighing(
            input.stations().size(), weighing, clues, nodes, new Weigher(input, ear, memory));
    made.runShared(workers);
    return new Weighed(input, there, clues, weighing, nodes, ear, made.released());
  }

  /** The population with answers to telemetry; where commands were sent, half of it takes each. */
  private Population asked(DiagnosisInput input, Sky there, List<Clue> clues, Workers workers) {
    List<Frame> frames =
        clues.stream().filter(Frame.class::isInstance).map(Frame.class::cast).toList();
    KeptBodies kept = new KeptBodies(sky.illumination(), flight, population.bodies);
    List<Body> bodies = kept.telling(frames, workers);
    Population plain =
        new Population(population.sets, population.members, bodies, population.draws);
    return SentCommand.of(input).isEmpty()
        ? plain
        : commanded(
            input, weighed(input, there, before(input, clues), plain, workers), kept, workers);
  }

  /** What was known before the first command. */
  private static List<Clue> before(DiagnosisInput input, List<Clue> clues) {
    double first = SentCommand.of(input).get(0).seconds();
    return clues.stream()
        .filter(clue -> input.seconds(input.evidence().get(clue.entry()).evidence().at()) < first)
        .toList();
  }

  private Population commanded(
      DiagnosisInput input, Weighed before, KeptBodies kept, Workers workers) {
    Population plain = before.population();
    List<SentCommand> commands = SentCommand.of(input);
    double[] weights =
        plain.bodyWeights(Weights.of(plain, before.likelihood(), Weights.NO_GROUP).member());
    List<List<SentCommand>> taken =
        new ArrayList<>(Collections.nCopies(plain.bodies.size(), List.of()));
    List<Member> members = new ArrayList<>(plain.members);
    for (int m = 0; m < members.size(); m++) {
      Member member = members.get(m);
      if (weights[member.body()] >= WORTH_COMMANDING) {
        List<SentCommand> own = taken(commands, member.draw());
        taken.set(member.body(), own);
        members.set(m, member.with(Growth.freedBy(own, member.radio(), causes(member))));
      }
    }
    List<Body> flown = kept.commanded(plain.bodies, taken, workers);
    return new Population(plain.sets, members, flown, plain.draws);
  }

  private List<Cause> causes(Member member) {
    return population.sets.get(member.set()).causes().stream().map(mission.causes()::get).toList();
  }

  /** The commands that a row takes as received. */
  private List<SentCommand> taken(List<SentCommand> commands, int draw) {
    SplittableRandom random = new SplittableRandom(mission.seed() * 1_000_003L + draw * 8191L + 29);
    return commands.stream().filter(sent -> random.nextDouble() < SentCommand.TAKEN).toList();
  }

  private static Body[] ahead(DiagnosisInput input, Population whole, double[] memberWeight) {
    double[] weights = whole.bodyWeights(memberWeight);
    double now = input.seconds(input.now());
    double end = input.seconds(input.end());
    return IntStream.range(0, weights.length)
        .mapToObj(
            b ->
                weights[b] >= Population.NEGLIGIBLE
                    ? KeptBodies.cut(whole.bodies.get(b), now, end)
                    : null)
        .toArray(Body[]::new);
  }
}
