package hark.document;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.Status;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Date;
import java.util.List;

/** Passes as a calendar (RFC 5545). Pure: the same passes and clock give the same bytes. */
public final class PassCalendar {
  private static final String PRODUCT = "-//hark//passes//EN";

  /** A line holds 75 octets (RFC 5545, 3.1); a few signs take two or three each. */
  private static final int LINE_CHARACTERS = 60;

  private PassCalendar() {}

  /**
   * One pass over a station, of one candidate or of several that fly close together.
   *
   * @param id the same for the same window, whenever the calendar is written
   * @param from first of the candidates rises
   * @param to last of them sets
   * @param planned true when something is to be done
   */
  public record Event(
      String id,
      String station,
      Instant from,
      Instant to,
      String title,
      String details,
      boolean planned) {}

  /**
   * The calendar.
   *
   * @param written stamps each event
   */
  public static String of(List<Event> events, Instant written) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    for (Event event : events) {
      calendar.addEvent(entry(event, written));
    }
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(LINE_CHARACTERS);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException("text in memory could not be written", e);
    }
    return text.toString();
  }

  private static VEvent entry(Event event, Instant written) {
    VEvent entry = new VEvent();
    entry.setUid(event.id() + "@hark");
    entry.setDateTimeStamp(Date.from(written));
    entry.setDateStart(Date.from(event.from()), true);
    entry.setDateEnd(Date.from(event.to()), true);
    entry.setSummary(event.title());
    entry.setLocation(event.station());
    entry.setDescription(event.details());
    entry.setStatus(event.planned() ? Status.confirmed() : Status.tentative());
    return entry;
  }
}
