package hark.power;

import java.util.Arrays;
import java.util.Optional;

/**
 * Sunlight on the body over time: shadow intervals of a trajectory, shared by all bodies that fly
 * it. Seconds count from separation. Between penumbra and umbra edges the sunlit fraction runs
 * linearly.
 */
public final class Illumination {
  /** Grid of the light thrown back, s: linear between, a cosine is followed within 0.002. */
  private static final double FINE_SECONDS = 120;

  private final double[] penumbraIn;
  private final double[] umbraIn;
  private final double[] umbraOut;
  private final double[] penumbraOut;
  private final double solarConstantWatts;

  private final Optional<SunPath> path;

  /** Height of the Sun over the ground beneath, as a sine, not below 0; on a fine grid. */
  private final double[] thrownBack;

  /** All edges in turn, four a shadow. */
  private final double[] edges;

  /**
   * Shadow intervals in rising order, s since separation.
   *
   * @param edges four arrays of equal length: penumbra entry, umbra entry, umbra exit, penumbra
   *     exit; for a shadow without umbra both umbra values are the middle of the penumbra
   * @param solarConstantWatts irradiance at the body's distance from the Sun, W/m²
   */
  public Illumination(double[][] edges, double solarConstantWatts) {
    this(edges, solarConstantWatts, Optional.empty());
  }

  /** As above, with the Sun's distance and place along the way. */
  public Illumination(double[][] edges, SunPath path) {
    this(edges, path.irradiance()[0], Optional.of(path));
  }

  private Illumination(double[][] edges, double solarConstantWatts, Optional<SunPath> path) {
    this.path = path;
    this.thrownBack = path.map(Illumination::thrownBack).orElse(new double[0]);
    if (edges.length != 4) {
      throw new IllegalArgumentException("shadow edges come in four arrays, found " + edges.length);
    }
    for (double[] row : edges) {
      if (row.length != edges[0].length) {
        throw new IllegalArgumentException("the four arrays of shadow edges differ in length");
      }
    }
    if (!(solarConstantWatts > 0 && solarConstantWatts < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "irradiance " + solarConstantWatts + " W/m² is not positive");
    }
    this.penumbraIn = edges[0].clone();
    this.umbraIn = edges[1].clone();
    this.umbraOut = edges[2].clone();
    this.penumbraOut = edges[3].clone();
    this.solarConstantWatts = solarConstantWatts;
    this.edges = inTurn(edges);
  }

  private static double[] inTurn(double[][] rows) {
    double[] all = new double[4 * rows[0].length];
    for (int i = 0; i < all.length; i++) {
      all[i] = rows[i & 3][i >> 2];
      if (!(all[i] >= (i == 0 ? Double.NEGATIVE_INFINITY : all[i - 1]))) {
        throw new IllegalArgumentException(
            "shadow edge "
                + all[i]
                + " s (shadow "
                + (i / 4 + 1)
                + ") does not follow its forerunner");
      }
    }
    return all;
  }

  /** Where the Sun stands; empty when only the shadows are known. */
  public Optional<SunPath> path() {
    return path;
  }

  /** Irradiance in full sunlight at the beginning, W/m². */
  public double solarConstantWatts() {
    return solarConstantWatts;
  }

  /** Irradiance in full sunlight at a time, W/m². */
  double irradianceAt(double seconds) {
    if (path.isEmpty()) {
      return solarConstantWatts;
    }
    double[] values = path.get().irradiance();
    return values[Math.min(values.length - 1, (int) (seconds / path.get().stepSeconds()))];
  }

  /**
   * Sine of the Sun's height over the ground beneath, 0 at night: how strongly the Earth throws
   * light back. Without a path half of the sunlit fraction.
   */
  double thrownBackAt(double seconds, double sunlit) {
    if (thrownBack.length == 0) {
      return PowerPhysics.ALBEDO_PHASE * sunlit;
    }
    double at = seconds / FINE_SECONDS;
    int k = Math.min(thrownBack.length - 2, (int) at);
    return thrownBack[k] + Math.min(1, at - k) * (thrownBack[k + 1] - thrownBack[k]);
  }

  private static double[] thrownBack(SunPath path) {
    double whole = path.stepSeconds() * (path.phase().length - 1);
    double[] fine = new double[2 + (int) Math.ceil(whole / FINE_SECONDS)];
    for (int k = 0; k < fine.length; k++) {
      fine[k] = Math.max(0, path.zenith(k * FINE_SECONDS));
    }
    return fine;
  }

  /** Fraction of the Sun's light that reaches the body, 0…1. */
  public double fractionAt(double seconds) {
    int k = indexAtOrBefore(seconds);
    if (k < 0 || seconds >= penumbraOut[k]) {
      return 1;
    }
    if (seconds < umbraIn[k]) {
      return 1 - (seconds - penumbraIn[k]) / (umbraIn[k] - penumbraIn[k]);
    }
    if (seconds <= umbraOut[k]) {
      return 0;
    }
    return (seconds - umbraOut[k]) / (penumbraOut[k] - umbraOut[k]);
  }

  /** The first shadow edge strictly after a time, s; positive infinity when there is none. */
  public double nextEdgeAfter(double seconds) {
    int k = indexAtOrBefore(seconds);
    if (k >= 0) {
      for (double edge : new double[] {umbraIn[k], umbraOut[k], penumbraOut[k]}) {
        if (edge > seconds) {
          return edge;
        }
      }
    }
    return k + 1 < penumbraIn.length ? penumbraIn[k + 1] : Double.POSITIVE_INFINITY;
  }

  /** The first entry into penumbra after a time, s; positive infinity when there is none. */
  public double nextEntryAfter(double seconds) {
    int k = indexAtOrBefore(seconds);
    return k + 1 < penumbraIn.length ? penumbraIn[k + 1] : Double.POSITIVE_INFINITY;
  }

  /** Index of the first edge after a time, counting all edges in turn; for the kernel's cursor. */
  int firstEdgeAfter(double seconds, int from) {
    int edge = from;
    while (edge < edges.length && edges[edge] <= seconds) {
      edge++;
    }
    return edge;
  }

  /** Time of an edge, s; positive infinity past the last. */
  double edgeSeconds(int edge) {
    return edge < edges.length ? edges[edge] : Double.POSITIVE_INFINITY;
  }

  /** Whether the Sun is wholly hidden up to an edge. */
  boolean umbraBefore(int edge) {
    return (edge & 3) == 2;
  }

  /** Sunlit fraction at a time in the stretch that ends with an edge, its end included. */
  double fractionBefore(int edge, double seconds) {
    return switch (edge & 3) {
      case 1 -> (edges[edge] - seconds) / (edges[edge] - edges[edge - 1]);
      case 2 -> 0;
      case 3 -> (seconds - edges[edge - 1]) / (edges[edge] - edges[edge - 1]);
      default -> 1;
    };
  }

  private int indexAtOrBefore(double seconds) {
    int found = Arrays.binarySearch(penumbraIn, seconds);
    return found >= 0 ? found : -found - 2;
  }
}
