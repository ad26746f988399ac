package hark.orbit;

import hark.orbit.ShadowPart.Kind;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Sunlight on a near-circular orbit over a year or so, in closed form: the flattening turns the
 * node, drag lowers the orbit, the Sun moves on. SGP4 is not asked, so elements may be months old.
 *
 * <p>Shadows are cones behind the ellipsoid, without atmosphere, as in {@link Eclipses}. Not
 * modelled: what the Sun and the Moon do to the orbit, manoeuvres, and the uneven pace on an
 * ellipse, which changes a fraction by at most twice the eccentricity of itself.
 *
 * @param days one a day from the time asked for on
 * @param withoutUmbra seasons in which the Sun is never wholly hidden
 * @param withoutPenumbra seasons in which all of the Sun is always seen; each lies in one of the
 *     former
 * @param eclipseSeasons seasons in which every orbit has umbra: all that is not {@code
 *     withoutUmbra}
 * @param doubt what the dates' spread comes from
 * @param decay when less than 200 km of height are left, if that comes before the end; the year
 *     ends there
 */
public record SunYear(
    List<SunDay> days,
    List<SunSeason> withoutUmbra,
    List<SunSeason> withoutPenumbra,
    List<SunSeason> eclipseSeasons,
    SunDoubt doubt,
    Optional<Instant> decay) {
  /** On more eccentric orbits the height over the night side differs too much from the mean. */
  public static final double MOST_ECCENTRIC = 0.05;

  private static final double DAY = 86400;
  private static final int MOST_DAYS = 3660;

  /** Copies the lists. */
  public SunYear {
    days = List.copyOf(days);
    withoutUmbra = List.copyOf(withoutUmbra);
    withoutPenumbra = List.copyOf(withoutPenumbra);
    eclipseSeasons = List.copyOf(eclipseSeasons);
  }

  /** The day with the longest shadow; empty when no day is left or none has a shadow. */
  public Optional<SunDay> longestEclipse() {
    return days.stream()
        .max(Comparator.comparingDouble(SunYear::shadowSeconds))
        .filter(day -> day.shadowFraction() > 0);
  }

  private static double shadowSeconds(SunDay day) {
    return day.shadowFraction() * day.periodSeconds();
  }

  /** With the usual doubts. */
  public static SunYear of(ElementSet set, EarthModel earth, Instant from, int days) {
    return of(set, earth, new Span(from, days), SunDoubt.ASSUMED);
  }

  /** A number of days from a time on. */
  public record Span(Instant from, int days) {
    /** Refuses spans of no day or of more than ten years. */
    public Span {
      if (days < 1 || days > MOST_DAYS) {
        throw new IllegalArgumentException(days + " days are not between 1 and " + MOST_DAYS);
      }
    }
  }

  /**
   * From elements.
   *
   * @throws BadInput when the orbit is too eccentric for the closed forms
   */
  public static SunYear of(ElementSet set, EarthModel earth, Span span, SunDoubt doubt) {
    if (set.eccentricity() > MOST_ECCENTRIC) {
      throw BadInput.of(
          "the year's sunlight is computed for near-circular orbits; eccentricity is "
              + set.eccentricity(),
          set.origin(),
          "use elements with an eccentricity up to "
              + MOST_ECCENTRIC
              + ", or hark eclipses for a few days");
    }
    MeanOrbit orbit = MeanOrbit.of(set, earth);
    double start = Trajectory.between(set.epoch(), span.from());
    double end = Math.min(start + span.days() * DAY, orbit.endSeconds());
    boolean decays = end < start + span.days() * DAY;
    if (!(end > start)) {
      return new SunYear(
          List.of(), List.of(), List.of(), List.of(), doubt, Optional.of(span.from()));
    }
    SunEdges umbra =
        new SunEdges(
            set, orbit, doubt, new SunEdges.Asked(start, end, Kind.UMBRA, at(set.epoch())));
    SunEdges penumbra =
        new SunEdges(
            set, orbit, doubt, new SunEdges.Asked(start, end, Kind.PENUMBRA, at(set.epoch())));
    return new SunYear(
        days(orbit, span.from(), start, end),
        umbra.clear(),
        penumbra.clear(),
        umbra.shaded(),
        doubt,
        decays ? Optional.of(at(set.epoch()).apply(end)) : Optional.empty());
  }

  private static DoubleFunction<Instant> at(Instant epoch) {
    return seconds -> epoch.plusMillis(Math.round(1000 * seconds));
  }

  private static List<SunDay> days(MeanOrbit orbit, Instant from, double start, double end) {
    List<SunDay> days = new ArrayList<>();
    for (int i = 0; start + i * DAY < end; i++) {
      days.add(SunDay.of(orbit, start + i * DAY, from.plusSeconds((long) (i * DAY))));
    }
    return days;
  }
}
