package hark.mission;

import hark.ensemble.Uncertain;
import hark.power.CellBehaviour;
import hark.power.PowerModel.Battery;
import hark.power.PowerModel.ClosesOn;
import hark.power.PowerModel.Heater;
import hark.power.PowerModel.Protection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code spacecraft.battery}: cells, protection, temperature limits and heater. */
final class BatteryReader {
  private static final Span CAPACITY_AH =
      Span.of(0.01, 300).usually(0.2, 50).orIn("milliampere-hours", 1e-3);
  private static final Span RESISTANCE_OHM =
      Span.of(0.0001, 5).usually(0.002, 0.3).orIn("milliohms", 1e-3);
  private static final Span COULOMBIC = Span.of(0.5, 1).usually(0.95, 1).orIn("percent", 0.01);
  private static final Span LOSS = Span.of(0, 1).usually(0, 0.3).orIn("percent", 0.01);
  private static final Span COLD_LOCK_PER_K =
      Span.of(0, 0.1).usually(0, 0.03).orIn("percent per kelvin", 0.01);
  private static final Span GROWTH = Span.of(0, 10).usually(0, 1).orIn("percent", 0.01);
  private static final Span DAMAGE_VOLTS = Span.of(0, 5).usually(0, 3).orIn("millivolts", 1e-3);
  private static final Span CAPACITY_SHARE = Span.of(0.01, 1).usually(0.3, 1).orIn("percent", 0.01);
  private static final Span RESISTANCE_FACTOR =
      Span.of(0.5, 50).usually(0.9, 5).orIn("percent", 0.01);
  private static final Span TOLERANCE_VOLTS =
      Span.of(0, 1).usually(0, 0.2).orIn("millivolts", 1e-3);

  /**
   * Opening voltages of protection circuits of one kind differ by about so much, V. Common
   * practice.
   */
  private static final double USUAL_TOLERANCE_V = 0.02;

  private static final Span CELL_VOLTS = Span.of(0.5, 5).orIn("millivolts", 1e-3);

  /** Least distance kept between two thresholds when draws would cross them, V. */
  static final double LEAST_GAP_V = 0.01;

  private BatteryReader() {}

  /** The battery as it is at launch, and the pack as it was bought, which chargers are set for. */
  record Part(Battery battery, ChargerReader.Pack pack) {}

  static Part read(Section battery, Reading reading) {
    int series = battery.whole("series", 1, 40);
    int parallel = battery.whole("parallel", 1, 40);
    Cell cell = battery.part("cell", c -> cell(c, reading)).orElse(Cell.NONE);
    double soc =
        battery.number("soc_at_separation", Spans.FRACTION, new Uncertain.Normal(0.75, 0.1));
    Protection protection = battery.partOrDefaults("protection", p -> protection(p, reading));
    double[] limits = chargeLimits(battery, reading);
    Optional<Heater> heater = battery.partIfWritten("heater", h -> heater(h, reading));
    Age age = battery.partOrDefaults("age", BatteryReader::age);
    Battery aged =
        new Battery(
            series,
            parallel,
            cell.capacityAh() * age.capacityShare(),
            cell.resistanceOhm() * age.resistanceFactor(),
            cell.openCircuit(),
            soc,
            protection,
            limits[0],
            limits[1],
            heater,
            behaviour(battery));
    return new Part(aged, new ChargerReader.Pack(series, parallel * cell.capacityAh()));
  }

  /** Cold, time and misuse; what is not written is that of an ordinary lithium-ion cell. */
  private static CellBehaviour behaviour(Section battery) {
    CellBehaviour usual = CellBehaviour.LITHIUM_ION;
    return new CellBehaviour(
        battery.number("coulombic_efficiency", COULOMBIC, usual.coulombicEfficiency()),
        battery.number("self_discharge_per_month", LOSS, usual.selfDischargePerMonth()),
        battery.number("cold_lock_per_K", COLD_LOCK_PER_K, usual.coldLockPerKelvin()),
        battery.number("fade_per_year", LOSS, usual.fadePerYear()),
        battery.number("resistance_growth_per_year", GROWTH, usual.resistanceGrowthPerYear()),
        battery.number("damage_V_per_cell", DAMAGE_VOLTS, usual.damageVoltsPerCell()),
        battery.number("damage_per_day", LOSS, usual.damagePerDay()));
  }

  /** What storage and use on the ground have left of the cells, at launch. */
  private record Age(double capacityShare, double resistanceFactor) {}

  private static Age age(Section age) {
    return new Age(
        age.number("capacity_share", CAPACITY_SHARE, 1),
        age.number("resistance_factor", RESISTANCE_FACTOR, 1));
  }

  private record Cell(double capacityAh, double resistanceOhm, List<double[]> openCircuit) {
    static final Cell NONE = new Cell(1, 1, List.of());
  }

  private static Cell cell(Section cell, Reading reading) {
    double capacity = cell.number("capacity_Ah", CAPACITY_AH);
    double resistance = cell.number("resistance_ohm", RESISTANCE_OHM);
    YamlTree table = cell.at("ocv_table");
    YamlTree chemistry = cell.at("chemistry");
    if (!table.isNothing()) {
      if (!chemistry.isNothing()) {
        reading.problems.add(
            chemistry, "both chemistry and ocv_table are written", "keep one of them");
      }
      return new Cell(capacity, resistance, table(table, reading.problems));
    }
    Chemistry known = cell.choice("chemistry", Chemistry.LI_ION_NCA);
    return new Cell(capacity, resistance, known.openCircuit());
  }

  private static List<double[]> table(YamlTree node, Problems problems) {
    List<double[]> rows = new ArrayList<>();
    for (YamlTree row : YamlValues.list(node, problems)) {
      Optional<double[]> read = YamlValues.numbers(row, 2, problems);
      if (read.isEmpty()) {
        return List.of();
      }
      double[] next = read.get();
      double[] last = rows.isEmpty() ? new double[] {-1, 0} : rows.get(rows.size() - 1);
      if (!(next[0] > last[0] && next[1] > last[1])) {
        problems.add(row, "the rows do not rise in both numbers", "order them by state of charge");
      } else if (!CELL_VOLTS.holds(next[1])) {
        problems.add(
            row, YamlValues.outside(next[1], CELL_VOLTS), YamlValues.mend(next[1], CELL_VOLTS));
      }
      rows.add(next);
    }
    boolean whole = rows.size() >= 2 && rows.get(0)[0] == 0 && rows.get(rows.size() - 1)[0] == 1;
    if (!whole) {
      problems.add(
          node,
          "the table must run from state of charge 0 to 1 with at least two rows",
          "write rows [state of charge, volts a cell]");
    }
    return List.copyOf(rows);
  }

  private static Protection protection(Section protection, Reading reading) {
    int before = reading.problems.count();
    double open = protection.number("open_V_per_cell", CELL_VOLTS, 2.5);
    double close = protection.number("close_V_per_cell", CELL_VOLTS, 3.0);
    ClosesOn closesOn = protection.choice("closes_on", ClosesOn.CHARGE);
    if (close <= open && reading.problems.count() == before && reading.isFirst()) {
      reading.problems.add(
          protection.at("close_V_per_cell"),
          "found " + Span.print(close) + ", expected more than open_V_per_cell " + Span.print(open),
          "protection must close above the voltage at which it opens");
    }
    double tolerance = protection.number("tolerance_V", TOLERANCE_VOLTS, USUAL_TOLERANCE_V);
    return new Protection(open, Math.max(close, open + LEAST_GAP_V), closesOn, tolerance);
  }

  private static double[] chargeLimits(Section battery, Reading reading) {
    YamlTree node = battery.at("charge_temperature_C");
    if (node.isNothing()) {
      battery.noteDefault(node, "[0, 45]");
      return new double[] {0, 45};
    }
    double[] limits = YamlValues.numbers(node, 2, reading.problems).orElse(new double[] {0, 45});
    if (!(limits[0] < limits[1])) {
      reading.problems.add(
          node, "the first limit is not below the second", "write [coldest, warmest] in °C");
    } else if (!Spans.TEMPERATURE_C.holds(limits[0]) || !Spans.TEMPERATURE_C.holds(limits[1])) {
      boolean kelvin = limits[0] > 200;
      reading.problems.add(
          node,
          "found " + Span.print(limits[0]) + " and " + Span.print(limits[1]) + ", expected °C",
          kelvin ? "this looks like kelvin; take away 273.15" : "write [coldest, warmest] in °C");
    }
    return limits;
  }

  private static Heater heater(Section heater, Reading reading) {
    int before = reading.problems.count();
    double watts = heater.number("W", Spans.WATTS);
    double on = heater.number("on_below_C", Spans.TEMPERATURE_C);
    double off = heater.number("off_above_C", Spans.TEMPERATURE_C);
    if (off <= on && reading.problems.count() == before && reading.isFirst()) {
      reading.problems.add(
          heater.at("off_above_C"),
          "found " + Span.print(off) + ", expected more than on_below_C " + Span.print(on),
          "the heater must switch off above the temperature at which it switches on");
    }
    return new Heater(watts, on, Math.max(off, on + 0.1));
  }
}
