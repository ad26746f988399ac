package hark.assessment;

import hark.evidence.CommandSent;
import hark.evidence.DopplerFit;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.MotionSeen;
import hark.evidence.ObjectVerdict;
import hark.evidence.OutsideReport;
import hark.evidence.SearchResult;
import hark.evidence.Separation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Numbers and entries as words, the few that an assessment carries itself. */
final class Words {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private static final DateTimeFormatter DATE_AND_YEAR =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  private static final DateTimeFormatter DATE_AND_MINUTE =
      DateTimeFormatter.ofPattern("d MMM HH:mm'Z'", Locale.ENGLISH);

  private Words() {}

  static String date(Instant time) {
    return DATE.format(time.atOffset(ZoneOffset.UTC));
  }

  static String dateAndYear(Instant time) {
    return DATE_AND_YEAR.format(time.atOffset(ZoneOffset.UTC));
  }

  static String dateAndMinute(Instant time) {
    return DATE_AND_MINUTE.format(time.atOffset(ZoneOffset.UTC));
  }

  static String seconds(Instant time) {
    return DateTimeFormatter.ISO_INSTANT.format(time.truncatedTo(ChronoUnit.SECONDS));
  }

  static String percent(double share) {
    if (share > 0 && share < 0.005) {
      return "under 1 %";
    }
    return Math.round(100 * share) + " %";
  }

  /** {@code from 61 % to 68 %}, or {@code a little} where rounding hides it. */
  static String change(double before, double after) {
    String from = percent(before);
    String to = percent(after);
    return from.equals(to) ? " a little" : " from " + from + " to " + to;
  }

  /** A share as people say it. */
  static String inTen(double share) {
    long tenths = Math.round(10 * share);
    if (tenths == 0) {
      long hundredths = Math.max(1, Math.round(100 * share));
      return hundredths + " of 100 cases that still fit";
    }
    return tenths == 10
        ? "nearly all cases that still fit"
        : tenths + " of 10 cases that still fit";
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /** Text with every decimal number in it cut to three significant digits. */
  static String rounded(String text) {
    return Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?")
        .matcher(text)
        .replaceAll(
            found ->
                new BigDecimal(found.group())
                    .round(new MathContext(3))
                    .stripTrailingZeros()
                    .toPlainString());
  }

  /** An entry in one line. */
  static String title(Entry entry) {
    Evidence evidence = entry.evidence();
    if (evidence instanceof Evidence.NothingHeard silence) {
      String way = silence.way().map(w -> ", " + w.name().toLowerCase(Locale.ROOT)).orElse("");
      return silence.station() + ": nothing heard" + way;
    }
    if (evidence instanceof Evidence.Heard heard) {
      String level =
          heard.levelDb().isPresent()
              ? String.format(Locale.ROOT, ", %.0f dB over noise", heard.levelDb().getAsDouble())
              : "";
      return heard.station() + ": heard" + level;
    }
    if (evidence instanceof Evidence.Telemetry telemetry) {
      return telemetry(telemetry);
    }
    if (evidence instanceof Evidence.StationCheck check) {
      return check.station() + ": known satellite " + (check.heard() ? "heard" : "missed");
    }
    if (evidence instanceof Evidence.NotListened not) {
      return not.station() + ": nobody listened, " + not.why();
    }
    return evidence instanceof Evidence.Note note ? note.text() : knowledge(evidence);
  }

  private static String telemetry(Evidence.Telemetry telemetry) {
    if (telemetry.volts().isPresent()) {
      return String.format(Locale.ROOT, "battery at %.2f V", telemetry.volts().getAsDouble());
    }
    List<String> told = new ArrayList<>();
    telemetry.readings().keySet().forEach(channel -> told.add(channel.key()));
    telemetry.mode().ifPresent(mode -> told.add("mode"));
    return "telemetry: " + String.join(", ", told);
  }

  private static String knowledge(Evidence evidence) {
    if (evidence instanceof OutsideReport report) {
      String who = report.station().orElse("someone elsewhere");
      return who + " reports: " + (report.heard() ? "heard" : "nothing heard");
    }
    if (evidence instanceof SearchResult result) {
      return "recording searched: " + (result.detected() ? "found" : "nothing found");
    }
    if (evidence instanceof ObjectVerdict verdict) {
      return "object " + verdict.object() + (verdict.confirmed() ? " is ours" : " is not ours");
    }
    if (evidence instanceof DopplerFit fit) {
      return "Doppler curve fits object " + fit.object();
    }
    if (evidence instanceof CommandSent sent) {
      return sent.station() + ": sent " + sent.command();
    }
    if (evidence instanceof Separation separation) {
      return separation.confirmed() ? "separation confirmed" : "separation not confirmed";
    }
    return evidence instanceof MotionSeen motion ? motion(motion) : evidence.kind();
  }

  private static String motion(MotionSeen motion) {
    List<String> seen = new ArrayList<>();
    motion
        .tumbleSeconds()
        .ifPresent(turn -> seen.add(String.format(Locale.ROOT, "turns once in %.3g s", turn)));
    motion
        .decay()
        .ifPresent(
            decay ->
                seen.add(
                    decay == MotionSeen.Decay.SAME
                        ? "sinks as its neighbours do"
                        : "sinks "
                            + decay.name().toLowerCase(Locale.ROOT)
                            + " than its neighbours"));
    return String.join(", ", seen);
  }
}
