package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.Assessment;
import hark.document.AssessmentJson;
import hark.document.Headline;
import hark.evidence.Entry;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Optional;

/** What the page reads, as JSON. */
final class PageJson {
  private static final DateTimeFormatter MILLIS =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

  private PageJson() {}

  /** An assessment with all the page needs beside it. */
  static ObjectNode page(ConsoleModel model, Revisions.Revision revision, boolean working) {
    ObjectNode page = JsonNodeFactory.instance.objectNode();
    page.put("revision", revision.number()).put("working", working);
    if (revision.provisional()) {
      page.put("provisional", true);
    }
    page.set("clock", clock(model));
    page.set("assessment", assessment(model, revision.assessment()));
    page.set("journal", journal(revision.entries()).get("entries"));
    ArrayNode past = page.putArray("pastWindows");
    for (ConsoleModel.PastWindow window : model.pastWindows()) {
      past.addObject()
          .put("station", window.station())
          .put("from", time(window.from()))
          .put("to", time(window.to()))
          .put("maxElevationDeg", window.maxElevationDeg());
    }
    return page;
  }

  /**
   * What time it is: {@code own} when it stands still between entries, {@code pace} seconds of the
   * mission for each second of the reader's (0 while it is held).
   */
  static ObjectNode clock(ConsoleModel model) {
    ObjectNode clock = JsonNodeFactory.instance.objectNode();
    Optional<Rehearsal> rehearsal = model.rehearsal();
    clock
        .put("now", time(model.now()))
        .put("own", model.ownClock())
        .put("notice", model.notice())
        .put("rehearsal", rehearsal.isPresent())
        .put("held", rehearsal.map(Rehearsal::isHeld).orElse(false))
        .put("speed", rehearsal.map(Rehearsal::speed).orElse(1.0))
        .put("pace", model.ownClock() ? 0 : rehearsal.map(Rehearsal::pace).orElse(1.0));
    return clock;
  }

  /** As everywhere, but the headline names who may authorise, as the brief does. */
  private static ObjectNode assessment(ConsoleModel model, Assessment assessment) {
    ObjectNode node = AssessmentJson.of(assessment);
    Headline said = Headline.of(assessment, model.mayAuthorise());
    node.withObject("/headline").put("caution", said.caution()).put("why", said.why());
    return node;
  }

  static ObjectNode journal(List<Entry> entries) {
    ObjectNode journal = JsonNodeFactory.instance.objectNode();
    ArrayNode list = journal.putArray("entries");
    for (Entry entry : entries) {
      ObjectNode node = list.addObject();
      node.put("number", entry.number())
          .put("kind", entry.evidence().kind())
          .put("at", time(entry.evidence().at()))
          .put("recordedAt", time(entry.recordedAt()))
          .put("who", entry.who())
          .put("note", entry.note());
      ObjectNode keys = node.putObject("keys");
      entry.keys().entrySet().stream()
          .sorted(java.util.Map.Entry.comparingByKey())
          .forEach(key -> keys.put(key.getKey(), key.getValue()));
    }
    return journal;
  }

  /** Directions are pairs of azimuth and elevation, rounded to a hundredth of a degree. */
  static ObjectNode sky(ConsoleModel.SkyView sky) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    directions(node.putArray("skyline"), sky.skyline());
    ArrayNode tracks = node.putArray("tracks");
    for (ConsoleModel.Track track : sky.tracks()) {
      ObjectNode one = tracks.addObject();
      one.put("object", track.object())
          .put("from", time(track.from()))
          .put("stepSeconds", track.stepSeconds());
      directions(one.putArray("points"), track.points());
    }
    return node;
  }

  static void directions(ArrayNode into, List<ConsoleModel.Direction> from) {
    for (ConsoleModel.Direction each : from) {
      into.addArray().add(hundredth(each.azimuthDeg())).add(hundredth(each.elevationDeg()));
    }
  }

  private static double hundredth(double degrees) {
    return Math.round(degrees * 100) / 100.0;
  }

  /** Tells the page what became of a recomputation. */
  static void tell(EventStream events, Revisions.News news) {
    ObjectNode data = JsonNodeFactory.instance.objectNode();
    if (news instanceof Revisions.News.Working working) {
      events.send("working", data.put("revision", working.after()).toString());
    } else if (news instanceof Revisions.News.Ready ready) {
      events.send("assessment", data.put("revision", ready.revision().number()).toString());
    } else if (news instanceof Revisions.News.Failed failed) {
      data.withArray("problems").add(Reply.node(failed.problem()));
      events.send("failed", data.toString());
    }
  }

  static String time(Instant time) {
    return MILLIS.format(time);
  }
}
