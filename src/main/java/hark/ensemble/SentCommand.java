package hark.ensemble;

import hark.evidence.CommandSent;
import hark.evidence.Evidence;
import hark.power.OnboardChange;
import hark.power.OnboardCommand;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

  /** The commands on record that mean something on board, in the order of time. */
  static List<SentCommand> of(DiagnosisInput input) {
    List<SentCommand> sent = new ArrayList<>();
    for (int k = 0; k < input.evidence().size(); k++) {
      Evidence evidence = input.evidence().get(k).evidence();
      if (evidence instanceof CommandSent command && maySend(input, command)) {
        int entry = k;
        meaning(command.command())
            .map(
                means ->
                    new SentCommand(
                        entry,
                        input.seconds(command.at()),
                        means,
                        command.repeats().orElse(1),
                        command.acknowledged()))
            .ifPresent(sent::add);
      }
    }
    return sent;
  }

  private static boolean maySend(DiagnosisInput input, CommandSent command) {
    return input.stations().get(input.stationIndex(command.station())).transmit().isPresent();
  }

  /**
   * What a command's word does on board; empty for a word that means none of the known commands.
   */
  static Optional<OnboardCommand> meaning(String word) {
    String plain = word.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
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
