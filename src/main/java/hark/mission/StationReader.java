package hark.mission;

import hark.station.HorizonMask;
import hark.station.Site;
import hark.station.Station;
import hark.station.Station.Cost;
import hark.station.Station.Licence;
import hark.station.Station.Polarisation;
import hark.station.Station.Receive;
import hark.station.Station.Rotator;
import hark.station.Station.Transmit;
import hark.station.Station.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one of {@code stations}. */
final class StationReader {
  private static final Span LATITUDE = Span.of(-90, 90);
  private static final Span LONGITUDE = Span.of(-180, 360);
  private static final Span ALTITUDE_M = Span.of(-500, 9000);
  private static final Span ELEVATION = Span.of(-5, 89).usually(0, 45);
  private static final Span AZIMUTH = Span.of(0, 360);
  private static final Span GAIN_DBI = Span.of(-20, 70).usually(-10, 55);
  private static final Span NOISE_K = Span.of(5, 1e6).usually(20, 30_000);
  private static final Span BEAMWIDTH = Span.of(0.05, 360);
  private static final Span TUNING_HZ = Span.of(1, 1e7).usually(100, 1e6).orIn("kHz", 1e3);
  private static final Span POWER_W = Span.of(0.001, 10_000).usually(0.1, 1500);
  private static final Span WEEK_HOURS = Span.of(0.1, 168);
  private static final Span HOURS = Span.of(0, 100).usually(0, 12).orIn("minutes", 1 / 60.0);

  private StationReader() {}

  static Station read(Section station, Reading reading) {
    Site site =
        new Site(
            station.text("name"),
            station.mean("latitude_deg", LATITUDE),
            station.mean("longitude_deg", LONGITUDE),
            station.mean("altitude_m", ALTITUDE_M));
    double floor = station.mean("min_elevation_deg", ELEVATION, 5);
    List<double[]> points = rows(station.at("horizon"), ELEVATION, reading);
    Receive receive =
        station
            .part("receive", r -> receive(r, reading))
            .orElse(new Receive(0, 1, List.of(), 1, Polarisation.LINEAR, 1, false));
    Optional<Transmit> transmit = station.partIfWritten("transmit", t -> transmit(t, reading));
    Optional<Rotator> rotator = station.partIfWritten("rotator", StationReader::rotator);
    Use use = new Use(RotaReader.available(station, reading), antennaHours(station));
    return new Station(
        site,
        HorizonMask.of(floor, points),
        receive,
        transmit,
        rotator,
        DoubtsReader.read(station),
        station.partOrDefaults("cost_hours", StationReader::cost),
        use);
  }

  private static double antennaHours(Section station) {
    YamlTree written = station.at("hours_per_week");
    return written.isNothing()
        ? Double.POSITIVE_INFINITY
        : station.mean("hours_per_week", WEEK_HOURS);
  }

  private static Receive receive(Section receive, Reading reading) {
    return new Receive(
        receive.mean("gain_dBi", GAIN_DBI),
        receive.mean("system_noise_K", NOISE_K),
        rows(receive.at("noise_by_azimuth_dB"), Spans.DB, reading),
        receive.mean("beamwidth_deg", BEAMWIDTH),
        receive.choice("polarisation", Polarisation.LINEAR),
        receive.mean("tuning_Hz", TUNING_HZ, 5000),
        receive.bool("unattended", false));
  }

  private static Transmit transmit(Section transmit, Reading reading) {
    return new Transmit(
        transmit.mean("power_W", POWER_W),
        transmit.mean("gain_dBi", GAIN_DBI),
        transmit
            .part("licence", l -> licence(l, reading))
            .orElse(new Licence("", List.of(), Optional.empty(), List.of())));
  }

  private static Licence licence(Section licence, Reading reading) {
    String holder = licence.text("holder");
    YamlTree node = licence.required("bands_MHz");
    List<double[]> bands = Bands.read(node, reading);
    if (node.kind() == YamlTree.Kind.LIST && node.items().isEmpty()) {
      reading.problems.add(
          node, "no band is licensed", "add [lowest, highest] or leave transmit out");
    }
    List<String> may = YamlValues.texts(licence.required("may_authorise"), reading.problems);
    return new Licence(
        holder,
        bands,
        YamlValues.untilEndOf(licence.at("until"), reading.problems),
        may,
        RotaReader.read(licence.at("silent"), reading));
  }

  /** Rows of azimuth and value; the span is that of the value. */
  private static List<double[]> rows(YamlTree node, Span span, Reading reading) {
    List<double[]> rows = new ArrayList<>();
    for (YamlTree row : YamlValues.list(node, reading.problems)) {
      Optional<double[]> read = YamlValues.numbers(row, 2, reading.problems);
      if (read.isEmpty()) {
        continue;
      }
      double[] pair = read.get();
      if (!AZIMUTH.holds(pair[0])) {
        reading.problems.add(row, YamlValues.outside(pair[0], AZIMUTH), "azimuth comes first");
      } else if (!span.holds(pair[1])) {
        reading.problems.add(row, YamlValues.outside(pair[1], span), "azimuth comes first");
      } else {
        rows.add(pair);
      }
    }
    return rows;
  }

  private static Rotator rotator(Section rotator) {
    return new Rotator(
        rotator.mean("rate_deg_s", Span.of(0.05, 90), 5), rotator.bool("keyhole", true));
  }

  private static Cost cost(Section cost) {
    return new Cost(
        cost.mean("session", HOURS, 0.3),
        cost.mean("pass", HOURS, 0.4),
        cost.mean("night_factor", Span.of(0.1, 20), 1.5),
        cost.mean("authorisation", HOURS, 0.25));
  }
}
