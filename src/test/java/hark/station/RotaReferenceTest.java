package hark.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Times that recur. The rules and their dates are examples of RFC 5545, section 3.8.5.3, with its
 * local times taken as UTC; recalled from memory.
 */
class RotaReferenceTest {
  private static final Instant BEGIN = Instant.parse("1997-08-01T00:00:00Z");
  private static final Instant END = Instant.parse("1998-09-01T00:00:00Z");

  private static Rota rule(String start, String rule, String length) {
    String text = "DTSTART:" + start + " RRULE:" + rule + " DURATION:" + length;
    return new Rota(List.of(), List.of(RecurringTime.parse(text)), List.of());
  }

  private static Rota weekly(String... texts) {
    return new Rota(List.of(texts).stream().map(WeeklyTime::parse).toList(), List.of(), List.of());
  }

  private static List<LocalDate> days(Rota rota) {
    return rota.between(BEGIN, END).stream()
        .map(stretch -> LocalDate.ofInstant(stretch.from(), ZoneOffset.UTC))
        .toList();
  }

  private static List<LocalDate> dates(String... days) {
    return List.of(days).stream().map(LocalDate::parse).toList();
  }

  @Test
  void everyOtherWeekOnThreeDaysUntilChristmasEve() {
    Rota rota =
        rule(
            "19970901T090000Z",
            "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
            "PT1H");
    assertEquals(
        dates(
            "1997-09-01",
            "1997-09-03",
            "1997-09-05",
            "1997-09-15",
            "1997-09-17",
            "1997-09-19",
            "1997-09-29",
            "1997-10-01",
            "1997-10-03",
            "1997-10-13",
            "1997-10-15",
            "1997-10-17",
            "1997-10-27",
            "1997-10-29",
            "1997-10-31",
            "1997-11-10",
            "1997-11-12",
            "1997-11-14",
            "1997-11-24",
            "1997-11-26",
            "1997-11-28",
            "1997-12-08",
            "1997-12-10",
            "1997-12-12",
            "1997-12-22"),
        days(rota));
  }

  @Test
  void monthlyOnTheFirstFridayForTenTimes() {
    assertEquals(
        dates(
            "1997-09-05",
            "1997-10-03",
            "1997-11-07",
            "1997-12-05",
            "1998-01-02",
            "1998-02-06",
            "1998-03-06",
            "1998-04-03",
            "1998-05-01",
            "1998-06-05"),
        days(rule("19970905T090000Z", "FREQ=MONTHLY;COUNT=10;BYDAY=1FR", "PT2H")));
  }

  @Test
  void aRuleThatBeganBeforeReachesIn() {
    Rota nights = rule("20261001T220000Z", "FREQ=DAILY", "PT8H");
    Instant two = Instant.parse("2026-11-05T02:00:00Z");
    assertTrue(nights.covers(two, two.plusSeconds(600)));
    assertFalse(nights.covers(two.plusSeconds(4 * 3600 - 300), two.plusSeconds(4 * 3600 + 300)));
  }

  @Test
  void daysInARowAndPastMidnight() {
    Rota rota = weekly("Fri-Mon 20:00-02:00");
    // 9 Nov 2026 is a Monday
    assertTrue(rota.covers(at("2026-11-09T23:30:00Z"), at("2026-11-10T01:30:00Z")));
    assertFalse(rota.meets(at("2026-11-10T20:30:00Z"), at("2026-11-10T21:30:00Z")));
    assertTrue(rota.covers(at("2026-11-13T20:00:00Z"), at("2026-11-13T20:10:00Z")));
  }

  @Test
  void timesThatTouchAreOneStretch() {
    Rota rota = weekly("Sat-Sun 00:00-24:00");
    assertTrue(rota.covers(at("2026-11-07T23:50:00Z"), at("2026-11-08T00:10:00Z")));
  }

  @Test
  void aGapIsNamedWithItsEnd() {
    Stretch gap = new Stretch(at("2026-11-07T00:00:00Z"), at("2026-11-09T00:00:00Z"));
    Availability always =
        new Availability(Optional.empty(), new Rota(List.of(), List.of(), List.of(gap)));
    Instant inside = at("2026-11-08T10:00:00Z");
    assertEquals(
        Optional.of("closed until 2026-11-09T00:00:00Z"),
        always.against(inside, inside.plusSeconds(600)));
    assertEquals(Optional.empty(), always.against(gap.to(), gap.to().plusSeconds(600)));
  }

  private static Instant at(String time) {
    return Instant.parse(time);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "RRULE:FREQ=DAILY DURATION:PT1H",
        "DTSTART:20261005T180000 RRULE:FREQ=DAILY DURATION:PT1H",
        "DTSTART:20261005T180000Z RRULE:FREQ=SOMETIMES DURATION:PT1H",
        "DTSTART:20261005T180000Z RRULE:FREQ=SECONDLY DURATION:PT1H",
        "DTSTART:20261005T180000Z RRULE:FREQ=DAILY DURATION:1H",
        "DTSTART:20261005T180000Z RRULE:FREQ=DAILY DURATION:PT0S",
        "DTSTART:20261005T180000Z RRULE:FREQ=DAILY;BYDAY=XX DURATION:PT1H",
        "DTSTART:20261005T180000Z RRULE:FREQ=DAILY DURATION:PT1H EXDATE:20261006T180000Z"
      })
  void whatIsNoRuleIsRefusedWithAMend(String text) {
    String said =
        assertThrows(IllegalArgumentException.class, () -> RecurringTime.parse(text)).getMessage();
    assertTrue(said.contains("write it like"), said);
  }
}
