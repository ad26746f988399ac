package hark.document;

import hark.assessment.OrbitKnowledge;
import hark.assessment.OrbitKnowledge.Known;
import hark.orbit.Decay;
import hark.orbit.SetStep;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is known of the orbits, in words. Pure. */
public final class OrbitReport {
  private static final double DAYS_A_YEAR = 365.25;

  /** Nobody needs to know more exactly that it is not soon. */
  private static final double LONG_YEARS = 25;

  private OrbitReport() {}

  /** A paragraph for each object; those that are no candidates in one line at the end. */
  public static String of(OrbitKnowledge knowledge) {
    Page page = new Page();
    List<String> others = new ArrayList<>();
    for (Known known : knowledge.objects()) {
      if (known.weight().isPresent()) {
        page.hanging(known.objectId() + "  ", sentences(known), 2);
      } else {
        others.add(known.objectId() + " (" + Words.count(known.sets().size(), "set") + ")");
      }
    }
    if (!others.isEmpty()) {
      page.prose("", "In the files, no candidates: " + String.join(", ", others) + ".");
    }
    return page.toString();
  }

  /** Everything about one object in a few sentences. */
  public static String sentences(Known known) {
    List<String> said = new ArrayList<>();
    said.add(
        known.weight().isPresent()
            ? Words.percent(known.weight().getAsDouble()) + " before any evidence"
            : "no candidate");
    said.add(Words.count(known.sets().size(), "set") + ", the last " + age(known));
    StringBuilder text = new StringBuilder(String.join(": ", said));
    text.append(number("; along the track known to %.1f s.", known.alongTrackSdSeconds()));
    text.append(disagreement(known));
    for (SetStep jump : known.jumps()) {
      text.append(' ').append(jump(jump));
    }
    text.append(standing(known));
    return text.append(' ').append(decay(known.decay())).append(dragTerm(known)).toString();
  }

  private static String age(Known known) {
    Duration age = Duration.ofSeconds(Math.round(known.ageDays() * 86400));
    String state = known.last().isState() ? "a deployer's state, " : "";
    return state + Words.span(age) + " old";
  }

  private static String disagreement(Known known) {
    if (known.measuredPerDaySeconds().isEmpty()) {
      return " No two sets to hold against each other yet.";
    }
    double measured = known.measuredPerDaySeconds().getAsDouble();
    double expected = known.expectedPerDaySeconds();
    return number(" Successive sets disagree by %.1f s a day", measured)
        + number("; %.1f is believed.", expected);
  }

  private static String jump(SetStep jump) {
    String when = Words.yearAndMinute(jump.after().epoch());
    if (Double.isNaN(jump.sigmas())) {
      return "The set of " + when + " cannot be held against the one before it.";
    }
    return "The set of "
        + when
        + number(" jumps by %+.0f s along", jump.lateSeconds())
        + number(" and %.0f km aside:", Math.abs(jump.crossMeters()) / 1000)
        + " a manoeuvre, or another object under this number.";
  }

  private static String standing(Known known) {
    StringBuilder text = new StringBuilder();
    known
        .standing()
        .looksLike()
        .ifPresent(
            other ->
                text.append(" It lies where ")
                    .append(other)
                    .append(" was foretold: the catalogue may have changed the two."));
    known
        .standing()
        .since()
        .ifPresent(
            since ->
                text.append(" New: its first set is of ").append(Words.day(since)).append('.'));
    known
        .standing()
        .silentSince()
        .ifPresent(
            last ->
                text.append(" No set since ")
                    .append(Words.day(last))
                    .append(", while others go on: given up, decayed or renamed."));
    return text.toString();
  }

  /** Where it is, how it sinks, when it may end. */
  static String decay(Decay decay) {
    String height = number("It flies at %.0f km", decay.heightMeters() / 1000);
    if (!(decay.metersPerDay() > 0)) {
      return height + " and does not sink.";
    }
    String source = decay.measured() ? "by its mean motions" : "by its drag term";
    String sinks = number(" and sinks by %.0f m a day ", decay.metersPerDay()) + source;
    return height + sinks + "; " + end(decay) + ".";
  }

  private static String end(Decay decay) {
    double soonest = decay.soonestDays() / DAYS_A_YEAR;
    double latest = decay.latestDays() / DAYS_A_YEAR;
    if (soonest > LONG_YEARS) {
      return "it stays up for more than " + (int) LONG_YEARS + " years";
    }
    if (latest < 2) {
      return number("it comes down in %.0f", decay.soonestDays())
          + number(" to %.0f days", decay.latestDays());
    }
    return number("it comes down in %.1f", soonest)
        + (latest > LONG_YEARS
            ? " to more than " + (int) LONG_YEARS + " years"
            : number(" to %.1f years", latest));
  }

  private static String dragTerm(Known known) {
    return known.dragTermChange().isPresent()
            && Math.abs(known.dragTermChange().getAsDouble()) > 0.1
        ? number(" Its drag term changed by %+.0f %%", 100 * known.dragTermChange().getAsDouble())
            + " from the first set to the last."
        : "";
  }

  private static String number(String form, double value) {
    return String.format(Locale.ROOT, form, value);
  }
}
