package hark.mission;

import hark.ensemble.OrbitSource;
import hark.orbit.EarthModel;
import hark.orbit.Eclipse;
import hark.orbit.Eclipses;
import hark.orbit.ElementSet;
import hark.orbit.SunYear;
import hark.orbit.Trajectory;
import hark.power.ArrayPower;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import hark.power.StateLoads;
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
  static final double SOLAR_IRRADIANCE = 1361;

  private static final int DAYS = 366;
  private static final Duration SPAN = Duration.ofDays(1);

  /** The balance of a body whose arrays see the Sun for so much of the time, 0…1. */
  static EnergyBalance of(PowerModel model, double sunlitFraction) {
    double array =
        ArrayPower.fullSunWatts(model, SOLAR_IRRADIANCE)
            * model.charging().efficiency()
            * sunlitFraction;
    return new EnergyBalance(
        array, StateLoads.watts(model, BusState.SAFE), StateLoads.watts(model, BusState.NOMINAL));
  }

  /**
   * Warns when the loads take more than the arrays give: in full sun, as it is now, or in the
   * season with most shadow; the worst alone.
   */
  static void check(YamlTree loads, PowerModel model, List<OrbitSource> sources, Reading reading) {
    Optional<ElementSet> set = likeliest(sources);
    Optional<Double> now = set.flatMap(EnergyBalance::sunlitFraction);
    if (now.isEmpty()) {
      return;
    }
    EnergyBalance fullSun = of(model, 1);
    if (fullSun.arrayWatts < fullSun.safeWatts) {
      reading.warn(
          loads,
          "even in full sun "
              + fullSun.gives(1)
              + ", and safe mode takes "
              + print(fullSun.safeWatts),
          "if that is true the battery runs flat in every season; check cell areas and loads");
    } else if (!of(model, now.get()).warned(loads, now.get(), reading)) {
      double least = Math.min(now.get(), leastSunlit(set.get()));
      of(model, least).warnOfSeason(loads, least, reading);
    }
  }

  /** Warns of a balance that is negative as things are; false when it is not. */
  private boolean warned(YamlTree loads, double sunlit, Reading reading) {
    if (arrayWatts < safeWatts) {
      reading.warn(
          loads,
          gives(sunlit) + ", and safe mode takes " + print(safeWatts),
          "if that is true the battery runs flat until a season with less shadow; check cell areas"
              + " and loads");
    } else if (arrayWatts < nominalWatts) {
      reading.warn(
          loads,
          gives(sunlit) + ", and nominal mode takes " + print(nominalWatts),
          "if that is true the bus falls back to safe mode again and again; check cell areas and"
              + " loads");
    }
    return arrayWatts < Math.max(safeWatts, nominalWatts);
  }

  private void warnOfSeason(YamlTree loads, double sunlit, Reading reading) {
    boolean safe = arrayWatts < safeWatts;
    if (safe || arrayWatts < nominalWatts) {
      String state =
          safe
              ? "safe mode takes " + print(safeWatts)
              : "nominal mode takes " + print(nominalWatts);
      reading.warn(
          loads,
          "in eclipse season, though not now, " + gives(sunlit) + ", and " + state,
          safe
              ? "if that is true the battery runs flat then; check cell areas and loads"
              : "if that is true the bus falls back to safe mode again and again then");
    }
  }

  private String gives(double sunlit) {
    return "the arrays give "
        + print(arrayWatts)
        + " W on average ("
        + Math.round(100 * sunlit)
        + " % of the time in sunlight)";
  }

  static String print(double watts) {
    return Span.print(Math.round(1000 * watts) / 1000.0);
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

  /**
   * Least share of light over the year after an element set's epoch, 0…1; 1, which warns of
   * nothing, where the orbit is too eccentric to tell.
   */
  static double leastSunlit(ElementSet set) {
    if (set.eccentricity() > SunYear.MOST_ECCENTRIC) {
      return 1;
    }
    return SunYear.of(set, EarthModel.bundled(), set.epoch(), DAYS).days().stream()
        .mapToDouble(day -> 1 - day.eclipseFraction())
        .min()
        .orElse(1);
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
