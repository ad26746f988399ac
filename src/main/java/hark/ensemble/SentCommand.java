package hark.ensemble;

import hark.evidence.CommandSent;
import hark.evidence.Evidence;
import hark.power.OnboardChange;
import hark.power.OnboardCommand;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A command that was sent and that would do something on board. Half of the bodies take it as
 * received, half do not, by one number of their draw; the weight makes up for the even choice, at
 * each hearing and for each health of the station with that hearing's own chance.
 *
 * @param entry index among the evidence
 * @param seconds when it was sent, since separation
 * @param repeats how often
 * @param acknowledged whether an answer was heard; empty when nobody said
 */
record SentCommand(
    int entry,
    double seconds,
    OnboardCommand command,
    int repeats,
    Optional<Boolean> acknowledged) {
  /** Share of the bodies that take it as received. Any share gives the right answer. */
  static final double TAKEN = 0.5;

  /** Ends the word of a command that was sent with one counter value after the other. */
  static final String ANY_COUNTER = " any counter";

  /** The commands on record that mean something on board, in the order of time. */
  static List<SentCommand> of(DiagnosisInput input) {
    return IntStream.range(0, input.evidence().size())
        .mapToObj(entry -> find(input, entry))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The command of one entry; empty when it is none, or means nothing on board. */
  static Optional<SentCommand> find(DiagnosisInput input, int entry) {
    Evidence evidence = input.evidence().get(entry).evidence();
    if (!(evidence instanceof CommandSent command) || !maySend(input, command)) {
      return Optional.empty();
    }
    double seconds = input.seconds(command.at());
    int repeats = command.repeats().orElse(1);
    return meaning(command.command())
        .map(means -> new SentCommand(entry, seconds, means, repeats, command.acknowledged()));
  }

  private static boolean maySend(DiagnosisInput input, CommandSent command) {
    return input.stations().get(input.stationIndex(command.station())).transmit().isPresent();
  }

  /** True for a command sent with one counter value after the other, so that one of them fits. */
  static boolean triesCounters(String word) {
    return word.strip().toLowerCase(Locale.ROOT).endsWith(ANY_COUNTER);
  }

  /**
   * What a command's word does on board; empty for a word that means none of the known commands.
   */
  static Optional<OnboardCommand> meaning(String word) {
    String bare =
        triesCounters(word)
            ? word.strip().substring(0, word.strip().length() - ANY_COUNTER.length())
            : word;
    String plain = bare.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    for (OnboardCommand command : OnboardCommand.values()) {
      if (command.name().equals(plain)) {
        return Optional.of(command);
      }
    }
    return Optional.empty();
  }

  /** Chance that it does what it should, once received. */
  double works() {
    return command == OnboardCommand.RELEASE ? CommandLink.RELEASE_WORKS : 1;
  }

  TimedChange arrival() {
    return new TimedChange(seconds, new OnboardChange.Commanded(command));
  }

  boolean isTakenBy(Body body) {
    return body.request().events().contains(arrival());
  }
}
