package hark.mission;

import hark.power.PowerModel.Bus;
import hark.power.PowerModel.CommandLoss;
import hark.power.PowerModel.CommandLossAction;
import hark.power.PowerModel.DeadStart;
import hark.power.PowerModel.Inrush;
import hark.power.PowerModel.Loads;
import hark.power.PowerModel.Thresholds;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code spacecraft.bus}: thresholds, times and loads. */
final class BusReader {
  private static final Span MINUTES = Span.of(0, 20_160).usually(0, 240).orIn("seconds", 1 / 60.0);
  private static final Span BOOT_SECONDS =
      Span.of(1, 7200).usually(1, 1800).orIn("milliseconds", 1e-3);
  private static final Span INRUSH_SECONDS =
      Span.of(0.001, 3600).usually(0.001, 60).orIn("milliseconds", 1e-3);
  private static final Span WATCHDOG_HOURS =
      Span.of(0.001, 8760).usually(0.001, 1000).orIn("seconds", 1 / 3600.0);
  private static final Span DAYS =
      Span.of(0.01, 366).usually(0.2, 100).orIn("seconds", 1 / 86400.0);
  private static final double SECONDS_PER_MINUTE = 60;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final double SECONDS_PER_DAY = 86_400;

  private BusReader() {}

  static Bus read(Section bus, Reading reading) {
    Thresholds thresholds =
        bus.part("thresholds_V", t -> thresholds(t, reading)).orElse(new Thresholds(1, 2, 2, 3));
    double holdOff = bus.number("hold_off_minutes", MINUTES, 5) * SECONDS_PER_MINUTE;
    DeadStart deadStart =
        bus.partOrDefaults(
            "dead_start",
            d ->
                new DeadStart(
                    d.bool("from_arrays_alone", true), d.number("needs_W", Spans.WATTS, 1.0)));
    Loads loads = bus.part("loads_W", l -> loads(l, reading)).orElse(new Loads(0, 0, 0, 0));
    double boot = bus.number("boot_seconds", BOOT_SECONDS, 60);
    OptionalDouble watchdog = watchdog(bus);
    var commandLoss = bus.partIfWritten("command_loss", BusReader::commandLoss);
    Deployment deployment = bus.partOrDefaults("deployment", BusReader::deployment);
    return new Bus(
        thresholds,
        holdOff,
        deadStart,
        loads,
        boot,
        watchdog,
        commandLoss,
        deployment.seconds(),
        deployment.restartsOnReset(),
        inrush(bus),
        bus.bool("orders_survive_reset", false));
  }

  private static Optional<Inrush> inrush(Section bus) {
    if (bus.at("inrush").isNothing()) {
      bus.noteDefault(bus.at("inrush"), "null (none)");
    }
    return bus.partIfWritten(
        "inrush", i -> new Inrush(i.number("W", Spans.WATTS), i.number("seconds", INRUSH_SECONDS)));
  }

  private static Thresholds thresholds(Section volts, Reading reading) {
    int before = reading.problems.count();
    double cutoff = volts.number("cutoff", Spans.VOLTS);
    double recovery = volts.number("recovery", Spans.VOLTS);
    double safeBelow = volts.number("safe_below", Spans.VOLTS);
    double nominalAbove = volts.number("nominal_above", Spans.VOLTS);
    if (reading.isFirst() && reading.problems.count() == before) {
      Rising low = new Rising("cutoff", cutoff);
      Rising middle = new Rising("safe_below", safeBelow);
      requireAbove(volts, reading, new Rising("recovery", recovery), low);
      requireAbove(volts, reading, middle, low);
      requireAbove(volts, reading, new Rising("nominal_above", nominalAbove), middle);
    }
    double gap = BatteryReader.LEAST_GAP_V;
    safeBelow = Math.max(safeBelow, cutoff + gap);
    return new Thresholds(
        cutoff,
        Math.max(recovery, cutoff + gap),
        safeBelow,
        Math.max(nominalAbove, safeBelow + gap));
  }

  /** A threshold in an order of thresholds, V. */
  private record Rising(String key, double volts) {
    String words() {
      return key + " " + Span.print(volts);
    }
  }

  private static void requireAbove(Section volts, Reading reading, Rising high, Rising low) {
    if (high.volts() <= low.volts()) {
      reading.problems.add(
          volts.at(high.key()),
          "found " + Span.print(high.volts()) + ", expected more than " + low.words(),
          "order them: cutoff below recovery, cutoff below safe_below below nominal_above");
    }
  }

  private static Loads loads(Section loads, Reading reading) {
    double off = loads.number("off", Spans.WATTS, 0.005);
    double boot = loads.number("boot", Spans.WATTS);
    double safe = loads.number("safe", Spans.WATTS);
    double nominal = loads.number("nominal", Spans.WATTS);
    if (reading.isFirst() && safe > nominal) {
      reading.warn(
          loads.at("safe"),
          "safe mode draws more than nominal (" + Span.print(nominal) + ")",
          "exchange them if they were mixed up");
    }
    return new Loads(off, boot, safe, nominal);
  }

  private static OptionalDouble watchdog(Section bus) {
    if (bus.at("watchdog_hours").isNothing()) {
      bus.noteDefault(bus.at("watchdog_hours"), "null (no watchdog)");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(bus.number("watchdog_hours", WATCHDOG_HOURS) * SECONDS_PER_HOUR);
  }

  private static CommandLoss commandLoss(Section timer) {
    return new CommandLoss(
        timer.number("days", DAYS) * SECONDS_PER_DAY,
        timer.choice("does", CommandLossAction.class),
        timer.bool("survives_reset", true));
  }

  private record Deployment(double seconds, boolean restartsOnReset) {}

  private static Deployment deployment(Section deployment) {
    return new Deployment(
        deployment.number("minutes", MINUTES, 30) * SECONDS_PER_MINUTE,
        deployment.bool("restarts_on_reset", false));
  }
}
