package hark.mission;

import hark.mission.YamlTree.Kind;
import hark.station.Availability;
import hark.station.RecurringTime;
import hark.station.Rota;
import hark.station.Stretch;
import hark.station.WeeklyTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads times that a station may be used in, or may not send in. */
final class RotaReader {
  private static final Pattern RULE = Pattern.compile("(?i)\\s*(DTSTART|RRULE|DURATION)\\b.*");

  private static final String FORMS =
      "write 'Mon 18:00-23:00', a rule with DTSTART, RRULE and DURATION, or [from, to] as UTC times";

  private final Reading reading;
  private final List<WeeklyTime> weekly = new ArrayList<>();
  private final List<RecurringTime> rules = new ArrayList<>();
  private final List<Stretch> once = new ArrayList<>();

  private RotaReader(Reading reading) {
    this.reading = reading;
  }

  /** A list of times, each in any of the three forms; one alone need not stand in a list. */
  static Rota read(YamlTree node, Reading reading) {
    RotaReader reader = new RotaReader(reading);
    reader.add(node);
    return reader.rota();
  }

  private Rota rota() {
    return new Rota(weekly, rules, once);
  }

  private void add(YamlTree node) {
    if (node.isNothing()) {
      return;
    }
    if (node.kind() == Kind.TEXT) {
      item(node);
    } else {
      YamlValues.list(node, reading.problems).forEach(this::item);
    }
  }

  private void item(YamlTree item) {
    try {
      if (item.kind() == Kind.LIST) {
        stretch(item).ifPresent(once::add);
      } else if (item.kind() == Kind.TEXT && RULE.matcher(item.text()).matches()) {
        rules.add(RecurringTime.parse(item.text()));
      } else if (item.kind() == Kind.TEXT) {
        weekly.add(WeeklyTime.parse(item.text()));
      } else {
        reading.problems.add(item, "found " + item.found() + ", expected a time", FORMS);
      }
    } catch (IllegalArgumentException refused) {
      String said = refused.getMessage();
      int mend = said.indexOf("; write");
      reading.problems.add(
          item,
          mend < 0 ? said : said.substring(0, mend),
          mend < 0 ? FORMS : said.substring(mend + 2));
    }
  }

  private Optional<Stretch> stretch(YamlTree pair) {
    if (pair.items().size() != 2) {
      reading.problems.add(pair, "found " + pair.found() + ", expected two times", FORMS);
      return Optional.empty();
    }
    Optional<Instant> from = YamlValues.instant(pair.items().get(0), reading.problems);
    Optional<Instant> to = YamlValues.instant(pair.items().get(1), reading.problems);
    return from.isPresent() && to.isPresent()
        ? Optional.of(new Stretch(from.get(), to.get()))
        : Optional.empty();
  }

  /** {@code always}, times, or a map of times and gaps. */
  static Availability available(Section station, Reading reading) {
    YamlTree node = station.at("available");
    if (node.isNothing() || (node.kind() == Kind.TEXT && node.text().equals("always"))) {
      return Availability.ALWAYS;
    }
    if (node.kind() == Kind.MAP) {
      return station
          .partIfWritten("available", part -> available(node, part, reading))
          .orElse(Availability.ALWAYS);
    }
    Rota on = read(node, reading);
    requireSome(node, on, reading);
    return new Availability(Optional.of(on), Rota.NEVER);
  }

  private static Availability available(YamlTree node, Section part, Reading reading) {
    RotaReader reader = new RotaReader(reading);
    YamlTree weekly = part.at("weekly");
    YamlTree rules = part.at("rules");
    reader.add(weekly);
    reader.add(rules);
    Rota gaps = read(part.at("not_between"), reading);
    if (weekly.isNothing() && rules.isNothing()) {
      return new Availability(Optional.empty(), gaps);
    }
    requireSome(node, reader.rota(), reading);
    return new Availability(Optional.of(reader.rota()), gaps);
  }

  private static void requireSome(YamlTree node, Rota on, Reading reading) {
    if (on.isEmpty() && reading.problems.isEmpty()) {
      reading.problems.add(node, "no time is named, so nobody could ever sit there", FORMS);
    }
  }
}
