package hark.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** How numbers and times are said: plain, exact enough, never more exact than they are. Pure. */
public final class Words {
  private static final String[] SMALL = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    "twelve"
  };
  private static final DateTimeFormatter CLOCK = utc("HH:mm:ss'Z'");
  private static final DateTimeFormatter YEAR = utc("uuuu");
  private static final DateTimeFormatter DAY = utc("d MMM");
  private static final DateTimeFormatter MONTH = utc("MMMM uuuu");
  private static final DateTimeFormatter DAY_AND_MINUTE = utc("d MMM HH:mm'Z'");
  private static final DateTimeFormatter YEAR_AND_MINUTE = utc("d MMM uuuu HH:mm'Z'");

  private Words() {}

  private static DateTimeFormatter utc(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).withZone(ZoneOffset.UTC);
  }

  /** To the second: {@code 14:03:20Z}. */
  static String clock(Instant time) {
    return CLOCK.format(time);
  }

  /** {@code 2 Nov}. */
  static String day(Instant time) {
    return DAY.format(time);
  }

  /** {@code 2 Nov 2026}. */
  static String dayAndYear(Instant time) {
    return DAY.format(time) + " " + YEAR.format(time);
  }

  /** {@code November 2026}. */
  static String monthAndYear(Instant time) {
    return MONTH.format(time);
  }

  /** {@code 2026}. */
  static String year(Instant time) {
    return YEAR.format(time);
  }

  /** {@code 2 Nov 14:03Z}. */
  static String dayAndMinute(Instant time) {
    return DAY_AND_MINUTE.format(time);
  }

  /** {@code 17 Oct 2026 12:51Z}. */
  public static String yearAndMinute(Instant time) {
    return YEAR_AND_MINUTE.format(time);
  }

  /** Two parts at most: {@code 6 d 4 h}, {@code 1 h 12 m}, {@code 12 m}, {@code 40 s}. */
  public static String span(Duration duration) {
    long seconds = Math.max(0, duration.toSeconds());
    if (seconds < 60) {
      return seconds + " s";
    }
    long minutes = Math.round(seconds / 60.0);
    if (minutes < 60) {
      return minutes + " m";
    }
    if (minutes < 24 * 60) {
      return pair(minutes / 60, "h", minutes % 60, "m");
    }
    long hours = Math.round(minutes / 60.0);
    return pair(hours / 24, "d", hours % 24, "h");
  }

  private static String pair(long large, String unit, long small, String smallUnit) {
    return large + " " + unit + (small == 0 ? "" : " " + small + " " + smallUnit);
  }

  /** Whole minutes for the ear: {@code nine minutes}, {@code 14 minutes}, {@code one minute}. */
  static String minutesSpoken(Duration duration) {
    long minutes = Math.round(duration.toSeconds() / 60.0);
    return minutes < 1 ? "less than a minute" : countSpoken(minutes, "minute");
  }

  /** {@code nine minutes}, {@code one pass}, {@code 14 passes}, {@code no passes}. */
  static String countSpoken(long count, String noun) {
    String number = count >= 0 && count < SMALL.length ? SMALL[(int) count] : Long.toString(count);
    return number + " " + plural(noun, count);
  }

  /** {@code 1 pass}, {@code 11 passes}. */
  public static String count(long count, String noun) {
    return count + " " + plural(noun, count);
  }

  private static String plural(String noun, long count) {
    if (count == 1) {
      return noun;
    }
    boolean hissing = noun.endsWith("s") || noun.endsWith("x") || noun.endsWith("ch");
    boolean consonantY = noun.endsWith("y") && "aeiou".indexOf(noun.charAt(noun.length() - 2)) < 0;
    if (consonantY) {
      return noun.substring(0, noun.length() - 1) + "ies";
    }
    return noun + (hissing ? "es" : "s");
  }

  /** Without a unit sign: {@code 41}, {@code <1}, {@code >99}; 0 and 1 exactly stay 0 and 100. */
  static String hundredths(double probability) {
    if (Double.isNaN(probability)) {
      return "?";
    }
    double percent = 100 * probability;
    if (percent > 0 && percent < 0.5) {
      return "<1";
    }
    if (percent < 100 && percent >= 99.5) {
      return ">99";
    }
    return Long.toString(Math.round(percent));
  }

  /** {@code 41 %}, {@code under 1 %}, {@code over 99 %}. */
  public static String percent(double probability) {
    return hundredths(probability).replace("<", "under ").replace(">", "over ") + " %";
  }

  /** With its error where that reaches a percent: {@code 41 ± 2}; else {@code 41}. */
  static String hundredths(double probability, double error) {
    long shown = Math.round(100 * error);
    String value = hundredths(probability);
    boolean plain = value.startsWith("<") || value.startsWith(">") || value.equals("?");
    return shown >= 1 && !plain ? value + " ± " + shown : value;
  }

  /** {@code 41 ± 2 %}, or {@code 41 %} when the error is under half a percent. */
  public static String percent(double probability, double error) {
    return hundredths(probability, error).replace("<", "under ").replace(">", "over ") + " %";
  }

  /** For the ear: {@code four in ten}, {@code fewer than one in twenty}, {@code nearly all}. */
  static String inTen(double share) {
    if (share < 0.05) {
      return share <= 0 ? "none" : "fewer than one in twenty";
    }
    if (share >= 0.95) {
      return share >= 1 ? "all" : "nearly all";
    }
    int tenths = (int) Math.round(10 * share);
    return tenths == 5 ? "half" : SMALL[tenths] + " in ten";
  }

  /** A share of cases: {@code most}, {@code about half}, {@code some}, {@code a few}. */
  static String portion(double share) {
    if (share >= 0.95) {
      return "nearly all";
    }
    if (share >= 0.6) {
      return "most";
    }
    if (share >= 0.4) {
      return "about half";
    }
    return share >= 0.15 ? "some" : "a few";
  }

  /** One decimal at most, none from ten on: {@code 0.5 h}, {@code 21 h}. */
  static String hours(double hours) {
    return decimal(hours, hours < 9.95 ? 1 : 0) + " h";
  }

  /** At most so many decimals, none that are zero. */
  static String decimal(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "?";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Whole days as {@code 3 days}, else one decimal. */
  static String days(double days) {
    String number = decimal(days, 1);
    return number + (number.equals("1") ? " day" : " days");
  }

  /** With its sign: {@code +0.3}, {@code −1.2}. */
  static String signed(double value) {
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(value));
    return (value < 0 && !size.equals("0.0") ? "−" : "+") + size;
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> items) {
    return joined(items, "and");
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  static String choice(List<String> items) {
    return joined(items, "or");
  }

  private static String joined(List<String> items, String word) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " " + word + " " + items.get(last);
  }

  /** A title without what stands in brackets at its end, for a narrow column. */
  static String brief(String title) {
    return inSentence(title).replaceAll("\\s*\\([^()]*\\)$", "");
  }

  /**
   * A command inside a sentence: {@code a blind reset}; one whose title is itself an order stands
   * in quotation marks.
   */
  static String command(String title) {
    String small = inSentence(title);
    return small.startsWith("blind ") ? "a " + small : "the command “" + small + "”";
  }

  /** First letter large. */
  public static String sentenceCase(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /**
   * First letter small, for a title inside a sentence; words like {@code TX} keep their letters.
   */
  static String inSentence(String title) {
    boolean word = title.length() > 1 && Character.isLowerCase(title.charAt(1));
    return word ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1) : title;
  }
}
