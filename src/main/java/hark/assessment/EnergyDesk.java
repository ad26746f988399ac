package hark.assessment;

import hark.assessment.Assessment.EnergyPoint;
import hark.ensemble.BodyList;
import hark.ensemble.BodyRun;
import hark.ensemble.EnergyFan;
import hark.ensemble.Workers;
import hark.mission.Mission;
import hark.orbit.Eclipse;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * Answers the electrical lead's questions about the possibilities of one assessment. The first
 * question simulates once more the bodies that count; later ones share that. Safe for several
 * threads; the same question has the same answer.
 */
public final class EnergyDesk {
  /** Bodies simulated again; of more a systematic resample by weight is taken. */
  public static final int MOST_BODIES = 2000;

  /** Usual step of a trace, s. */
  public static final int TRACE_STEP_SECONDS = 600;

  private final Mission mission;
  private final Assessment assessment;
  private final BodyList list;
  private final BodyList.Sample sample;
  private final OrbitStarts orbits;
  private final int threads;
  private BodyRun asIs;

  EnergyDesk(
      Mission mission, Assessment assessment, BodyList list, List<Eclipse> shadows, int threads) {
    this.mission = mission;
    this.assessment = assessment;
    this.list = list;
    this.threads = threads;
    sample = list.sample(MOST_BODIES);
    orbits = OrbitStarts.of(list, shadows);
  }

  /** Fan, balance of each orbit, a year of sunlight. */
  public EnergyReport report() {
    BodyRun run = asIs();
    return new EnergyReport(
        assessment.mission(),
        assessment.now(),
        list.input().end(),
        list.count(),
        sample.count(),
        assessment.energy(),
        assessment.shadows(),
        assessment.cutoffSoc(),
        orbits.balance(run),
        List.of(),
        List.of(),
        "",
        new WhyFinder(list, run).examples(assessment.now()));
  }

  /**
   * The same possibilities with other numbers.
   *
   * @param overrides keys of the mission file and their values, as people wrote them
   * @param changed the mission read with them
   * @throws BadInput when they move separation or the orbit: then the possibilities are others
   */
  public WhatIf whatIf(Map<String, String> overrides, Mission changed) {
    refuseAnotherFlight(changed);
    BodyRun before = asIs();
    return Threads.with(
        threads,
        workers -> {
          BodyRun after = run(list.models(changed.body()), workers);
          return new Comparison(list, orbits, before, after).of(overrides, workers);
        });
  }

  private void refuseAnotherFlight(Mission changed) {
    boolean sameTime = changed.separation().equals(mission.separation());
    if (!sameTime || !changed.sources().equals(mission.sources())) {
      throw BadInput.of(
          "a what-if keeps separation and orbit; these overrides change them",
          sameTime ? "orbit" : "spacecraft.separation",
          "change them in a copy of the mission folder and assess that");
    }
  }

  /** One member step by step, with every change of state; {@code member} counts from 1. */
  public MemberTrace trace(int member, int stepSeconds) {
    return new Tracer(list).trace(member, stepSeconds);
  }

  /** Which states the bus may be in at a time, and how it came into each. */
  public WhyThere whyAt(Instant time) {
    return new WhyFinder(list, asIs()).at(time);
  }

  /** How many members there are. */
  public int members() {
    return list.count();
  }

  private synchronized BodyRun asIs() {
    if (asIs == null) {
      asIs = Threads.with(threads, workers -> run(list.models(), workers));
    }
    return asIs;
  }

  private BodyRun run(BodyList.Models models, Workers workers) {
    return BodyRun.of(list, sample, models, orbits.seconds(), workers);
  }

  static EnergyPoint point(BodyList list, EnergyFan.Point point) {
    return new EnergyPoint(
        list.input().instant(point.seconds()),
        point.soc()[0],
        point.soc()[1],
        point.soc()[2],
        point.soc()[3],
        point.soc()[4],
        point.transmitting(),
        list.light().fractionAt(point.seconds()),
        states(point.states()));
  }

  static Assessment.States states(double[] shares) {
    return new Assessment.States(shares[0], shares[1], shares[2], shares[3]);
  }
}
