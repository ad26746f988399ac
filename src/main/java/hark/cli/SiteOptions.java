package hark.cli;

import hark.station.HorizonMask;
import hark.station.Site;
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
      defaultValue = "0",
      description = "Least elevation of a pass, geometric (default: ${DEFAULT-VALUE}).")
  private double minElevationDeg;

  @Option(names = "--refraction", description = "Comes with a later version.")
  private boolean refraction;

  Site site() {
    if (refraction) {
      throw wrong("--refraction comes with a later version; elevations are geometric for now.");
    }
    if (site == null) {
      throw wrong("Which site? Give --site LAT,LON,ALT_M.");
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
      return HorizonMask.flat(minElevationDeg);
    } catch (IllegalArgumentException e) {
      throw wrong("--min-elevation: " + e.getMessage() + ".");
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
