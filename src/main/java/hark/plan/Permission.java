package hark.plan;

import hark.ensemble.DiagnosisInput;
import hark.ensemble.SkyWindow;
import hark.station.Station;
import java.time.Instant;
import java.util.Optional;

/** Whether a station may be used in a window, and whether it may send. */
final class Permission {
  private static final double HERTZ_IN_MEGAHERTZ = 1e6;

  private final DiagnosisInput input;

  Permission(DiagnosisInput input) {
    this.input = input;
  }

  private Station station(SkyWindow sky) {
    return input.stations().get(sky.station());
  }

  /** Why nobody may sit there, in words; empty when somebody may. */
  Optional<String> against(SkyWindow sky) {
    Instant from = input.instant(sky.from());
    return station(sky).use().available().against(from, input.instant(sky.to()));
  }

  /** True when the licence holds, covers the uplink, and does not ask for silence meanwhile. */
  boolean mayTransmit(SkyWindow sky) {
    return station(sky).transmit().isPresent() && againstSending(sky).isEmpty();
  }

  /** Why nothing may be sent from there then, in words; empty when the licence allows it. */
  Optional<String> againstSending(SkyWindow sky) {
    Optional<Station.Licence> licence = station(sky).transmit().map(Station.Transmit::licence);
    Instant from = input.instant(sky.from());
    Instant to = input.instant(sky.to());
    if (licence.isEmpty()) {
      return Optional.of("the station only listens");
    }
    if (!licence.get().covers(input.receiver().frequencyHz() / HERTZ_IN_MEGAHERTZ)) {
      return Optional.of("no licensed band covers the uplink");
    }
    if (!licence.get().holdsAt(to)) {
      return Optional.of("the licence has ended by then");
    }
    return licence.get().silent().meets(from, to)
        ? Optional.of("nothing may be sent in that time")
        : Optional.empty();
  }
}
