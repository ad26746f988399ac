package hark.mission;

import hark.ensemble.BeaconRadio;
import hark.ensemble.ReceiverRadio;
import hark.ensemble.ReceiverRadio.Authentication;
import hark.ensemble.Uncertain;
import hark.mission.RhythmReader.Rhythm;
import hark.mission.YamlTree.Kind;
import hark.power.PowerModel.Beacon;
import hark.power.PowerModel.BusState;
import hark.power.PowerModel.Receiver;
import hark.station.Station.Polarisation;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Reads {@code spacecraft.beacons} and {@code spacecraft.receiver}, each into what draws power and
 * what is heard.
 */
final class RadioReader {
  private static final Span DURATION_S = Span.of(0.001, 3600).usually(0.05, 120);
  private static final Span RADIATED_DBM = Span.of(-60, 70).usually(-20, 45);
  private static final Span ERROR_HZ = Span.of(-1e6, 1e6).usually(-50_000, 50_000);
  private static final Span BANDWIDTH_HZ = Span.of(1, 1e7).usually(10, 1e6).orIn("kHz", 1e3);
  private static final Span SNR_DB = Span.of(-30, 40);
  private static final Span SENSITIVITY_DBM = Span.of(-160, -20).usually(-140, -70);
  private static final Span GAIN_DBI = Span.of(-40, 60).usually(-20, 20);
  private static final double HZ_PER_MHZ = 1e6;

  private RadioReader() {}

  /** A beacon as the bus and as a listener knows it. */
  record BeaconPart(Beacon power, BeaconRadio radio) {}

  /** A receiver as the bus and as a command knows it. */
  record ReceiverPart(Receiver power, ReceiverRadio radio) {
    static final ReceiverPart NONE =
        new ReceiverPart(
            new Receiver(Set.of(), 0),
            new ReceiverRadio(1, 0, 0, true, Authentication.NONE, false));
  }

  static BeaconPart beacon(Section beacon, Reading reading) {
    int before = reading.problems.count();
    String name = beacon.text("name", "beacon");
    Set<BusState> states = states(beacon, reading);
    Rhythm rhythm = RhythmReader.read(beacon, reading);
    double duration = beacon.number("duration_s", DURATION_S);
    double watts = beacon.number("transmit_W", Spans.WATTS);
    BeaconRadio radio = radio(beacon, name);
    double shortest = rhythm.shortest();
    Beacon fitting =
        new Beacon(
            name,
            states,
            rhythm.usualSeconds(),
            Math.min(duration, shortest),
            watts,
            rhythm.pace());
    if (reading.isFirst() && reading.problems.count() == before) {
      checkDuration(beacon, reading, duration, shortest);
      checkPower(beacon, reading, fitting, radio);
    }
    return new BeaconPart(fitting, radio);
  }

  private static BeaconRadio radio(Section beacon, String name) {
    return new BeaconRadio(
        name,
        beacon.mean("frequency_MHz", Spans.FREQUENCY_MHZ) * HZ_PER_MHZ,
        beacon.uncertain("radiated_dBm", RADIATED_DBM),
        beacon.uncertain("frequency_error_Hz", ERROR_HZ, new Uncertain.Normal(0, 500)),
        beacon.choice("polarisation", Polarisation.LINEAR),
        beacon.mean("bandwidth_Hz", BANDWIDTH_HZ),
        beacon.choice("form", BeaconRadio.Form.FRAMES),
        beacon.mean("required_snr_dB", SNR_DB, 10),
        beacon.mean("pattern_sd_dB", Spans.DB, 4),
        new BeaconRadio.Telling(callSign(beacon), beacon.bool("counter_survives_reset", false)));
  }

  private static Optional<String> callSign(Section beacon) {
    if (beacon.at("call_sign").isNothing()) {
      beacon.noteDefault(beacon.at("call_sign"), "null (any call sign counts as ours)");
      return Optional.empty();
    }
    return Optional.of(beacon.text("call_sign"));
  }

  private static void checkDuration(Section at, Reading reading, double duration, double interval) {
    if (duration > interval) {
      reading.problems.add(
          at.at("duration_s"),
          "a burst of "
              + Span.print(duration)
              + " s does not fit its interval of "
              + Span.print(interval)
              + " s",
          "interval_s runs from the start of one burst to the start of the next");
    }
  }

  private static void checkPower(Section at, Reading reading, Beacon power, BeaconRadio radio) {
    double radiatedWatts = 1e-3 * Math.pow(10, radio.radiated().mean() / 10);
    if (radiatedWatts > power.transmitWatts()) {
      reading.warn(
          at.at("radiated_dBm"),
          "radiates "
              + Span.print(radiatedWatts)
              + " W and draws only transmit_W "
              + Span.print(power.transmitWatts()),
          "radiated_dBm is averaged over the sphere; antenna gain in one direction adds nothing");
    }
  }

  private static Set<BusState> states(Section part, Reading reading) {
    YamlTree node = part.at("states");
    Set<BusState> states = EnumSet.noneOf(BusState.class);
    if (node.isNothing()) {
      part.noteDefault(node, "[safe, nominal]");
      return EnumSet.of(BusState.SAFE, BusState.NOMINAL);
    }
    for (YamlTree item : YamlValues.list(node, reading.problems)) {
      Optional<BusState> state = YamlValues.choice(item, BusState.class, reading.problems);
      if (state.filter(s -> s == BusState.OFF).isPresent()) {
        reading.problems.add(
            item, "nothing sends or listens in state off", "name boot, safe or nominal");
      }
      state.ifPresent(states::add);
    }
    if (node.kind() == Kind.LIST && node.items().isEmpty()) {
      reading.problems.add(node, "the list is empty", "name boot, safe or nominal");
    }
    return states;
  }

  static ReceiverPart receiver(Section receiver, Reading reading) {
    Receiver power =
        new Receiver(
            states(receiver, reading),
            receiver.number("duty", Spans.FRACTION, 1.0),
            receiver.number("draw_W", Spans.WATTS, 0));
    ReceiverRadio radio =
        new ReceiverRadio(
            receiver.mean("frequency_MHz", Spans.FREQUENCY_MHZ) * HZ_PER_MHZ,
            receiver.mean("sensitivity_dBm", SENSITIVITY_DBM, -110),
            receiver.mean("antenna_gain_dBi", GAIN_DBI, 0),
            receiver.bool("half_duplex", true),
            receiver.choice("authentication", Authentication.NONE),
            receiver.bool("counter_lost_on_reset", false));
    return new ReceiverPart(power, radio);
  }
}
