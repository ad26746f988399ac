package hark.assessment;

import hark.ensemble.Cause;
import hark.ensemble.Effect.Sight;
import hark.plan.Procedure;
import hark.power.OnboardChange.Clearing;
import hark.power.OnboardCommand;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What would tell causes apart that silence cannot: for each means, what each cause would show
 * under it, by its own effects and by what clears it. A means that shows the same for all of them
 * tells nothing and is left out.
 */
final class Telling {
  /** Means other than listening as planned, in the order of what they cost. */
  enum Means {
    WIDER("listening wider in frequency", "would be found beside its frequency", "would not"),
    LARGER("a larger dish", "would be heard there, weak", "would stay unheard"),
    RESET("a reset that it receives", "would end", "would stay silent"),
    BEACON_ON("a beacon-on command that it receives", "would end", "would stay silent"),
    RELEASE("another release, if it receives that", "might end", "would stay silent"),
    COUNTER("a command with other counter values", "would obey one of them", "would obey none"),
    POWER_GONE("waiting until the battery runs flat in the dark", "would end then", "would not"),
    TRACKING(
        "radar or telescope, which need no signal",
        "might be in pieces or off the elements",
        "would fly on whole"),
    DECAY(
        "decay against the neighbours over weeks (log it as `motion decay=…`)",
        "would fall at another rate",
        "would fall as the neighbours do");

    private final String words;
    private final String shows;
    private final String doesNot;

    Means(String words, String shows, String doesNot) {
      this.words = words;
      this.shows = shows;
      this.doesNot = doesNot;
    }
  }

  private final List<Procedure> procedures;

  /** With the procedures that somebody could take. */
  Telling(List<Procedure> procedures) {
    this.procedures = List.copyOf(procedures);
  }

  /** The means that divide some causes, then those causes that none of them divides. */
  List<Assessment.Separator> separators(List<Cause> causes) {
    List<Assessment.Separator> separators = new ArrayList<>();
    for (Means means : Means.values()) {
      List<Cause> yes = causes.stream().filter(cause -> shows(means, cause)).toList();
      List<Cause> no = causes.stream().filter(cause -> !yes.contains(cause)).toList();
      if (!yes.isEmpty() && !no.isEmpty()) {
        separators.add(
            new Assessment.Separator(
                means.words + procedure(means),
                Words.list(titles(yes)) + " " + means.shows,
                Words.list(titles(no)) + " " + means.doesNot));
      }
    }
    for (List<Cause> alike : undivided(causes)) {
      List<String> signs =
          alike.stream().map(cause -> cause.title() + " by “" + cause.signature() + "”").toList();
      separators.add(
          new Assessment.Separator("nothing here but their own signs", Words.list(signs), ""));
    }
    return separators;
  }

  /** Causes that no means here divides, two or more each. */
  private static List<List<Cause>> undivided(List<Cause> causes) {
    Map<String, List<Cause>> byAnswers = new LinkedHashMap<>();
    for (Cause cause : causes) {
      StringBuilder answers = new StringBuilder();
      for (Means means : Means.values()) {
        answers.append(shows(means, cause) ? '1' : '0');
      }
      byAnswers.computeIfAbsent(answers.toString(), key -> new ArrayList<>()).add(cause);
    }
    return byAnswers.values().stream().filter(alike -> alike.size() > 1).toList();
  }

  /** All of it in sentences. */
  static String sentences(List<Assessment.Separator> separators) {
    List<String> parts = new ArrayList<>();
    for (Assessment.Separator each : separators) {
      String rest = each.doesNot().isEmpty() ? "" : "; " + each.doesNot();
      parts.add(each.means() + ": " + each.shows() + rest);
    }
    return String.join(". ", parts);
  }

  /** Whether a cause answers to a means. */
  static boolean shows(Means means, Cause cause) {
    Traits traits = Traits.of(cause);
    boolean heeds = !traits.radio().mute() && !traits.unreachable() && traits.standing();
    return switch (means) {
      case WIDER -> Traits.shifted(cause);
      case LARGER -> traits.weak();
      case RESET ->
          heeds
              && (traits.cleared().contains(Clearing.RESET_COMMAND)
                  || traits.cleared().contains(Clearing.POWER_CYCLE));
      case BEACON_ON -> heeds && traits.cleared().contains(Clearing.BEACON_COMMAND);
      case RELEASE -> traits.commanded() && !traits.standing();
      case COUNTER -> traits.radio().refusesCommands() && !traits.radio().deaf();
      case POWER_GONE ->
          traits.standing()
              && !traits.radio().mute()
              && (traits.cleared().contains(Clearing.POWER_REMOVED)
                  || traits.cleared().contains(Clearing.POWER_CYCLE));
      case TRACKING -> traits.sights().contains(Sight.PIECES);
      case DECAY -> traits.sights().contains(Sight.DRAG);
    };
  }

  /** Procedures of the mission by which somebody could use a means. */
  List<Procedure> procedures(Means means) {
    Predicate<Procedure.Change> fits =
        switch (means) {
          case WIDER -> change -> change instanceof Procedure.Listen l && widens(l);
          case LARGER -> change -> change instanceof Procedure.Listen l && l.extraGainDb() > 0;
          case RESET -> change -> sends(change, OnboardCommand.RESET);
          case BEACON_ON -> change -> sends(change, OnboardCommand.BEACON_ON);
          case RELEASE -> change -> sends(change, OnboardCommand.RELEASE);
          case POWER_GONE -> change -> change instanceof Procedure.Wait;
          case COUNTER -> change -> change instanceof Procedure.Command c && c.anyCounter();
          case TRACKING, DECAY -> change -> false;
        };
    return procedures.stream().filter(each -> fits.test(each.change())).toList();
  }

  /** Procedures that leave more for the battery. */
  List<Procedure> saving() {
    return procedures.stream()
        .filter(
            each ->
                each.change() instanceof Procedure.Wait
                    || sends(each.change(), OnboardCommand.LOW_POWER))
        .toList();
  }

  private static boolean widens(Procedure.Listen listen) {
    return listen.windowHz().isPresent() && listen.extraGainDb() <= 0;
  }

  private static boolean sends(Procedure.Change change, OnboardCommand command) {
    return change instanceof Procedure.Command c && c.command() == command && !c.anyCounter();
  }

  private String procedure(Means means) {
    List<Procedure> found = procedures(means);
    return found.isEmpty() ? "" : " (" + found.get(0).title() + ")";
  }

  private static List<String> titles(List<Cause> causes) {
    return causes.stream().map(Cause::title).toList();
  }
}
