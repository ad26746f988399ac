package hark.trial.follow;

import hark.ensemble.DiagnosisInput;
import hark.station.Station;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * Hours of people's time, counted as the plan counts them: a session for each sitting, and each
 * pass in it; nights cost more. Kept week by week from the campaign's start.
 */
final class Timesheet {
  private static final double WEEK = 7 * 86_400.0;

  /** Windows at one station that begin within this time share a sitting, s. Common practice. */
  private static final double ONE_SITTING_SECONDS = 2.5 * 3600;

  private static final int NIGHT_FROM_HOUR = 22;
  private static final int NIGHT_TO_HOUR = 6;

  private final Scene scene;
  private final double start;
  private final double end;
  private final double perWeek;
  private final List<Integer> taken = new ArrayList<>();
  private final List<Double> extra = new ArrayList<>();
  private double total;
  private int nights;

  Timesheet(Scene scene, double start, double end, double perWeek) {
    this.scene = scene;
    this.start = start;
    this.end = end;
    this.perWeek = perWeek;
  }

  /** Number of the week in which a window begins. */
  int week(int window) {
    return weekAt(scene.from(window));
  }

  int weekAt(double seconds) {
    return (int) Math.floor((seconds - start) / WEEK);
  }

  /** Hours of a week; the last one may be short. */
  double allowed(int week) {
    double length = Math.min(WEEK, end - (start + week * WEEK));
    return perWeek * Math.max(0, length) / WEEK;
  }

  double spent(int week) {
    double sum = 0;
    for (int k = 0; k < taken.size(); k++) {
      sum += week(taken.get(k)) == week ? cost(k) : 0;
    }
    return sum;
  }

  /** Hours left of the week at a time. */
  double left(double seconds) {
    return allowed(weekAt(seconds)) - spent(weekAt(seconds));
  }

  /** Whether another window fits into its week. */
  boolean fits(int window, double extraHours) {
    double hours = hours(window, previous(window)) + extraHours;
    return spent(week(window)) + hours <= allowed(week(window)) + 1e-9;
  }

  /** Sits through a window; windows come in the order of time. */
  void sit(int window, double extraHours) {
    taken.add(window);
    extra.add(extraHours);
    total += cost(taken.size() - 1);
    nights += isNight(window) ? 1 : 0;
  }

  double total() {
    return total;
  }

  int nights() {
    return nights;
  }

  private double cost(int k) {
    return hours(taken.get(k), previousOf(k)) + extra.get(k);
  }

  private int previousOf(int k) {
    for (int j = k - 1; j >= 0; j--) {
      if (station(taken.get(j)) == station(taken.get(k))) {
        return taken.get(j);
      }
    }
    return -1;
  }

  private int previous(int window) {
    for (int j = taken.size() - 1; j >= 0; j--) {
      if (station(taken.get(j)) == station(window)) {
        return taken.get(j);
      }
    }
    return -1;
  }

  private int station(int window) {
    return scene.windows().get(window).station();
  }

  /** Session and pass; no session when the window before at that station was close. */
  private double hours(int window, int before) {
    Station.Cost cost = scene.input().stations().get(station(window)).cost();
    boolean sits = before >= 0 && scene.from(window) - scene.from(before) <= ONE_SITTING_SECONDS;
    double hours = cost.passHours() + (sits ? 0 : cost.sessionHours());
    return hours * (isNight(window) ? cost.nightFactor() : 1);
  }

  /** True between 22 and 06 local mean solar time. */
  private boolean isNight(int window) {
    DiagnosisInput input = scene.input();
    Station station = input.stations().get(station(window));
    double utc =
        scene.windows().get(window).from().atOffset(ZoneOffset.UTC).toLocalTime().toSecondOfDay()
            / 3600.0;
    double local = utc + station.site().longitudeDeg() / 15;
    double hour = local - 24 * Math.floor(local / 24);
    return hour >= NIGHT_FROM_HOUR || hour < NIGHT_TO_HOUR;
  }

  /** An empty sheet of the same campaign. */
  Timesheet blank() {
    return new Timesheet(scene, start, end, perWeek);
  }
}
