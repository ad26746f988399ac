package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.SkyWindow;
import hark.station.Station;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Hours of people's time: a session for each sitting, and each pass in it. */
final class Costs {
  /**
   * Windows at one station that begin within this time share a sitting, s. Common practice: people
   * stay.
   */
  private static final double ONE_SITTING_SECONDS = 2.5 * 3600;

  /** No hours at all would divide by zero; two minutes is as little as anything costs. */
  static final double LEAST_HOURS = 1.0 / 30;

  private static final int NIGHT_FROM_HOUR = 22;
  private static final int NIGHT_TO_HOUR = 6;

  private final DiagnosisInput input;
  private final List<SkyWindow> windows;

  Costs(Diagnosis diagnosis) {
    this.input = diagnosis.input();
    this.windows = diagnosis.windows();
  }

  /** One pass in a sitting that is already there, h. */
  double passHours(int window) {
    return station(window).cost().passHours() * night(window);
  }

  /** Setting up for it, h. */
  double sessionHours(int window) {
    return station(window).cost().sessionHours() * night(window);
  }

  private Station station(int window) {
    return input.stations().get(windows.get(window).station());
  }

  private double night(int window) {
    return isNight(window) ? station(window).cost().nightFactor() : 1;
  }

  /** True between 22 and 06 local mean solar time. */
  boolean isNight(int window) {
    Instant begin = input.instant(windows.get(window).from());
    double utcHours = begin.atOffset(ZoneOffset.UTC).toLocalTime().toSecondOfDay() / 3600.0;
    double local = utcHours + station(window).site().longitudeDeg() / 15;
    double hour = local - 24 * Math.floor(local / 24);
    return hour >= NIGHT_FROM_HOUR || hour < NIGHT_TO_HOUR;
  }

  /**
   * Hours for a set of windows, sittings shared.
   *
   * @param taken indices of windows in any order
   * @param extraHours each window's procedure hours, by window
   */
  double hours(List<Integer> taken, double[] extraHours) {
    double sum = 0;
    for (int station = 0; station < input.stations().size(); station++) {
      double sittingFrom = Double.NEGATIVE_INFINITY;
      for (int window : atStation(taken, station)) {
        double from = windows.get(window).from();
        if (from - sittingFrom > ONE_SITTING_SECONDS) {
          sum += sessionHours(window);
        }
        sittingFrom = from;
        sum += passHours(window) + extraHours[window];
      }
    }
    return sum;
  }

  private List<Integer> atStation(List<Integer> taken, int station) {
    List<Integer> here = new ArrayList<>(taken);
    here.removeIf(window -> windows.get(window).station() != station);
    here.sort(Comparator.comparingDouble(window -> windows.get(window).from()));
    return here;
  }
}
