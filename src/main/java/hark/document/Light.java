package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Window;
import java.time.Duration;
import java.util.List;

/**
 * A sentence about sunlight on board and how likely the beacon is on, compared with other windows.
 */
final class Light {
  private static final Duration DAY = Duration.ofDays(1);

  /** Longer than the sunlit part of any low orbit with shadow in it, minutes. */
  private static final double NO_SHADOW_MINUTES = 180;

  private Light() {}

  static String of(Assessment assessment, Window window) {
    String light = light(window.minutesSinceSunrise());
    String rank = rank(assessment, window);
    if (light.isEmpty()) {
      return rank.isEmpty() ? "" : "In this window " + rank + ".";
    }
    return "This pass comes " + light + (rank.isEmpty() ? "" : ", and " + rank) + ".";
  }

  /** {@code 38 minutes after sunrise on board}. */
  static String light(double minutesSinceSunrise) {
    if (Double.isNaN(minutesSinceSunrise)) {
      return "";
    }
    if (minutesSinceSunrise < 0) {
      return "while the satellite is in shadow";
    }
    if (minutesSinceSunrise > NO_SHADOW_MINUTES) {
      return "in sunlight without a break";
    }
    long minutes = Math.round(minutesSinceSunrise);
    return minutes + (minutes == 1 ? " minute" : " minutes") + " after sunrise on board";
  }

  private static String rank(Assessment assessment, Window window) {
    List<Window> day =
        Options.ahead(assessment).stream()
            .filter(w -> w.aos().isBefore(assessment.now().plus(DAY)))
            .filter(w -> !w.id().equals(window.id()))
            .toList();
    if (day.isEmpty() || !window.aos().isBefore(assessment.now().plus(DAY))) {
      return "";
    }
    double margin = 2 * window.beaconOnError();
    boolean most = day.stream().allMatch(w -> w.beaconOn() + margin < window.beaconOn());
    boolean least = day.stream().allMatch(w -> w.beaconOn() - margin > window.beaconOn());
    if (most) {
      return "the beacon is likelier to be on than in any other window of the next day";
    }
    return least
        ? "the beacon is less likely to be on than in any other window of the next day"
        : "";
  }
}
