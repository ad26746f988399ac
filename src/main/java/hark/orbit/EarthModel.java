package hark.orbit;

import hark.problem.BadInput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.Optional;
import org.orekit.data.DirectoryCrawler;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.errors.OrekitException;
import org.orekit.frames.EOPHistory;
import org.orekit.frames.Frame;
import org.orekit.frames.Frames;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.TimeScale;
import org.orekit.time.TimeScales;
import org.orekit.utils.IERSConventions;

/**
 * Time scales and the orientation of the Earth. Immutable and safe to share.
 *
 * <p>The bundled model knows the leap seconds and takes UT1 as UTC and the pole as still. For UT1 −
 * UTC of 0.1 s that is 52 m on the ground and about 8 ms of AOS; the bound of 0.9 s is 447 m and
 * 0.7 s on a grazing pass. A folder of Orekit data removes the error where its tables reach; beyond
 * their ends the offsets are zero again.
 */
public final class EarthModel {
  /** WGS-84 equatorial radius, m. */
  public static final double EQUATORIAL_RADIUS_METERS = 6378137.0;

  /** WGS-84 flattening. */
  public static final double FLATTENING = 1 / 298.257223563;

  private final TimeScales scales;
  private final Frames frames;
  private final Optional<EOPHistory> orientation;

  private EarthModel(TimeScales scales, Frames frames, Optional<EOPHistory> orientation) {
    this.scales = scales;
    this.frames = frames;
    this.orientation = orientation;
  }

  /** The model that needs no file. */
  public static EarthModel bundled() {
    TimeScales scales =
        TimeScales.of(LeapSeconds.offsets(), (conventions, all) -> Collections.emptyList());
    Frames frames =
        Frames.of(
            scales,
            () -> {
              throw new UnsupportedOperationException("no bodies of the solar system are bundled");
            });
    return new EarthModel(scales, frames, Optional.empty());
  }

  /**
   * The model of a folder with Orekit's data files (leap seconds and Earth orientation).
   *
   * @throws BadInput when the folder is missing or lacks either
   */
  public static EarthModel fromFolder(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw BadInput.of(
          "there is no such folder", folder.toString(), "name a folder of Orekit data files");
    }
    try {
      LazyLoadedDataContext context = new LazyLoadedDataContext();
      context.getDataProvidersManager().addProvider(new DirectoryCrawler(folder.toFile()));
      EOPHistory history = context.getFrames().getEOPHistory(IERSConventions.IERS_2010, true);
      return new EarthModel(context.getTimeScales(), context.getFrames(), Optional.of(history));
    } catch (OrekitException e) {
      throw BadInput.of(
          "the folder cannot be used as Orekit data: " + e.getMessage(),
          folder.toString(),
          "it needs a leap second file (tai-utc.dat or UTC-TAI.history) and Earth orientation"
              + " (such as finals2000A.all); or leave the option out");
    }
  }

  /** True when Earth orientation comes from tables. */
  public boolean hasOrientation() {
    return orientation.isPresent();
  }

  Frame teme() {
    return frames.getTEME();
  }

  Frames frames() {
    return frames;
  }

  TimeScales scales() {
    return scales;
  }

  TimeScale utc() {
    return scales.getUTC();
  }

  AbsoluteDate date(Instant time) {
    return new AbsoluteDate(time, utc());
  }

  Optional<EOPHistory> orientation() {
    return orientation;
  }
}
