package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a person could say aloud: what to do next, what to beware of, and why. One function for the
 * terminal and the page, so that both say the same. The words follow the numbers and nothing else.
 *
 * @param when {@code In 1 h 12 m}, or empty when there is nothing to do
 * @param task {@code listen wide at Fen Hill for nine minutes}; no full stop
 * @param caution {@code Do not transmit.} or who must authorise; may be empty
 * @param why reasons, as sentences
 * @param window the window it speaks of, or empty
 */
public record Headline(
    String when, String task, String caution, String why, Optional<Window> window) {

  /** As {@link #of(Assessment, Map)}, without the names of those who may authorise. */
  public static Headline of(Assessment assessment) {
    return of(assessment, Map.of());
  }

  /**
   * The next thing to do.
   *
   * @param mayAuthorise by station, who may authorise a transmission there; a station that is left
   *     out is spoken of by its licence
   */
  public static Headline of(Assessment assessment, Map<String, List<String>> mayAuthorise) {
    List<Window> planned = Options.planned(assessment);
    if (planned.isEmpty()) {
      return nothing(assessment);
    }
    Window window = planned.get(0);
    Option option = Options.planned(window).orElseThrow();
    List<String> why = new ArrayList<>();
    why.add(option.why());
    String caution = sending(assessment, window, option, mayAuthorise, why);
    why.add(Light.of(assessment, window));
    return new Headline(
        when(assessment, window),
        task(assessment, window, option),
        caution,
        sentences(why),
        Optional.of(window));
  }

  /**
   * What to say of sending: who must authorise a command of this window; not at all, when none of
   * its commands is worth it; not yet, when the plan sends in a later one. Reasons are added to
   * {@code why}.
   */
  private static String sending(
      Assessment assessment,
      Window window,
      Option option,
      Map<String, List<String>> mayAuthorise,
      List<String> why) {
    if (Options.isCommand(assessment, option)) {
      return authority(mayAuthorise.getOrDefault(window.station(), List.of()));
    }
    Optional<String> against = Sending.against(assessment, window);
    if (against.isPresent()) {
      why.add(against.get());
      return "Do not transmit.";
    }
    Optional<String> later = Sending.later(assessment, window, mayAuthorise);
    why.add(later.orElseGet(() -> Sending.undecided(assessment, window, mayAuthorise)));
    return later.isPresent() ? "Do not transmit yet." : "";
  }

  /** Action and caution as one line. */
  public String sentence() {
    return action() + (caution.isEmpty() ? "" : " " + caution);
  }

  /** {@code In 1 h 12 m, listen wide at Fen Hill for nine minutes.} */
  public String action() {
    return (when.isEmpty() ? Words.sentenceCase(task) : when + ", " + task) + ".";
  }

  /** As {@link #sentence()}, with the time itself, for what is read later. */
  public String dated() {
    return window
        .filter(w -> when.startsWith("In "))
        .map(w -> "On " + Words.day(w.aos()) + " at " + Words.clock(w.aos()) + ", " + task + ".")
        .map(said -> caution.isEmpty() ? said : said + " " + caution)
        .orElseGet(this::sentence);
  }

  private static String when(Assessment assessment, Window window) {
    Duration until = Duration.between(assessment.now(), window.aos());
    return until.isNegative() || until.isZero() ? "Now" : "In " + Words.span(until);
  }

  private static String task(Assessment assessment, Window window, Option option) {
    boolean begun = !window.aos().isAfter(assessment.now());
    Duration length = Duration.between(begun ? assessment.now() : window.aos(), window.los());
    String time = Words.minutesSpoken(length) + (begun ? " more" : "");
    String title = Words.inSentence(option.title());
    if (Options.isCommand(assessment, option)) {
      String send = title.startsWith("blind ") ? "send " + Words.command(title) : title;
      return send + " from " + window.station() + " and listen for " + time;
    }
    if (window.unattended()) {
      return "let " + window.station() + " record for " + time + " (" + title + ")";
    }
    if (!atStation(title)) {
      return "for the pass over " + window.station() + " (" + time + "), " + title;
    }
    int second = title.indexOf(" and ");
    String first = second < 0 ? title : title.substring(0, second);
    String rest = second < 0 ? "" : title.substring(second);
    return first + " at " + window.station() + " for " + time + rest;
  }

  /** What our own people do at the station; other tasks are only timed by its pass. */
  private static boolean atStation(String title) {
    return Stream.of("listen", "record", "check", "watch").anyMatch(title::startsWith);
  }

  private static String authority(List<String> names) {
    return names.isEmpty()
        ? "Transmit only when a person named in the station's licence has authorised it."
        : "Transmit only once "
            + Words.choice(names)
            + " has authorised it, as the station's licence says.";
  }

  private static Headline nothing(Assessment assessment) {
    String horizon = "the next " + Words.days(assessment.horizonDays());
    List<Window> ahead = Options.ahead(assessment);
    if (ahead.isEmpty()) {
      return new Headline(
          "",
          "no station sees the satellite in " + horizon,
          "",
          "Look further ahead with more days, or ask a station elsewhere.",
          Optional.empty());
    }
    String why =
        bestListening(assessment, ahead)
            .map(text -> text + " The plan spends no hours on it.")
            .orElse("No way of listening is open at any of them.");
    return new Headline(
        "",
        "wait: nothing is planned for "
            + Words.countSpoken(ahead.size(), "window")
            + " in "
            + horizon,
        "",
        why,
        Optional.empty());
  }

  private static Optional<String> bestListening(Assessment assessment, List<Window> ahead) {
    Window best = null;
    Option chosen = null;
    for (Window window : ahead) {
      for (Option option : window.options()) {
        boolean better = chosen == null || option.heardThisPass() > chosen.heardThisPass();
        if (better && !Options.isCommand(assessment, option)) {
          best = window;
          chosen = option;
        }
      }
    }
    if (chosen == null) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            "The best of them, %s on %s, would hear it with %s for %s.",
            best.station(),
            Words.dayAndMinute(best.aos()),
            Words.percent(chosen.heardThisPass(), chosen.heardThisPassError()),
            Words.hours(chosen.costHours())));
  }

  private static String sentences(List<String> parts) {
    return parts.stream()
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .map(s -> s.endsWith(".") || s.endsWith("!") || s.endsWith("?") ? s : s + ".")
        .map(Words::sentenceCase)
        .collect(Collectors.joining(" "));
  }
}
