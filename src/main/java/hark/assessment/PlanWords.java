package hark.assessment;

import hark.plan.PlanBook;
import hark.plan.PlanFigures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A plan's numbers as sentences. Pure: every word follows from the numbers. */
final class PlanWords {
  /** Differences in the chance to hear smaller than this are not worth a word. */
  private static final double NOTABLE = 0.0005;

  /** Hours that come earlier are told to a tenth. */
  private static final double NOTABLE_HOURS = 0.05;

  /** Days are told to a tenth. */
  private static final double NOTABLE_DAYS = 0.05;

  private PlanWords() {}

  static String hours(double hours) {
    return hours < 0.095
        ? Math.round(60 * hours) + " minutes"
        : String.format(Locale.ROOT, "%.1f h", hours);
  }

  /** A small change of a chance, in points to a tenth. */
  static String points(double share) {
    double points = Math.abs(100 * share);
    return points < 0.05
        ? "less than 0.1 %"
        : String.format(Locale.ROOT, points < 9.95 ? "%.1f %%" : "%.0f %%", points);
  }

  static String taken(PlanBook.Share share, Instant until) {
    String cost = "It costs " + hours(share.hours()) + " and ";
    String adds = points(Math.max(0, share.found()));
    boolean rather = share.found() < NOTABLE && 24 * share.days() >= NOTABLE_HOURS;
    if (rather) {
      return cost
          + "brings the first sound forward by "
          + earlier(share.days())
          + " in the mean; what it finds, later windows would find too.";
    }
    String found = cost + "adds " + adds + " to the chance of hearing it by " + Words.date(until);
    return 24 * share.days() >= NOTABLE_HOURS
        ? found + ", and brings the first sound forward by " + earlier(share.days()) + "."
        : found + ".";
  }

  private static String earlier(double days) {
    return days < 1
        ? String.format(Locale.ROOT, "%.1f h", 24 * days)
        : String.format(Locale.ROOT, "%.1f days", days);
  }

  static String leftOut(PlanBook.Share share, double leastGainPerHour) {
    String gain =
        "It costs "
            + hours(Math.max(0, share.hours()))
            + " and adds "
            + points(Math.max(0, share.found()));
    if (!share.fits()) {
      return gain + ", but does not fit beside the rest: the hours find more elsewhere.";
    }
    double worth = leastGainPerHour * Math.max(0, share.hours());
    return share.early() <= worth
        ? gain + "; that is too little for the time."
        : gain + "; another window finds the same.";
  }

  static List<String> objections(
      PlanBook book, Map<Integer, Integer> choice, List<PlanBook.WeekHours> weeks) {
    List<String> objections = new ArrayList<>();
    List<PlanBook.Breach> breaches = book.breaches(choice);
    for (PlanBook.WeekHours week : weeks) {
      if (week.planned() > week.granted() + 1e-9) {
        objections.add(
            "The week from "
                + Words.date(week.from())
                + " would take "
                + hours(week.planned())
                + "; "
                + hours(week.granted())
                + " are left to plan with.");
      }
    }
    if (breaches.contains(PlanBook.Breach.ANTENNA_HOURS)) {
      objections.add("An antenna would be used for more hours than it has in a week.");
    }
    if (breaches.contains(PlanBook.Breach.COMMANDS)) {
      objections.add(
          "Commands come closer to each other than "
              + hours(book.commandGapHours())
              + ", or there are more than "
              + book.mostCommands()
              + " of them.");
    }
    return objections;
  }

  static String compared(PlanFigures before, PlanFigures after, Instant until) {
    double found = after.found() - before.found();
    double days = after.meanDays() - before.meanDays();
    double hours = after.hours() - before.hours();
    double hazard = after.hazard() - before.hazard();
    List<String> parts = new ArrayList<>();
    if (Math.abs(found) >= NOTABLE) {
      parts.add(
          (found > 0 ? "finds it more often by " : "finds it less often by ")
              + points(found)
              + " until "
              + date(until));
    }
    if (Math.abs(days) >= NOTABLE_DAYS) {
      parts.add(
          String.format(
              Locale.ROOT,
              "hears it %.1f days %s in the mean",
              Math.abs(days),
              days > 0 ? "later" : "earlier"));
    }
    if (Math.abs(hours) >= NOTABLE_DAYS) {
      parts.add((hours > 0 ? "costs " : "saves ") + hours(Math.abs(hours)));
    }
    if (Math.abs(hazard) >= NOTABLE) {
      parts.add(
          (hazard > 0 ? "spoils something more often by " : "spoils something less often by ")
              + points(hazard));
    }
    return parts.isEmpty()
        ? "This plan is worth the same as the proposed one."
        : "Against the proposed plan this one " + Words.list(parts) + ".";
  }

  private static String date(Instant time) {
    LocalDate day = LocalDate.ofInstant(time, ZoneOffset.UTC);
    return Words.date(day.atStartOfDay().toInstant(ZoneOffset.UTC));
  }

  static String oneMore(PlanBook.More more, Instant until) {
    if (more.hours() < NOTABLE_DAYS) {
      return "One more hour a week would not be used: no window left out is worth its time.";
    }
    return "One more hour a week would find it more often by "
        + points(Math.max(0, more.found()))
        + " until "
        + Words.date(until)
        + (more.days() >= NOTABLE_DAYS
            ? String.format(Locale.ROOT, ", and %.1f days earlier in the mean.", more.days())
            : ".");
  }
}
