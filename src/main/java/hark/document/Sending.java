package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the numbers say about sending a command in a window where the plan listens. */
final class Sending {
  /** Below this a probability is not worth a clause of its own. */
  private static final double NOTABLE = 0.005;

  private Sending() {}

  /**
   * Why nothing should be sent, when every command of the window speaks against itself: what it may
   * spoil is at least what it adds to hearing the satellite by the horizon; or no station can send
   * at all. Empty when some command does better than that, or only this station cannot send.
   */
  static Optional<String> against(Assessment assessment, Window window) {
    List<Option> commands = Options.commands(assessment, window);
    if (commands.isEmpty()) {
      return anywhere(assessment)
          ? Optional.empty()
          : Optional.of("No station here can send a command.");
    }
    double planned = Options.planned(window).map(Option::heardByHorizon).orElse(0.0);
    boolean all = commands.stream().allMatch(c -> !isBetter(c, planned));
    return all ? Optional.of(discouraged(tempting(commands), planned)) : Optional.empty();
  }

  private static boolean anywhere(Assessment assessment) {
    return assessment.windows().stream().anyMatch(w -> !Options.commands(assessment, w).isEmpty());
  }

  /** It adds notably more to hearing the satellite by the horizon than it may spoil. */
  private static boolean isBetter(Option command, double planned) {
    return gain(command, planned) > command.hazard() + NOTABLE;
  }

  private static double gain(Option command, double planned) {
    return Math.max(0, command.heardByHorizon() - planned);
  }

  /** The command that would reach most: what somebody is most likely to propose. */
  private static Option tempting(List<Option> commands) {
    return commands.stream()
        .max(Comparator.comparingDouble(c -> c.reach().orElse(0.0)))
        .orElseThrow();
  }

  private static String discouraged(Option command, double planned) {
    String title = Words.sentenceCase(Words.command(command.title()));
    double reach = command.reach().orElse(0.0);
    if (reach < NOTABLE) {
      return title + " would hardly reach the satellite in any case that still fits.";
    }
    String reached =
        title + " could take effect in " + Words.inTen(reach) + " of the cases that still fit";
    if (command.hazard() >= NOTABLE) {
      String portion = Words.portion(Math.min(1, command.hazard() / reach));
      return reached
          + ", and in "
          + portion
          + " of those it delays the first sound or prevents it.";
    }
    if (gain(command, planned) < NOTABLE) {
      return reached + ", but adds nothing to what listening finds.";
    }
    return reached + ", and may spoil as much as it adds.";
  }

  /**
   * What the plan sends in a window after this one, and on whose word; empty when it sends nothing.
   */
  static Optional<String> later(
      Assessment assessment, Window window, Map<String, List<String>> mayAuthorise) {
    return Options.planned(assessment).stream()
        .filter(w -> w.aos().isAfter(window.aos()))
        .filter(w -> Options.isCommand(assessment, Options.planned(w).orElseThrow()))
        .findFirst()
        .map(
            w -> {
              Option command = Options.planned(w).orElseThrow();
              return "The plan sends "
                  + Words.command(command.title())
                  + " from "
                  + w.station()
                  + " on "
                  + Words.dayAndMinute(w.aos())
                  + ", if "
                  + who(w, mayAuthorise)
                  + " authorises it: "
                  + Words.inSentence(command.why());
            });
  }

  private static String who(Window window, Map<String, List<String>> mayAuthorise) {
    List<String> names = mayAuthorise.getOrDefault(window.station(), List.of());
    return names.isEmpty() ? "a person named in the licence" : Words.choice(names);
  }

  /** What a planned command may spoil. */
  static String harm(Option command) {
    String reach =
        command
            .reach()
            .map(r -> "It could take effect in " + Words.percent(r) + " of what fits")
            .orElse("");
    String harm =
        command.hazard() < NOTABLE
            ? "it hardly ever delays the first sound"
            : "in " + Words.percent(command.hazard()) + " it delays the first sound or prevents it";
    return reach.isEmpty() ? Words.sentenceCase(harm) + "." : reach + "; " + harm + ".";
  }

  /** The command that comes closest, when the plan listens although sending is not harmful. */
  static String undecided(
      Assessment assessment, Window window, Map<String, List<String>> mayAuthorise) {
    double planned = Options.planned(window).map(Option::heardByHorizon).orElse(0.0);
    return Options.commands(assessment, window).stream()
        .filter(c -> isBetter(c, planned))
        .findFirst()
        .map(
            c ->
                Words.sentenceCase(Words.command(c.title()))
                    + " might do better: it raises the chance of hearing it by "
                    + Words.day(Options.end(assessment))
                    + " from "
                    + Words.percent(planned)
                    + " to "
                    + Words.percent(c.heardByHorizon())
                    + (c.hazard() < NOTABLE
                        ? ", and hardly ever delays the first sound"
                        : ", and delays the first sound in " + Words.percent(c.hazard()))
                    + ". The plan holds that gain for too small or too uncertain; whether to send, "
                    + who(window, mayAuthorise)
                    + " decides.")
        .orElse("");
  }
}
