package hark.power;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.ReferenceTable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The rows of {@code reference/battery} and the bodies that live them. */
public final class BatteryRows {
  private BatteryRows() {}

  /** One cell that is the whole pack, in a body too heavy to change its temperature. */
  public static Bodies bodyOf(Map<String, String> row, double soc) {
    Map<String, String> cell =
        ReferenceTable.read("battery/cells.csv").rows().stream()
            .filter(r -> r.get("cell").equals(row.get("cell")))
            .findFirst()
            .orElseThrow();
    double empty = number(cell, "V0");
    Bodies body = new Bodies();
    body.wholeBattery =
        new PowerModel.Battery(
            1,
            1,
            number(cell, "Q_Ah"),
            number(cell, "R_ohm"),
            List.of(new double[] {0, empty}, new double[] {1, empty + number(cell, "k")}),
            soc,
            new PowerModel.Protection(0.1, 0.2, PowerModel.ClosesOn.CHARGE),
            -50,
            90,
            Optional.empty());
    body.thermal = new PowerModel.Thermal(1e15, 0.1, 0.5, 0.5, 1e15, 0.1);
    body.beacons = List.of();
    return body;
  }

  /** A bus that draws so many watts in every state and never goes off. */
  public static PowerModel.Bus alwaysOn(double watts) {
    return new PowerModel.Bus(
        new PowerModel.Thresholds(0.1, 0.2, 0.1, 0.2),
        0,
        new PowerModel.DeadStart(true, 0),
        new PowerModel.Loads(watts, watts, watts, watts),
        0,
        OptionalDouble.empty(),
        Optional.empty(),
        1e9,
        false);
  }

  /** The rows of one kind; at least eight of them. */
  public static List<Map<String, String>> rowsOf(String kind) {
    List<Map<String, String>> rows =
        ReferenceTable.read("battery/battery.csv").rows().stream()
            .filter(row -> row.get("case").equals(kind))
            .toList();
    assertTrue(rows.size() >= 8, kind + ": " + rows.size() + " rows");
    return rows;
  }

  /** What a row is run with, by name. */
  public static Map<String, Double> settings(Map<String, String> row) {
    Map<String, Double> settings = new HashMap<>();
    for (String part : row.get("settings").split(" ", -1)) {
      String[] sides = part.split("=", -1);
      settings.put(sides[0], Double.parseDouble(sides[1]));
    }
    return settings;
  }

  /** What to call a row in a message. */
  public static String name(Map<String, String> row) {
    return row.get("cell") + " " + row.get("case") + " " + row.get("settings");
  }
}
