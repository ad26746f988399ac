package hark.ensemble;

import hark.evidence.Channel;
import hark.evidence.CommandSent;
import hark.evidence.DopplerFit;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.MotionSeen;
import hark.evidence.ObjectVerdict;
import hark.evidence.OutsideReport;
import hark.evidence.SearchResult;
import hark.evidence.Separation;
import hark.evidence.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns the record into clues: which sky, which way of listening, which probe. Notes, windows that
 * nobody listened to and releases of which nothing is known have no likelihood.
 */
final class Clues {
  /** A moment before a command arrives, s. */
  private static final double BEFORE_ARRIVAL_SECONDS = 0.01;

  private final DiagnosisInput input;
  private final Sky sky;
  private final ListeningClues listening;
  private final List<Clue> clues = new ArrayList<>();
  private final List<Double> probes = new ArrayList<>();

  Clues(DiagnosisInput input, Sky sky) {
    this.input = input;
    this.sky = sky;
    this.listening = new ListeningClues(input, sky);
    for (int k = 0; k < input.evidence().size(); k++) {
      of(k, input.evidence().get(k)).ifPresent(clues::add);
    }
  }

  List<Clue> all() {
    return List.copyOf(clues);
  }

  double[] probeSeconds() {
    return probes.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private Optional<Clue> of(int index, Entry entry) {
    Evidence evidence = entry.evidence();
    if (evidence instanceof Evidence.NothingHeard silence) {
      return Optional.of(listening.silence(index, silence));
    }
    if (evidence instanceof Evidence.Heard heard) {
      return Optional.of(listening.heard(index, heard));
    }
    if (evidence instanceof OutsideReport report) {
      return Optional.of(listening.outside(index, report));
    }
    if (evidence instanceof SearchResult result && result.isPlaced()) {
      return Optional.of(listening.searched(index, result));
    }
    if (evidence instanceof Evidence.StationCheck check) {
      return Optional.of(check(index, check));
    }
    return onBoard(index, evidence)
        .or(() -> object(index, evidence))
        .or(() -> command(index, evidence));
  }

  private Optional<Clue> onBoard(int index, Evidence evidence) {
    double seconds = input.seconds(evidence.at());
    if (evidence instanceof Evidence.Telemetry telemetry) {
      return Optional.of(frame(index, telemetry));
    }
    if (evidence instanceof MotionSeen motion) {
      return Optional.of(
          new Motion(
              index,
              seconds,
              motion.tumbleSeconds().orElse(Double.NaN),
              motion.tumbleSdSeconds().orElse(0),
              motion.decay()));
    }
    boolean released = evidence instanceof Separation separation && separation.confirmed();
    return released ? Optional.of(new Released(index, seconds)) : Optional.empty();
  }

  private Clue frame(int index, Evidence.Telemetry telemetry) {
    double seconds = input.seconds(telemetry.at());
    List<Told> told = new ArrayList<>();
    for (Map.Entry<Channel, Evidence.Reading> reading : telemetry.readings().entrySet()) {
      double sd = reading.getValue().sd().orElse(Told.usualSd(reading.getKey()));
      told.add(new Told(reading.getKey(), reading.getValue().value(), sd));
    }
    probes.add(seconds);
    boolean survives = input.beacons().get(0).telling().counterSurvivesReset();
    return new Frame(
        index, probes.size() - 1, seconds, List.copyOf(told), telemetry.mode(), survives);
  }

  private Optional<Clue> object(int index, Evidence evidence) {
    if (evidence instanceof ObjectVerdict verdict) {
      Source source = Source.of(verdict.source());
      return verdict(index, verdict.object(), verdict.confirmed(), source);
    }
    return evidence instanceof DopplerFit fit
        ? verdict(index, fit.object(), true, Source.DOPPLER)
        : Optional.empty();
  }

  /** An object that is no candidate, when confirmed, speaks for none of the candidates. */
  private Optional<Clue> verdict(int index, String object, boolean confirmed, Source source) {
    OptionalInt named = input.findCandidate(object);
    OptionalInt meant =
        named.isPresent() || !confirmed ? named : input.findCandidate(Candidate.NONE);
    return meant.isPresent()
        ? Optional.of(
            Verdict.of(index, meant.getAsInt(), confirmed, source, input.candidates().size()))
        : Optional.empty();
  }

  private Optional<Clue> command(int index, Evidence evidence) {
    return evidence instanceof CommandSent given
        ? SentCommand.find(input, index).map(sent -> new CommandGiven(sent, link(given)))
        : Optional.empty();
  }

  /** Just before it arrives: what it did is no part of whether it was received. */
  private CommandLink link(CommandSent given) {
    int station = input.stationIndex(given.station());
    double watts =
        given
            .powerWatts()
            .orElseGet(() -> input.stations().get(station).transmit().orElseThrow().powerWatts());
    SkyWindow window = sky.window(station, given.at(), given.at().plusSeconds(1), List.of());
    double before = input.seconds(given.at()) - BEFORE_ARRIVAL_SECONDS;
    boolean anyCounter = SentCommand.triesCounters(given.command());
    return new CommandLink(input, window, before, input.likeliestCandidate(), watts, anyCounter);
  }

  private Clue check(int index, Evidence.StationCheck check) {
    int station = input.stationIndex(check.station());
    return new Check(
        index,
        station,
        check.heard(),
        check.levelDb().orElse(Double.NaN),
        check.expectedDb().orElse(Double.NaN),
        share(check.sameHand()),
        share(check.sameBand()),
        input.stations().get(station).receive().beamwidthDeg());
  }

  private static double share(Optional<Boolean> answer) {
    return answer.map(yes -> yes ? 1.0 : 0.0).orElse(Check.LIKE_OURS_UNSAID);
  }
}
