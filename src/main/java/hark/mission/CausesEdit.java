package hark.mission;

import hark.mission.KeyPath.Step;
import hark.problem.BadInput;
import java.util.List;

/** Sets the prior of a cause in the text of a mission's {@code causes.yaml}. Pure. */
public final class CausesEdit {
  private static final String FILE = "causes.yaml";

  private CausesEdit() {}

  /** A causes file that leaves the stock causes as they are. */
  public static String nothingOwn() {
    return CausesFile.NOTHING_OWN;
  }

  /**
   * The text with another prior for a cause. A cause to which the file gives a hazard keeps one:
   * the hazard that comes to the same over its 30 days.
   *
   * @param id of a cause, stock or own
   * @param value as it could be written there, over 30 days
   * @throws BadInput when the text or the value cannot be read
   */
  public static String prior(String yaml, String id, String value) {
    String event = "events." + id + ".";
    if (!hasHazard(yaml, id)) {
      return YamlEdit.set(FILE, yaml, event + "probability", value);
    }
    double perDay = -Math.log1p(-number(id, value)) / FaultTreeFile.DAYS_OF_PRIOR;
    return YamlEdit.set(FILE, yaml, event + "hazard_per_day", Double.toString(perDay));
  }

  private static boolean hasHazard(String yaml, String id) {
    Problems problems = new Problems();
    YamlTree tree = YamlTree.parse(FILE, yaml, problems);
    List<Step> steps =
        List.of(new Step("events", false), new Step(id, false), new Step("hazard_per_day", false));
    return YamlSame.find(tree, steps).isPresent();
  }

  private static double number(String id, String value) {
    try {
      double number = Double.parseDouble(value.strip());
      if (number >= 0 && number < 1) {
        return number;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw BadInput.of(
        "'" + value.strip() + "' is no prior", FILE + " events." + id, "write 0 to below 1");
  }
}
