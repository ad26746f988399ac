package hark.assessment;

import hark.plan.OptionValue;
import hark.plan.Procedure;
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

  static String sentence(OptionValue value, List<OptionValue> all) {
    Procedure.Change change = value.option().procedure().change();
    if (change instanceof Procedure.Command) {
      return command(value, all);
    }
    if (change instanceof Procedure.Wait) {
      return "Costs nothing and disturbs nothing; what the plan does elsewhere still hears it with "
          + Words.percent(value.heardByHorizon())
          + " by the horizon.";
    }
    if (change instanceof Procedure.SelfCheck) {
      return String.format(
          Locale.ROOT,
          "Says whether the station works: worth %.3f bit about the cause, and listens as planned besides.",
          value.informationBits());
    }
    return listening(value, all);
  }

  private static String command(OptionValue value, List<OptionValue> all) {
    double reach = value.reach().orElse(0.0);
    double adds = value.heardByHorizon() - listeningByHorizon(value, all);
    if (reach < NOTABLE) {
      return "The command would almost certainly not be received: no case that still fits has its receiver on, a closed link and an accepted command at that moment.";
    }
    String reaches = "It could be received in " + Words.inTen(reach);
    String harm;
    if (value.hazard() < NOTABLE) {
      harm = ", and delays the first sound in none worth counting";
    } else if (value.hazard() >= MOSTLY * reach) {
      harm = ", and in most of those it delays the first sound";
    } else {
      harm = ", and delays the first sound in " + Words.percent(value.hazard()) + " of all";
    }
    String gain;
    if (adds > NOTABLE) {
      gain = "; it adds " + Words.points(adds) + " to the chance of hearing it by the horizon.";
    } else if (adds < -NOTABLE) {
      gain = "; it takes " + Words.points(-adds) + " from the chance of hearing it by the horizon.";
    } else {
      gain = "; it changes the chance of hearing it by the horizon by less than half a point.";
    }
    return reaches + harm + gain;
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
    String chance = "Hears it in this pass with " + Words.percent(value.heardThisPass());
    if (difference > NOTABLE) {
      return chance + ", " + Words.points(difference) + " more than any other way of listening.";
    }
    if (difference < -NOTABLE) {
      return chance
          + ", "
          + Words.points(-difference)
          + " less than the best way of listening here.";
    }
    return chance + ", as much as any other way of listening to within half a point.";
  }
}
