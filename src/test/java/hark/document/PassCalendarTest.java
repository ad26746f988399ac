package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Calendars are read back by the library; lines keep to RFC 5545, section 3.1. */
class PassCalendarTest {
  private static final Instant NOW = Instant.parse("2026-10-13T08:02:00Z");
  private static final PassCalendar.Event EVENT =
      new PassCalendar.Event(
          "Saltmere-2026-10-13T09:13:16Z",
          "Saltmere",
          Instant.parse("2026-10-13T09:13:16Z"),
          Instant.parse("2026-10-13T09:22:41Z"),
          "Saltmere: Listen wide, then record; see notes (33°)",
          "97311: a line,\n97312: another; " + "and a long one ".repeat(12),
          true);

  @Test
  void whatWasWrittenIsRead() {
    String text = PassCalendar.of(List.of(EVENT), NOW);
    ICalendar read = Biweekly.parse(text).first();
    VEvent event = read.getEvents().get(0);
    assertEquals("Saltmere-2026-10-13T09:13:16Z@hark", event.getUid().getValue());
    assertEquals(Date.from(EVENT.from()), event.getDateStart().getValue());
    assertEquals(Date.from(EVENT.to()), event.getDateEnd().getValue());
    assertEquals(EVENT.title(), event.getSummary().getValue());
    assertEquals(EVENT.details(), event.getDescription().getValue());
    assertTrue(event.getStatus().isConfirmed());
    assertEquals(Date.from(NOW), event.getDateTimeStamp().getValue());
  }

  @Test
  void timesAreUtcLinesShortAndBytesTheSame() {
    String text = PassCalendar.of(List.of(EVENT), NOW);
    assertTrue(text.contains("DTSTART:20261013T091316Z"), text);
    assertTrue(text.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"), text);
    text.lines()
        .forEach(line -> assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line));
    assertEquals(text, PassCalendar.of(List.of(EVENT), NOW));
  }
}
