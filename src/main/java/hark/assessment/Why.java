package hark.assessment;

import hark.plan.OptionValue;
import hark.plan.Procedure;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * One plain sentence why an option stands where it stands. Pure: every word follows from the
 * numbers.
 */
final class Why {
  /** Differences in the chance to hear smaller than this are not worth a word. */
  private static final double NOTABLE = 0.005;

  /**
   * A command that delays the first sound at least this often among those it reaches is spoken of
   * as harmful.
   */
  private static final double MOSTLY = 0.5;

  private Why() {}

  /**
   * The sentence.
   *
   * @param all every option of the same window
   * @param end of the horizon
   */
  static String sentence(OptionValue value, List<OptionValue> all, Instant end) {
    Procedure.Change change = value.option().procedure().change();
    if (change instanceof Procedure.Command) {
      return command(value, all, end);
    }
    if (change instanceof Procedure.Wait) {
      return "It costs nothing and disturbs nothing; listening as planned elsewhere still hears it by "
          + Words.date(end)
          + " with "
          + Words.percent(value.heardByHorizon())
          + ".";
    }
    if (change instanceof Procedure.SelfCheck) {
      return "It says whether the station works, and listens as planned besides"
          + (value.informationBits() < NOTABLE
              ? "; of the cause it tells next to nothing."
              : String.format(
                  Locale.ROOT, "; of the cause it tells %.2f bit.", value.informationBits()));
    }
    if (change instanceof Procedure.Settle settle) {
      return settle(settle, value, all, end);
    }
    return listening(value, all);
  }

  private static String settle(
      Procedure.Settle settle, OptionValue value, List<OptionValue> all, Instant end) {
    double without = listeningByHorizon(value, all);
    String what =
        settle.question() == Procedure.Question.OBJECT
            ? "Knowing which object is ours"
            : "Knowing how early or late it comes";
    return value.heardByHorizon() - without > NOTABLE
        ? what
            + " raises the chance of hearing it by "
            + Words.date(end)
            + Words.change(without, value.heardByHorizon())
            + "."
        : what + " would change next to nothing in what the plan hears by " + Words.date(end) + ".";
  }

  private static String command(OptionValue value, List<OptionValue> all, Instant end) {
    double reach = value.reach().orElse(0.0);
    double without = listeningByHorizon(value, all);
    double adds = value.heardByHorizon() - without;
    if (reach < NOTABLE) {
      return "The command would almost certainly not be received: no case that still fits has its receiver on, a closed link and an accepted command at that moment.";
    }
    String reaches = "It could be received in " + Words.inTen(reach);
    String harm;
    if (value.hazard() < NOTABLE) {
      harm = " and hardly ever delays the first sound";
    } else if (value.hazard() >= MOSTLY * reach) {
      harm = ", and in most of those it delays the first sound";
    } else {
      harm = ", and in " + Words.percent(value.hazard()) + " of all it delays the first sound";
    }
    String chance = "the chance of hearing it by " + Words.date(end);
    if (Math.abs(adds) <= NOTABLE) {
      return reaches + harm + "; it leaves " + chance + " as it is.";
    }
    return reaches
        + harm
        + "; it "
        + (adds > 0 ? "raises " : "lowers ")
        + chance
        + Words.change(without, value.heardByHorizon())
        + ".";
  }

  private static double listeningByHorizon(OptionValue value, List<OptionValue> all) {
    return all.stream()
        .filter(other -> other.option().procedure().change() instanceof Procedure.Listen)
        .filter(other -> other.option().listening().equals(value.option().listening()))
        .mapToDouble(OptionValue::heardByHorizon)
        .findFirst()
        .orElse(value.heardByHorizon());
  }

  private static String listening(OptionValue value, List<OptionValue> all) {
    double best =
        all.stream()
            .filter(other -> !other.option().equals(value.option()))
            .filter(other -> other.option().procedure().change() instanceof Procedure.Listen)
            .mapToDouble(OptionValue::heardThisPass)
            .max()
            .orElse(0);
    double difference = value.heardThisPass() - best;
    String here = Words.percent(value.heardThisPass());
    String there = Words.percent(best);
    String chance = "We hear it in this pass with " + here;
    if (difference > NOTABLE) {
      return here.equals(there)
          ? chance + ", a little more than in any other way."
          : chance + "; any other way of listening gives at most " + there + ".";
    }
    if (difference < -NOTABLE) {
      return here.equals(there)
          ? chance + ", a little less than in the best way."
          : chance + "; the best way of listening here gives " + there + ".";
    }
    return chance + "; no other way of listening is clearly better.";
  }
}
