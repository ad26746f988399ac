package hark.mission;

import hark.plan.Procedure;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Looks whether a procedure in which somebody could come to harm, or harm others, says so: sending,
 * antennas that move, lithium cells on the ground. It goes by plain words, in English.
 */
final class CautionLint {
  /**
   * Work that needs a caution.
   *
   * @param shownBy words in needs, title or text by which it is recognised
   * @param saidBy words of which one must stand in a caution
   */
  private record Danger(String called, Pattern shownBy, Pattern saidBy, String mend) {}

  private static final Danger AUTHORITY =
      new Danger(
          "it sends, and no caution says who must authorise that",
          words("transmitter"),
          words("licence|license|authoris|authoriz"),
          "name the licence holder or control operator in a caution");
  private static final Danger SWITCH =
      new Danger(
          "it sends, and no caution says how the transmitter is silenced",
          words("transmitter"),
          words("silence|off switch|switch it off"),
          "say in a caution who can silence the transmitter at once");

  private static final List<Danger> DANGERS =
      List.of(
          new Danger(
              "antennas move in it, and no caution says so",
              words("rotator|antenna moves|antennas move|moving antenna|turn the antenna"),
              words("rotator|moves|moving antenna|antennas move"),
              "warn of antennas that start without notice"),
          new Danger(
              "cells are handled in it, and no caution speaks of them",
              words("lithium|spare battery|battery pack|charger|cell holder"),
              words("lithium|cells?\\b"),
              "say in a caution that only qualified people handle lithium cells, and where"));

  private CautionLint() {}

  private static Pattern words(String alternatives) {
    return Pattern.compile("\\b(" + alternatives + ")");
  }

  /** Warnings, all at the line of the cautions' key. */
  static List<Problem> check(Procedure procedure, String where) {
    String needs = String.join(" ", procedure.needs());
    String text = lower(needs + " " + procedure.title() + " " + procedure.markdown());
    String cautions = lower(String.join(" ", procedure.cautions()));
    List<Problem> warnings = new ArrayList<>();
    for (Danger danger : List.of(AUTHORITY, SWITCH)) {
      // a text that only says the transmitter stays off needs no such caution
      add(danger, lower(needs), cautions, where, warnings);
    }
    for (Danger danger : DANGERS) {
      add(danger, text, cautions, where, warnings);
    }
    return warnings;
  }

  private static void add(
      Danger danger, String text, String cautions, String where, List<Problem> warnings) {
    if (danger.shownBy().matcher(text).find() && !danger.saidBy().matcher(cautions).find()) {
      warnings.add(new Problem(danger.called(), where, danger.mend()));
    }
  }

  private static String lower(String text) {
    return text.replace('_', ' ').toLowerCase(Locale.ROOT);
  }
}
