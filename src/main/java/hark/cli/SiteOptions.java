package hark.cli;

import hark.problem.NearestWord;
import hark.station.HorizonMask;
import hark.station.Site;
import hark.station.Station;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options for a place on the ground and what it sees. */
final class SiteOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--site",
      paramLabel = "LAT,LON,ALT_M",
      description = "Degrees north, degrees east, metres above the ellipsoid.")
  private String site;

  @Option(names = "--name", paramLabel = "N", description = "Name of the site in the output.")
  private String name;

  @Option(
      names = "--min-elevation",
      paramLabel = "DEG",
      description = "Least elevation of a pass, geometric (default: 0).")
  private Double minElevationDeg;

  @Option(
      names = "--station",
      paramLabel = "NAME",
      description = "With a MISSION: only this station; may be given several times.")
  private List<String> stations = List.of();

  @Option(names = "--refraction", description = "Comes with a later version; refused for now.")
  private boolean refraction;

  /** For a mission, which brings its own stations. */
  void refuseSite() {
    refuseRefraction();
    if (site != null || name != null || minElevationDeg != null) {
      throw wrong(
          "A MISSION brings its own stations; leave out --site, --name and --min-elevation.");
    }
  }

  /** For a site, which is only one. */
  void refuseStations() {
    if (!stations.isEmpty()) {
      throw wrong("--station picks among the stations of a MISSION; name its folder.");
    }
  }

  /** The stations asked for; all when nothing was asked. */
  List<SkyQuestion.Place> places(List<Station> all) {
    List<String> known = all.stream().map(Station::name).toList();
    for (String asked : stations) {
      if (!known.contains(asked)) {
        throw wrong(
            "--station '"
                + asked
                + "' is not among the stations; "
                + NearestWord.advice(asked, known));
      }
    }
    return all.stream()
        .filter(station -> stations.isEmpty() || stations.contains(station.name()))
        .map(station -> new SkyQuestion.Place(station.site(), station.mask()))
        .toList();
  }

  private void refuseRefraction() {
    if (refraction) {
      throw wrong("--refraction comes with a later version; elevations are geometric for now.");
    }
  }

  Site site() {
    refuseRefraction();
    if (site == null) {
      throw wrong("Which site? Give --site LAT,LON,ALT_M, or a MISSION folder.");
    }
    String[] parts = site.split(",", -1);
    if (parts.length != 3) {
      throw wrong("--site '" + site + "' is not LAT,LON,ALT_M such as 48.9,8.4,115.");
    }
    try {
      return new Site(
          name == null ? site : name, number(parts[0]), number(parts[1]), number(parts[2]));
    } catch (IllegalArgumentException e) {
      throw wrong("--site '" + site + "': " + e.getMessage() + ".");
    }
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("'" + text + "' is not a number", e);
    }
  }

  HorizonMask mask() {
    try {
      return HorizonMask.flat(minElevationDeg == null ? 0 : minElevationDeg);
    } catch (IllegalArgumentException e) {
      throw wrong("--min-elevation: " + e.getMessage() + ".");
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
