package hark.plan;

import java.time.Instant;
import java.time.ZoneOffset;

/** When people would rather sleep. */
final class Nights {
  private static final int FROM_HOUR = 22;
  private static final int TO_HOUR = 6;
  private static final double DEGREES_AN_HOUR = 15;

  private Nights() {}

  /** True between 22 and 06 local mean solar time. */
  static boolean isNight(Instant time, double longitudeDeg) {
    double utcHours = time.atOffset(ZoneOffset.UTC).toLocalTime().toSecondOfDay() / 3600.0;
    double local = utcHours + longitudeDeg / DEGREES_AN_HOUR;
    double hour = local - 24 * Math.floor(local / 24);
    return hour >= FROM_HOUR || hour < TO_HOUR;
  }
}
