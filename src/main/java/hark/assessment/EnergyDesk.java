package hark.assessment;

import hark.ensemble.BodyList;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.mission.Mission;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.Map;

/**
 * Answers the electrical lead's questions about the possibilities of one assessment. The first
 * question simulates once more the bodies that count; later ones share that. Safe for several
 * threads; the same question has the same answer.
 */
public final class EnergyDesk {
  /** Bodies simulated again; of more a systematic resample by weight is taken. */
  public static final int MOST_BODIES = 2000;

  /** Days that returns are followed at most. */
  public static final int MOST_RECOVERY_DAYS = 730;

  /** Usual step of a trace, s. */
  public static final int TRACE_STEP_SECONDS = 600;

  private final Mission mission;
  private final EnergyView view;
  private final BodyList list;
  private final BodyList.Sample sample;
  private final OrbitStarts orbits;
  private final int threads;
  private Flown asIs;

  private EnergyDesk(Mission mission, Diagnosis diagnosis, EnergyView view, int threads) {
    this.mission = mission;
    this.view = view;
    this.threads = threads;
    list = diagnosis.bodyList();
    sample = list.sample(MOST_BODIES);
    orbits = OrbitStarts.of(list, diagnosis.eclipses());
  }

  static EnergyDesk of(Mission mission, Diagnosis diagnosis, EnergyView view, int threads) {
    return new EnergyDesk(mission, diagnosis, view, threads);
  }

  /** Fan, balance of each orbit, a year of sunlight. */
  public EnergyReport report() {
    Flown flown = asIs();
    DiagnosisInput input = list.input();
    YearView year = YearView.of(input);
    return new EnergyReport(
        mission.name(),
        input.now(),
        input.end(),
        list.count(),
        sample.count(),
        view.energy(),
        view.shadows(),
        view.cutoffSoc(),
        flown.balance(),
        year.months(),
        year.fullSun(),
        year.seasons(),
        new WhyFinder(list, flown.run()).examples(input.now()));
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
    Flown before = asIs();
    return new Comparison(list, before, fly(list.models(changed.body()))).of(overrides);
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
    return new Tracer(list, mission.body()).trace(member, stepSeconds);
  }

  /** The same member with other numbers, as in {@link #whatIf}. */
  public MemberTrace trace(int member, int stepSeconds, Mission changed) {
    refuseAnotherFlight(changed);
    return new Tracer(list, changed.body()).trace(member, stepSeconds);
  }

  /** Which states the bus may be in at a time, and how it came into each. */
  public WhyThere whyAt(Instant time) {
    return new WhyFinder(list, asIs().run()).at(time);
  }

  /**
   * Follows bodies of each cause that counts for so many days without any action: a second or two
   * for a year.
   *
   * @throws BadInput when the days are not between 1 and {@value #MOST_RECOVERY_DAYS}
   */
  public LongLook longLook(int days) {
    if (days < 1 || days > MOST_RECOVERY_DAYS) {
      throw BadInput.of(
          days + " days cannot be followed",
          "--recovery-days",
          "give 1 to " + MOST_RECOVERY_DAYS + "; elements say little of shadows later than that");
    }
    return Threads.with(threads, workers -> LongLooks.of(list, days, workers));
  }

  /** How many members there are. */
  public int members() {
    return list.count();
  }

  private synchronized Flown asIs() {
    if (asIs == null) {
      asIs = fly(list.models());
    }
    return asIs;
  }

  private Flown fly(BodyList.Models models) {
    return Threads.with(threads, workers -> Flown.of(list, sample, models, orbits, workers));
  }
}
