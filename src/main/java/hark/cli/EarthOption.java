package hark.cli;

import hark.orbit.EarthModel;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** {@code --orekit-data}: which Earth to compute with; use as a mixin. */
final class EarthOption {
  @Option(
      names = "--orekit-data",
      paramLabel = "DIR",
      defaultValue = "${env:HARK_OREKIT_DATA}",
      description = {
        "Folder of Orekit data: leap seconds and Earth orientation",
        "(default: $HARK_OREKIT_DATA, else bundled leap seconds and UT1 = UTC)."
      })
  private Path orekitData;

  /** The model of the Earth that was asked for. */
  EarthModel earth() {
    return orekitData == null || orekitData.toString().isBlank()
        ? EarthModel.bundled()
        : EarthModel.fromFolder(orekitData);
  }
}
