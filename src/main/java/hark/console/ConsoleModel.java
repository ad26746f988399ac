package hark.console;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Window;
import hark.assessment.PlanDesk;
import hark.assessment.ReviewCase;
import hark.evidence.Entry;
import hark.journal.Journal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the console shows and where its form writes. The server knows no mission, journal or clock
 * beyond this; a test gives it a model of its own.
 */
public interface ConsoleModel {
  /**
   * Works everything out anew from what is recorded by now. Slow; the server calls it from one
   * worker thread only and never twice at once.
   */
  Answer assess();

  /**
   * A quick answer to what was recorded since {@link #assess} answered, until that answers again;
   * empty when there is none. Called by the same worker.
   */
  default Optional<Answer> provisional() {
    return Optional.empty();
  }

  /** Everything recorded so far, in order of number. */
  List<Entry> entries();

  /**
   * Appends an entry.
   *
   * @return its number, once it is on disk
   * @throws hark.problem.BadInput when it cannot be understood; then nothing is recorded
   */
  int append(NewEntry entry);

  /** The number of the entry that was written down under a token, if one was. */
  Optional<Integer> delivered(String token);

  /** Windows that have ended, latest first, so that an outcome can be logged for them. */
  List<PastWindow> pastWindows();

  /** How the sky looks from a window's station while it lasts; empty when that is not known. */
  Optional<SkyView> sky(Window window);

  /** What is needed to sit through a window; empty when its station is not known. */
  Optional<PassView> pass(Window window);

  /** By station, who may authorise a transmission there; a station may be left out. */
  Map<String, List<String>> mayAuthorise();

  /** The files the mission is made of; empty when nothing is known of them. */
  default Optional<MissionPapers> papers() {
    return Optional.empty();
  }

  /** What is known of the orbits; empty when nothing is known of the mission's files. */
  default Optional<MissionOrbit> orbit() {
    return Optional.empty();
  }

  /** Whether the record's chain holds; empty for a record without one. */
  default Optional<Journal.Verification> chain() {
    return Optional.empty();
  }

  /** The time it is for the mission. */
  Instant now();

  /** True when the mission carries its own clock, which stands still between entries. */
  boolean ownClock();

  /** The clock of a rehearsal, when time runs at a pace of its own. */
  default Optional<Rehearsal> rehearsal() {
    return Optional.empty();
  }

  /** A sentence the page must always show, such as that nothing logged is kept; may be empty. */
  String notice();

  /**
   * An assessment and what answers questions about its electrical system.
   *
   * @param energy empty when nobody can answer them
   * @param plan answers questions about the plan; empty when nobody can
   * @param goingOn makes the case for going on, slow the first time; empty when nobody can
   */
  record Answer(
      Assessment assessment,
      Optional<EnergyQuestions> energy,
      Optional<PlanDesk> plan,
      Optional<Supplier<ReviewCase>> goingOn) {
    /** Without anybody who answers for the plan. */
    Answer(Assessment assessment, Optional<EnergyQuestions> energy) {
      this(assessment, energy, Optional.empty(), Optional.empty());
    }

    /** The same with another assessment; whoever answers questions answers for the former one. */
    Answer with(Assessment other) {
      return new Answer(other, energy, plan, goingOn);
    }
  }

  /**
   * A piece of sky.
   *
   * @param skyline what the station cannot see beneath, all round, by azimuth
   * @param tracks one for each candidate, by object
   */
  record SkyView(List<Direction> skyline, List<Track> tracks) {}

  /** Where a candidate is predicted, evenly spaced in time from {@code from}. */
  record Track(String object, Instant from, double stepSeconds, List<Direction> points) {}

  /** A direction: azimuth from north through east, and elevation, degrees. */
  record Direction(double azimuthDeg, double elevationDeg) {}

  /**
   * A pass as one sits through it.
   *
   * @param tracks one for each candidate, by object
   * @param receiverHz what the spacecraft listens on; empty where the station may not send
   */
  record PassView(
      List<Direction> skyline,
      List<PassTrack> tracks,
      List<BeaconView> beacons,
      Optional<Double> receiverHz) {}

  /**
   * One candidate, evenly spaced in time from {@code from}, from before its rise to after its set.
   */
  record PassTrack(String object, Instant from, double stepSeconds, List<Moment> moments) {}

  /**
   * A candidate at a moment.
   *
   * @param shift of what is received, as a share of what is sent; positive when approaching
   */
  record Moment(double azimuthDeg, double elevationDeg, double rangeKm, double shift) {}

  /**
   * A beacon as its data sheet has it.
   *
   * @param states of the bus in which it sends
   */
  record BeaconView(
      String name,
      double frequencyHz,
      double intervalSeconds,
      double durationSeconds,
      List<String> states) {}

  /** A station's window that has ended. */
  record PastWindow(String station, Instant from, Instant to, double maxElevationDeg) {}
}
