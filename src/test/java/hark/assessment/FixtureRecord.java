package hark.assessment;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.Assessment.EvidenceView;
import hark.assessment.Assessment.Shadow;
import hark.assessment.Assessment.States;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Evidence, energy and sunlight of the invented assessment. */
final class FixtureRecord {
  private static final Duration ORBIT = Duration.ofSeconds(5_680);
  private static final Duration SHADOW = Duration.ofSeconds(2_110);
  private static final Duration STEP = Duration.ofMinutes(10);

  private FixtureRecord() {}

  static List<EvidenceView> evidence() {
    return List.of(
        new EvidenceView(
            1,
            Instant.parse("2026-11-05T09:51:10Z"),
            "heard",
            "Fen Hill: heard, 14 dB over noise",
            Map.of("lost", -9.0, "tx_dead", -6.0, "antenna_stowed", -1.2)),
        new EvidenceView(
            2,
            Instant.parse("2026-11-06T15:22:40Z"),
            "heard",
            "Quay: heard, 8 dB over noise",
            Map.of("uv_loop", 0.4, "tx_weak", 0.8)),
        new EvidenceView(
            3,
            Instant.parse("2026-11-06T15:24:00Z"),
            "telemetry",
            "battery 7.05 V",
            Map.of("uv_loop", 1.6, "battery_open", 0.3)),
        new EvidenceView(
            15,
            Instant.parse("2026-11-14T07:41:00Z"),
            "nothing-heard",
            "Fen Hill: nothing heard, 9 minutes",
            Map.of("uv_loop", -0.1, "tx_dead", 0.3, "computer_dead", 0.3, "lost", 0.3)));
  }

  static List<EnergyPoint> energy(Instant now, double horizonDays) {
    List<EnergyPoint> points = new ArrayList<>();
    long steps = Math.round(horizonDays * Duration.ofDays(1).dividedBy(STEP));
    for (long i = 0; i <= steps; i++) {
      points.add(point(now, now.plus(STEP.multipliedBy(i))));
    }
    return List.copyOf(points);
  }

  static List<Shadow> shadows(Instant now, double horizonDays) {
    List<Shadow> shadows = new ArrayList<>();
    Instant end = now.plusSeconds(Math.round(86_400 * horizonDays));
    Instant from = now.plus(Duration.ofMinutes(25));
    while (from.isBefore(end)) {
      shadows.add(new Shadow(from, from.plus(SHADOW)));
      from = from.plus(ORBIT);
    }
    return List.copyOf(shadows);
  }

  private static EnergyPoint point(Instant now, Instant time) {
    double seconds = Duration.between(now, time).toSeconds();
    double middle = 0.34 + 0.04 * Math.sin(2 * Math.PI * seconds / ORBIT.toSeconds());
    double spread = 1 + seconds / 500_000;
    double phase = Math.floorMod((long) seconds - 1_500, ORBIT.toSeconds());
    return new EnergyPoint(
        time,
        Math.max(0, middle - 0.26 * spread),
        Math.max(0, middle - 0.14 * spread),
        middle,
        Math.min(1, middle + 0.18 * spread),
        Math.min(1, middle + 0.34 * spread),
        0.38,
        phase < SHADOW.toSeconds() ? 0 : 1,
        new States(0.42, 0.02, 0.36, 0.20));
  }
}
