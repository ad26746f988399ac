package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.SkyWindow;
import hark.station.Station;
import java.time.Instant;
import java.util.List;

/** Hours of people's time: a session for each sitting, and each pass in it. */
final class Costs {
  /** No hours at all would divide by zero; two minutes is as little as anything costs. */
  static final double LEAST_HOURS = 1.0 / 30;

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

  /** Beside session and pass: what the procedure takes, and the word of who may authorise, h. */
  double extraHours(int window, Procedure procedure) {
    boolean sends = procedure.change() instanceof Procedure.Command;
    return procedure.costHours() + (sends ? station(window).cost().authorityHours() : 0);
  }

  private Station station(int window) {
    return input.stations().get(windows.get(window).station());
  }

  private double night(int window) {
    Instant begin = input.instant(windows.get(window).from());
    Station station = station(window);
    return Nights.isNight(begin, station.site().longitudeDeg()) ? station.cost().nightFactor() : 1;
  }
}
