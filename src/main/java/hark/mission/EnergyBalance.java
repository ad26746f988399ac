package hark.mission;

import hark.ensemble.OrbitSource;
import hark.orbit.EarthModel;
import hark.orbit.Eclipse;
import hark.orbit.Eclipses;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.power.ArrayPower;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Mean power in and out of the typical body over a day of the likeliest object's orbit: one
 * division that finds most mistakes in a mission file. The simulation knows better; this only
 * warns.
 *
 * @param arrayWatts from the arrays through the charger, mean over sun and shadow, W
 * @param safeWatts loads in the safe state with its beacons, W
 * @param nominalWatts loads in the nominal state with its beacons, W
 */
record EnergyBalance(double arrayWatts, double safeWatts, double nominalWatts) {
  /** Total solar irradiance at 1 au, W/m². IAU 2015 Resolution B3. */
  private static final double SOLAR_IRRADIANCE = 1361;

  private static final Duration SPAN = Duration.ofDays(1);

  /** The balance of a body whose arrays see the Sun for so much of the time, 0…1. */
  static EnergyBalance of(PowerModel model, double sunlitFraction) {
    double array =
        ArrayPower.fullSunWatts(model, SOLAR_IRRADIANCE)
            * model.charging().efficiency()
            * sunlitFraction;
    return new EnergyBalance(array, load(model, BusState.SAFE), load(model, BusState.NOMINAL));
  }

  private static double load(PowerModel model, BusState state) {
    double beacons =
        model.beacons().stream()
            .filter(beacon -> beacon.states().contains(state))
            .mapToDouble(b -> b.transmitWatts() * b.durationSeconds() / b.intervalSeconds())
            .sum();
    return model.bus().loads().of(state) + beacons;
  }

  /** Warns when the loads take more than the arrays give. */
  static void check(YamlTree loads, PowerModel model, List<OrbitSource> sources, Reading reading) {
    Optional<Double> sunlit = likeliest(sources).flatMap(EnergyBalance::sunlitFraction);
    if (sunlit.isEmpty()) {
      return;
    }
    EnergyBalance balance = of(model, sunlit.get());
    String given =
        "the arrays give "
            + Span.print(rounded(balance.arrayWatts))
            + " W on average ("
            + Math.round(100 * sunlit.get())
            + " % of the time in sunlight)";
    if (balance.arrayWatts < balance.safeWatts) {
      reading.warn(
          loads,
          given + ", and safe mode takes " + Span.print(rounded(balance.safeWatts)),
          "if that is true the battery runs flat in every state; check cell areas and loads");
    } else if (balance.arrayWatts < balance.nominalWatts) {
      reading.warn(
          loads,
          given + ", and nominal mode takes " + Span.print(rounded(balance.nominalWatts)),
          "if that is true the bus falls back to safe mode again and again; check cell areas and loads");
    }
  }

  private static double rounded(double watts) {
    return Math.round(1000 * watts) / 1000.0;
  }

  /** The newest set of the object with the greatest weight in any source. */
  private static Optional<ElementSet> likeliest(List<OrbitSource> sources) {
    double best = 0;
    ElementSet found = null;
    for (OrbitSource source : sources) {
      for (Map.Entry<String, Double> candidate : source.candidates().entrySet()) {
        Optional<ElementSet> newest =
            source.sets().stream()
                .filter(set -> set.objectId().equals(candidate.getKey()))
                .findFirst();
        if (newest.isPresent() && candidate.getValue() > best) {
          best = candidate.getValue();
          found = newest.get();
        }
      }
    }
    return Optional.ofNullable(found);
  }

  /** Share of a day after the epoch outside of penumbra and umbra; empty when it decays. */
  private static Optional<Double> sunlitFraction(ElementSet set) {
    Trajectory trajectory = Trajectory.of(set, EarthModel.bundled());
    Instant from = set.epoch();
    Instant to = from.plus(SPAN);
    if (trajectory.validUntil(from, to).isPresent()) {
      return Optional.empty();
    }
    double dark = 0;
    for (Eclipse eclipse : Eclipses.find(trajectory, from, to)) {
      Instant start = eclipse.penumbraEntry().isBefore(from) ? from : eclipse.penumbraEntry();
      Instant end = eclipse.penumbraExit().isAfter(to) ? to : eclipse.penumbraExit();
      dark += Duration.between(start, end).toMillis();
    }
    return Optional.of(1 - dark / SPAN.toMillis());
  }
}
