package hark.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.problem.BadInput;
import java.time.DateTimeException;
import java.time.Instant;

/** Holds, lets go and moves the clock of a rehearsal. Nobody can move the real one. */
final class ClockApi {
  private static final String PLACE = "/api/clock";

  private final ObjectMapper mapper = new ObjectMapper();
  private final ConsoleModel model;
  private final Runnable moved;

  ClockApi(ConsoleModel model, Runnable moved) {
    this.model = model;
    this.moved = moved;
  }

  Routes into(Routes routes) {
    return routes
        .on("GET", PLACE, (path, body) -> Reply.json(200, PageJson.clock(model)))
        .on("POST", PLACE, (path, body) -> move(body));
  }

  private Reply move(String body) {
    Rehearsal clock =
        model
            .rehearsal()
            .orElseThrow(
                () ->
                    BadInput.of(
                        "this console keeps real time",
                        PLACE,
                        "start it with `hark serve MISSION --now T --speed X` to rehearse"));
    JsonNode wish = read(body);
    if (wish.has("speed")) {
      clock.run(wish.get("speed").asDouble(Double.NaN));
    }
    if (wish.has("to")) {
      clock.goTo(time(wish.get("to").asText()));
    }
    if (wish.has("held")) {
      clock.hold(wish.get("held").asBoolean());
    }
    moved.run();
    return Reply.json(200, PageJson.clock(model));
  }

  private JsonNode read(String body) {
    try {
      return mapper.readTree(body);
    } catch (JsonProcessingException e) {
      throw BadInput.of(
          "this is not JSON: " + e.getOriginalMessage(), PLACE, "send {\"held\": true}");
    }
  }

  private static Instant time(String text) {
    try {
      return Instant.parse(text);
    } catch (DateTimeException e) {
      throw BadInput.of("'" + text + "' is not a time", "to", "write it as 2026-10-14T08:56:00Z");
    }
  }
}
