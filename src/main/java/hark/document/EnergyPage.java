package hark.document;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.EnergyReport;
import hark.assessment.EnergyReport.OrbitBalance;
import hark.assessment.EnergyReport.SunMonth;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What {@code hark energy} prints for people when nothing more is asked. */
public final class EnergyPage {
  /** The charge is shown at every so-manieth sunrise: four rows a day in a low orbit. */
  private static final int EVERY = 4;

  /** Points between two rows when no orbit is complete. */
  private static final int POINTS = 36;

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);

  private final Page page = new Page();

  private EnergyPage() {}

  /** Charge, states, balance, the year. */
  public static String of(EnergyReport report) {
    EnergyPage it = new EnergyPage();
    head(it.page, report);
    it.fan(report);
    it.page.blank();
    it.balance(report.balance());
    it.page.blank();
    it.year(report);
    it.examples(report);
    return it.page.toString();
  }

  static void head(Page page, EnergyReport report) {
    page.prose(
        "",
        String.join(
            " · ",
            report.mission(),
            Words.yearAndMinute(report.now()),
            "energy until " + Words.dayAndMinute(report.end()),
            report.members() + " members"));
    page.blank();
  }

  private void fan(EnergyReport report) {
    page.line("  Charge at sunrise on board, when it is lowest, and the bus then, %");
    Columns table =
        new Columns(
            "time", "5 %", "25 %", "median", "75 %", "95 %", "", "off", "boot", "safe", "nominal",
            "sends");
    for (EnergyPoint point : shown(report, report.energy())) {
      table.row(
          time(report, point.time()),
          whole(point.socP05()),
          whole(point.socP25()),
          whole(point.socP50()),
          whole(point.socP75()),
          whole(point.socP95()),
          "",
          whole(point.states().off()),
          whole(point.states().boot()),
          whole(point.states().safe()),
          whole(point.states().nominal()),
          whole(point.transmitting()));
    }
    table.print(page);
  }

  static String time(EnergyReport report, Instant time) {
    return Words.dayAndMinute(time) + (time.isBefore(report.now()) ? "  past" : "");
  }

  /** The points nearest to every fourth sunrise. */
  static List<EnergyPoint> shown(EnergyReport report, List<EnergyPoint> fan) {
    List<EnergyPoint> rows = new ArrayList<>();
    if (report.balance().isEmpty()) {
      for (int g = 0; g < fan.size(); g += POINTS) {
        rows.add(fan.get(g));
      }
      return rows;
    }
    for (int n = 0; n < report.balance().size(); n += EVERY) {
      Instant start = report.balance().get(n).orbitStart();
      rows.add(fan.get(nearest(fan, start)));
    }
    return rows;
  }

  private static int nearest(List<EnergyPoint> fan, Instant time) {
    int best = 0;
    for (int g = 0; g < fan.size(); g++) {
      best = distance(fan, g, time) < distance(fan, best, time) ? g : best;
    }
    return best;
  }

  private static long distance(List<EnergyPoint> fan, int g, Instant time) {
    return java.time.Duration.between(fan.get(g).time(), time).abs().toMillis();
  }

  private void balance(List<OrbitBalance> balance) {
    if (balance.isEmpty()) {
      page.line("  No orbit is complete before the horizon: no balance.");
      return;
    }
    page.line("  Energy of one orbit, Wh, mean over the possibilities and the day's orbits");
    Columns table = balanceColumns("day");
    byDay(balance).forEach((day, orbits) -> table.row(row(Words.day(day(day)), orbits)));
    table.print(page);
    page.prose(
        "  ",
        "Offered: what the arrays could give at full power; taken = loads + losses + stored + removed."
            + " Margin: offered less loads and losses; least: that of the day's worst orbit. A bus that is"
            + " off needs little: the last two are what safe and nominal mode would take all the time.");
  }

  private static Instant day(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  private static Map<LocalDate, List<OrbitBalance>> byDay(List<OrbitBalance> balance) {
    return balance.stream()
        .collect(
            Collectors.groupingBy(
                orbit -> orbit.orbitStart().atOffset(ZoneOffset.UTC).toLocalDate(),
                TreeMap::new,
                Collectors.toList()));
  }

  /** Columns of what {@link #row} gives, the first under a heading of its own. */
  static Columns balanceColumns(String first) {
    return new Columns(
        first,
        "offered",
        "taken",
        "loads",
        "losses",
        "stored",
        "removed",
        "margin",
        "least",
        "if safe",
        "if nominal");
  }

  static String[] row(String day, List<OrbitBalance> orbits) {
    double least = orbits.stream().mapToDouble(OrbitBalance::marginWh).min().orElseThrow();
    return new String[] {
      day,
      wattHours(mean(orbits, OrbitBalance::offeredWh)),
      wattHours(mean(orbits, OrbitBalance::arrayWh)),
      wattHours(mean(orbits, OrbitBalance::loadsWh)),
      wattHours(mean(orbits, OrbitBalance::lossesWh)),
      wattHours(mean(orbits, OrbitBalance::storedWh)),
      wattHours(mean(orbits, OrbitBalance::removedWh)),
      signedWattHours(mean(orbits, OrbitBalance::marginWh)),
      signedWattHours(least),
      wattHours(mean(orbits, OrbitBalance::safeWh)),
      wattHours(mean(orbits, OrbitBalance::nominalWh))
    };
  }

  private static double mean(
      List<OrbitBalance> orbits, java.util.function.ToDoubleFunction<OrbitBalance> number) {
    return orbits.stream().mapToDouble(number).average().orElse(Double.NaN);
  }

  private void year(EnergyReport report) {
    if (report.year().isEmpty()) {
      page.prose("  ", report.seasons());
      page.blank();
      return;
    }
    page.line("  The Sun over a year");
    Columns table = new Columns("month", "beta from", "to", "in shadow", "longest shadow");
    for (SunMonth month : report.year()) {
      table.row(
          MONTH.format(month.from()),
          degrees(month.betaLeastDeg()),
          degrees(month.betaMostDeg()),
          tenth(month.eclipseFraction()) + " %",
          String.format(Locale.ROOT, "%.1f m", month.longestShadowMinutes()));
    }
    table.print(page);
    page.prose("  ", report.seasons());
    page.blank();
  }

  private void examples(EnergyReport report) {
    page.line("  Members worth a look (--member N)");
    Columns table = new Columns("state now", "share", "member", "with");
    for (EnergyReport.Example example : report.examples()) {
      table.row(
          example.state(),
          Words.percent(example.share()),
          Integer.toString(example.member()),
          example.explanation());
    }
    table.print(page);
  }

  static String whole(double share) {
    return Long.toString(Math.round(100 * share));
  }

  static String tenth(double share) {
    return String.format(Locale.ROOT, "%.1f", 100 * share);
  }

  private static String signedWattHours(double value) {
    String plain = wattHours(value);
    return plain.startsWith("−") || plain.equals("0.00") ? plain : "+" + plain;
  }

  private static String wattHours(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replace("-0.00", "0.00").replace('-', '−');
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.1f°", value).replace('-', '−');
  }
}
