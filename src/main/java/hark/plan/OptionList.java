package hark.plan;

import hark.ensemble.BeaconRadio;
import hark.ensemble.Candidate;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Listening;
import hark.ensemble.SkyWindow;
import hark.link.Way;
import hark.station.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * Which procedures are possible in which window: by what the station has, and by licence for
 * everything that sends.
 */
final class OptionList {
  /**
   * A larger station needs at least so much notice, s. Common practice: nobody turns a dish within
   * the hour.
   */
  private static final double NOTICE_SECONDS = 86400;

  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final List<Procedure> procedures;
  private final Costs costs;
  private final double[] objects;
  private final Permission permission;

  OptionList(Diagnosis diagnosis, List<Procedure> procedures, Costs costs) {
    this.diagnosis = diagnosis;
    this.input = diagnosis.input();
    this.procedures = procedures;
    this.costs = costs;
    this.objects = diagnosis.objects();
    this.permission = new Permission(input);
  }

  List<WindowOption> at(int window) {
    List<WindowOption> options = new ArrayList<>();
    boolean open = permission.against(diagnosis.windows().get(window)).isEmpty();
    for (Procedure procedure : procedures) {
      boolean stays = procedure.change() instanceof Procedure.Wait;
      if ((open || stays) && isPossible(procedure, window)) {
        options.add(option(procedure, window));
      }
    }
    return options;
  }

  private boolean isPossible(Procedure procedure, int window) {
    SkyWindow sky = diagnosis.windows().get(window);
    Station station = input.stations().get(sky.station());
    if (procedure.change() instanceof Procedure.Command) {
      boolean inTime = Diagnosis.sendingTime(input, sky) > input.seconds(input.now());
      return inTime && permission.mayTransmit(sky);
    }
    if (procedure.change() instanceof Procedure.Listen listen) {
      return isPossible(listen, sky, station);
    }
    if (procedure.change() instanceof Procedure.Settle settle) {
      return Settling.isOpen(settle.question(), objects, diagnosis);
    }
    return !(procedure.change() instanceof Procedure.Wait wait)
        || wait.until() == Procedure.Until.DECIDED;
  }

  private boolean isPossible(Procedure.Listen listen, SkyWindow sky, Station station) {
    boolean others = listen.setting().who() == Procedure.Who.OUTSIDE || listen.extraGainDb() > 0;
    boolean asked = !others || sky.from() >= input.seconds(input.now()) + NOTICE_SECONDS;
    boolean alone =
        listen.setting().who() != Procedure.Who.NOBODY || station.receive().unattended();
    return asked
        && alone
        && (!listen.setting().otherHand() || handMatters(station))
        && listen.setting().sunriseMinutes().stream().allMatch(m -> seesSunrise(sky, m))
        && (!listen.otherCandidate() || rank(sky, 1) >= 0);
  }

  /** Between linear and circular either hand is the same. */
  private boolean handMatters(Station station) {
    return station.receive().polarisation() != Station.Polarisation.LINEAR
        && input.beacons().stream()
            .anyMatch(beacon -> beacon.polarisation() != Station.Polarisation.LINEAR);
  }

  private boolean seesSunrise(SkyWindow sky, double minutesBefore) {
    return diagnosis.eclipses().stream()
        .mapToDouble(eclipse -> input.seconds(eclipse.penumbraExit()))
        .anyMatch(sunrise -> sky.from() - 60 * minutesBefore <= sunrise && sunrise <= sky.to());
  }

  private WindowOption option(Procedure procedure, int window) {
    SkyWindow sky = diagnosis.windows().get(window);
    boolean stays = procedure.change() instanceof Procedure.Wait;
    double hours =
        stays
            ? 0
            : costs.sessionHours(window)
                + costs.passHours(window)
                + costs.extraHours(window, procedure);
    return new WindowOption(procedure, listening(procedure, sky), !stays, hours);
  }

  private Listening listening(Procedure procedure, SkyWindow sky) {
    Listening usual = usual(sky);
    if (procedure.change() instanceof Procedure.Listen listen) {
      return new Listening(
          listen.way().orElse(usual.way()),
          listen.windowHz().orElse(usual.windowHz()),
          listen.offsetSeconds(),
          listen.otherCandidate() ? rank(sky, 1) : usual.tracked(),
          listen.extraGainDb(),
          0,
          Double.NaN,
          listen.setting().otherHand());
    }
    return usual;
  }

  /**
   * As a station listens when nothing else is said: the likeliest object now, its own way and band.
   */
  Listening usual(SkyWindow sky) {
    Station station = input.stations().get(sky.station());
    BeaconRadio beacon = input.beacons().get(0);
    return new Listening(
        Diagnosis.usualWay(beacon, station), station.receive().tuningHz(), 0, rank(sky, 0), 0, 0);
  }

  /** The widest ear there is, by which a possibility counts as audible. */
  Listening widest(SkyWindow sky) {
    double widest =
        procedures.stream()
            .map(Procedure::change)
            .filter(Procedure.Listen.class::isInstance)
            .flatMap(change -> ((Procedure.Listen) change).windowHz().stream())
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(usual(sky).windowHz());
    return new Listening(
        Way.RECORDING, Math.max(widest, usual(sky).windowHz()), 0, rank(sky, 0), 0, 0);
  }

  /**
   * The candidate that is n-th by posterior among those that rise in a window; −1 when there are
   * not so many.
   */
  private int rank(SkyWindow sky, int place) {
    List<Integer> order = new ArrayList<>();
    for (int k = 0; k < objects.length; k++) {
      boolean catalogued = !input.candidates().get(k).objectId().equals(Candidate.NONE);
      if (catalogued && sky.passes().get(k).isPresent()) {
        order.add(k);
      }
    }
    order.sort((a, b) -> Double.compare(objects[b], objects[a]));
    return place < order.size() ? order.get(place) : -1;
  }
}
