package hark.console;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import hark.assessment.Assessment;
import hark.evidence.Entry;
import java.io.IOException;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Optional;

/** What the page reads, as JSON. */
final class PageJson {
  private static final DateTimeFormatter MILLIS =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

  private static final ObjectMapper MAPPER =
      new ObjectMapper()
          .registerModule(
              new SimpleModule()
                  .addSerializer(new InstantText())
                  .addSerializer(new OptionalValue()));

  private PageJson() {}

  /** An assessment with all the page needs beside it. */
  static ObjectNode page(ConsoleModel model, Revisions.Revision revision, boolean working) {
    ObjectNode page = JsonNodeFactory.instance.objectNode();
    page.put("revision", revision.number()).put("working", working);
    page.putObject("clock")
        .put("now", time(model.now()))
        .put("own", model.ownClock())
        .put("notice", model.notice());
    page.set("assessment", assessment(revision.assessment()));
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

  private static JsonNode assessment(Assessment assessment) {
    return MAPPER.valueToTree(assessment);
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

  private static final class InstantText extends StdSerializer<Instant> {
    private static final long serialVersionUID = 1L;

    InstantText() {
      super(Instant.class);
    }

    @Override
    public void serialize(Instant value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeString(time(value));
    }
  }

  private static final class OptionalValue extends StdSerializer<Optional<?>> {
    private static final long serialVersionUID = 1L;

    OptionalValue() {
      super(Optional.class, false);
    }

    @Override
    public void serialize(Optional<?> value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      provider.defaultSerializeValue(value.orElse(null), out);
    }
  }
}
