package hark.console;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.Assessment.Shadow;
import hark.assessment.Assessment.States;
import hark.assessment.AssessmentFixture;
import hark.assessment.EnergyReport;
import hark.assessment.LongLook;
import hark.assessment.LongReturn;
import hark.assessment.MemberTrace;
import hark.assessment.WhatIf;
import hark.assessment.WhyThere;
import hark.mission.MissionNumber;
import hark.problem.BadInput;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An invented electrical system for tests of the page: its numbers stand for no computation. A
 * larger battery makes it emptier less often, in a straight line.
 */
final class FixtureEnergy implements EnergyQuestions {
  static final String CAPACITY = "spacecraft.battery.cell.capacity_Ah";
  private static final Duration ORBIT = Duration.ofMinutes(95);
  private static final Instant NOW = AssessmentFixture.NOW;
  private static final Instant END = NOW.plus(Duration.ofDays(3));

  /** How long each what-if takes; a test makes it slow. */
  volatile Duration pause = Duration.ZERO;

  @Override
  public EnergyReport report() {
    List<EnergyReport.OrbitBalance> balance = balance(1);
    return new EnergyReport(
        "Sandpiper",
        NOW,
        END,
        4000,
        2000,
        fan(0),
        shadows(),
        0.12,
        balance,
        year(),
        List.of(
            new EnergyReport.FullSun(
                Instant.parse("2027-01-09T00:00:00Z"),
                Instant.parse("2027-01-21T00:00:00Z"),
                2,
                3,
                true)),
        "Full sun from 9 Jan 2027 (± 2 d) to 21 Jan 2027 (± 3 d).",
        List.of(new EnergyReport.Example("off", 0.4, 17, "battery open")));
  }

  @Override
  public List<MissionNumber> numbers() {
    return List.of(
        new MissionNumber(CAPACITY, "3.0 ± 0.1", 3, "Ah", 0.75, 12, false),
        new MissionNumber("spacecraft.battery.series", "2", 2, "", 1, 8, true),
        new MissionNumber("spacecraft.bus.cutoff_V", "6.2", 6.2, "V", 5, 7.75, false));
  }

  @Override
  public WhatIf whatIf(Map<String, String> overrides) {
    pause();
    for (String key : overrides.keySet()) {
      if (numbers().stream().noneMatch(number -> number.key().equals(key))) {
        throw BadInput.of("there is no key " + key, "--what-if " + key, "see the list of keys");
      }
    }
    String value = overrides.getOrDefault(CAPACITY, "3");
    if (!value.matches("\\d+(\\.\\d+)?")) {
      throw BadInput.of("'" + value + "' is no number", CAPACITY, "write a number from 0 to 12");
    }
    double more = (Double.parseDouble(value) - 3) / 30;
    WhatIf.Side before = new WhatIf.Side(0.45, 0.12, new States(0.4, 0, 0.35, 0.25), 0.5);
    WhatIf.Side after =
        new WhatIf.Side(0.45 + more, 0.12, new States(0.4 - more, 0, 0.35 + more, 0.25), 0.5);
    return new WhatIf(
        overrides,
        2000,
        fan(0),
        fan(more),
        balance(1),
        balance(1 + more),
        new WhatIf.Change(before, after),
        "With capacity " + value + " Ah the median charge at the horizon moves.",
        "The same possibilities, simulated again.");
  }

  @Override
  public WhyThere whyAt(Instant time) {
    if (time.isBefore(AssessmentFixture.SEPARATION) || time.isAfter(END)) {
      throw BadInput.of(time + " is not between separation and the horizon", "at", "ask for less");
    }
    List<MemberTrace.Share> open = List.of(new MemberTrace.Share("Battery open", 0.3));
    Instant since = NOW.minus(Duration.ofHours(20));
    return new WhyThere(
        time,
        List.of(
            new WhyThere.StateShare(
                "off",
                0.6,
                17,
                List.of(
                    new WhyThere.Reason(
                        "undervoltage",
                        "the voltage under load fell below the cut-off",
                        0.6,
                        since,
                        17,
                        open))),
            new WhyThere.StateShare(
                "safe",
                0.4,
                23,
                List.of(
                    new WhyThere.Reason("booted", "it has booted", 0.4, since, 23, List.of())))));
  }

  @Override
  public MemberTrace trace(int member) {
    if (member < 1 || member > 4000) {
      throw BadInput.of("there is no member " + member, "--member", "give a number up to 4000");
    }
    List<MemberTrace.Row> rows = new ArrayList<>();
    for (Instant t = AssessmentFixture.SEPARATION; t.isBefore(END); t = t.plus(ORBIT)) {
      boolean off = rows.size() % 2 == 0;
      Optional<String> change =
          Optional.of(off ? "the voltage under load fell below the cut-off" : "it has booted");
      String state = off ? "off" : "safe";
      rows.add(new MemberTrace.Row(t, 1, 2, 1, 0.1, 7, off ? 0.1 : 0.3, 10, 5, state, change));
    }
    return new MemberTrace(
        member,
        4000,
        0.01,
        new TreeMap<>(Map.of(CAPACITY, 2.9)),
        List.of(
            new MemberTrace.Event(
                "battery-open", "Battery open", NOW.minusSeconds(90_000), "no charge is stored")),
        List.of(new MemberTrace.Share("Battery open", 1)),
        rows);
  }

  private void pause() {
    try {
      Thread.sleep(pause.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static List<EnergyPoint> fan(double more) {
    List<EnergyPoint> points = new ArrayList<>();
    Instant from = NOW.minus(Duration.ofDays(1));
    for (Instant t = from; t.isBefore(END); t = t.plus(Duration.ofMinutes(10))) {
      double phase = 2 * Math.PI * Duration.between(from, t).toSeconds() / ORBIT.toSeconds();
      double middle = 0.45 + more + 0.08 * Math.sin(phase);
      States states = new States(0.4 - more, 0.02, 0.33 + more, 0.25);
      points.add(
          new EnergyPoint(
              t,
              middle - 0.3,
              middle - 0.12,
              middle,
              middle + 0.12,
              middle + 0.3,
              0.5,
              Math.sin(phase) > -0.3 ? 1 : 0,
              states));
    }
    return points;
  }

  private static List<Shadow> shadows() {
    List<Shadow> shadows = new ArrayList<>();
    for (Instant t = NOW.minus(Duration.ofDays(1)); t.isBefore(END); t = t.plus(ORBIT)) {
      shadows.add(new Shadow(t.plusSeconds(3700), t.plusSeconds(5700)));
    }
    return shadows;
  }

  private static List<EnergyReport.OrbitBalance> balance(double factor) {
    List<EnergyReport.OrbitBalance> balance = new ArrayList<>();
    for (Instant t = NOW.minus(Duration.ofDays(1)); t.isBefore(END); t = t.plus(ORBIT)) {
      double in = 3 * factor;
      balance.add(
          new EnergyReport.OrbitBalance(
              t, t.plus(ORBIT), in, 2.2, 0.5, in - 2.7, 0, in + 0.4, 1.9, 3.1));
    }
    return balance;
  }

  private static List<EnergyReport.SunMonth> year() {
    List<EnergyReport.SunMonth> year = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      Instant from =
          month == 0
              ? NOW
              : Instant.parse(
                  month == 1
                      ? "2026-12-01T00:00:00Z"
                      : String.format("2027-%02d-01T00:00:00Z", month - 1));
      double beta = 40 + 25 * Math.sin(month);
      year.add(new EnergyReport.SunMonth(from, beta - 8, beta, Math.max(0, 0.38 - beta / 200), 30));
    }
    return year;
  }

  @Override
  public LongLook longLook(int days) {
    if (days > 730) {
      throw BadInput.of(days + " days cannot be followed", "days", "give 1 to 730");
    }
    Instant back = Instant.parse("2027-01-12T04:10:00Z");
    return new LongLook(
        NOW.plus(Duration.ofDays(days)),
        List.of(
            new LongReturn(
                "computer_hung",
                "computer hung",
                24,
                0,
                0.75,
                Optional.of(Instant.parse("2026-11-16T02:00:00Z")),
                Optional.of(back),
                Optional.empty(),
                "in the full-sun season of 9 Jan to 21 Jan 2027"),
            new LongReturn(
                "tx_dead",
                "transmitter dead",
                24,
                0,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "none sends again before 14 Nov 2027 without help")));
  }
}
