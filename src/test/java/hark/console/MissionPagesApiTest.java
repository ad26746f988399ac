package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the pages of record, runbook and set-up ask the server for. */
class MissionPagesApiTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String PRIOR = "events.array_shortfall.probability";

  private final HttpClient client = HttpClient.newHttpClient();
  private final FixtureModel model = new FixtureModel(true);
  private ConsoleServer server;

  @BeforeEach
  void start() throws Exception {
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", 0));
    EventReader.await(() -> get("/api/assessment").statusCode() == 200);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void theChainIsToldWithItsHead() throws Exception {
    JsonNode chain = json(get("/api/record/chain"));
    assertEquals(model.entries().size(), chain.get("entries").asInt());
    assertEquals("3f2a", chain.at("/head/hash").asText().substring(0, 4));
    assertTrue(chain.get("fault").isNull());
  }

  @Test
  void theRecordIsKeptAsAFileInThreeForms() throws Exception {
    for (String[] form : new String[][] {{"csv", "csv"}, {"json", "json"}, {"lines", "jsonl"}}) {
      HttpResponse<String> file = get("/api/record/" + form[0]);
      assertEquals(
          "attachment; filename=\"journal." + form[1] + "\"",
          file.headers().firstValue("Content-Disposition").orElse(""));
      assertTrue(file.body().contains("2026-11-14T07:41:00"), form[0]);
    }
    assertEquals(model.entries().size(), get("/api/record/lines").body().lines().count());
    assertEquals(model.entries().size(), json(get("/api/record/json")).get("entries").size());
  }

  @Test
  void proceduresComeTakenApart() throws Exception {
    JsonNode reset = null;
    for (JsonNode each : json(get("/api/runbook")).get("procedures")) {
      reset = each.get("id").asText().equals("blind-reset") ? each : reset;
    }
    assertEquals("command", reset.get("kind").asText());
    assertTrue(reset.get("cautions").size() >= 3 && reset.get("forbiddenIf").size() >= 1);
    JsonNode steps = null;
    for (JsonNode part : reset.get("parts")) {
      steps = part.has("steps") ? part.get("steps") : steps;
    }
    assertTrue(steps.size() >= 5);
    for (JsonNode step : steps) {
      for (String field : List.of("text", "expect", "timeOut", "ifNot")) {
        assertFalse(step.path(field).asText().isBlank(), field + " of " + step);
      }
    }
  }

  @Test
  void theDraftedEntryIsShownAndKeptAsOneText() throws Exception {
    HttpResponse<String> file = get("/api/runbook-entry/file");
    assertTrue(file.body().startsWith("# Contact lost: Sandpiper"), file.body());
    assertEquals(
        "attachment; filename=\"sandpiper-20261114T093000Z.md\"",
        file.headers().firstValue("Content-Disposition").orElse(""));
    JsonNode shown = json(get("/api/runbook-entry"));
    assertTrue(shown.get("html").asText().contains("<table>"), "tables are drawn");
    assertTrue(shown.get("html").asText().contains("<strong>to fill</strong>"));
  }

  @Test
  void theFilesComeWithWhatWasFoundInThem() throws Exception {
    JsonNode found = json(get("/api/set-up"));
    assertEquals(0, found.get("problems").size());
    assertTrue(found.at("/texts/mission.yaml").asText().contains("name: Corncrake"));
    JsonNode capacity = key(found, "spacecraft.battery.cell.capacity_Ah");
    assertEquals("2.6", capacity.get("value").asText());
    assertEquals("Ah", capacity.get("unit").asText());
    assertTrue(capacity.get("line").asInt() > 0 && capacity.get("greatest").asDouble() > 2.6);
    assertEquals(0, key(found, "spacecraft.battery.fade_per_year").get("line").asInt());
    assertEquals(0.03, prior(found, "array_shortfall"));
  }

  @Test
  void whatASimulationTellsOfTheTreeComesWhenItIsThere() throws Exception {
    EventReader.await(() -> json(get("/api/set-up/tree")).get("done").asBoolean());
    JsonNode warnings = json(get("/api/set-up/tree")).get("warnings");
    assertEquals(FixturePapers.TREE.what(), warnings.get(0).get("what").asText());
  }

  @Test
  void aKeyIsSetInACopyAndTheFilesStayAsTheyAre() throws Exception {
    JsonNode found =
        json(
            check(
                Map.of(),
                new Set("causes.yaml", PRIOR, "0.1"),
                new Set("mission.yaml", "spacecraft.mass_kg", "3")));
    assertEquals(0.1, prior(found, "array_shortfall"));
    assertEquals("3", key(found, "spacecraft.mass_kg").get("value").asText());
    assertEquals(0.03, prior(json(get("/api/set-up")), "array_shortfall"));
  }

  @Test
  void aProblemOfAnEditedTextNamesItsLine() throws Exception {
    String text = FixturePapers.DEMO.text("mission.yaml").orElseThrow();
    JsonNode found =
        json(check(Map.of("mission.yaml", text.replace("mass_kg: 2.7", "mass_kg: heavy"))));
    JsonNode problem = found.get("problems").get(0);
    int line = (int) text.lines().takeWhile(l -> !l.contains("mass_kg")).count() + 1;
    assertTrue(
        problem.get("where").asText().startsWith("mission.yaml:" + line + " "), problem.toString());
    assertFalse(found.has("mission"));
    HttpResponse<String> refused =
        post("/api/set-up/reckon", Map.of("texts", Map.of("mission.yaml", "hark: 2\n")));
    assertEquals(400, refused.statusCode());
  }

  @Test
  void whatCannotBeSetOrReadIsRefusedInWords() throws Exception {
    assertRefused(check(Map.of(), new Set("causes.yaml", PRIOR, "[1")));
    assertRefused(check(Map.of(), new Set("../x", "a", "1")));
    assertRefused(check(Map.of("orbit/launch-731.tle", "x")));
    assertRefused(post("/api/set-up/reckon", "nothing"));
    assertEquals(404, get("/api/set-up/reckon/77").statusCode());
    assertRefused(get("/api/set-up/reckon/x"));
  }

  @Test
  void aReckoningOfChangedFilesIsFollowedToItsEnd() throws Exception {
    JsonNode changed = json(check(Map.of(), new Set("causes.yaml", PRIOR, "0.1")));
    HttpResponse<String> begun = post("/api/set-up/reckon", Map.of("texts", changed.get("texts")));
    assertEquals(202, begun.statusCode(), begun.body());
    String at = "/api/set-up/reckon/" + json(begun).get("number").asInt();
    EventReader.await(() -> json(get(at)).get("state").asText().equals("done"));
    JsonNode cause = json(get(at)).at("/assessment/causes/0");
    assertEquals(0.1, cause.get("prior").asDouble());
    assertEquals(0.5, cause.get("posterior").asDouble(), 1e-9);
    assertEquals(
        0.3, json(get("/api/assessment")).at("/assessment/causes/0/posterior").asDouble(), 1e-9);
  }

  @Test
  void aReckoningIsStoppedWhenSomebodyAsks() throws Exception {
    model.papersOfDemo().pause = Duration.ofMinutes(1);
    JsonNode begun = json(post("/api/set-up/reckon", Map.of("texts", Map.of())));
    String at = "/api/set-up/reckon/" + begun.get("number").asInt();
    assertEquals("running", json(get(at)).get("state").asText());
    assertEquals("stopped", json(post(at + "/stop", Map.of())).get("state").asText());
  }

  private static JsonNode key(JsonNode found, String key) {
    return found
        .get("keys")
        .valueStream()
        .filter(each -> each.get("key").asText().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static double prior(JsonNode found, String id) {
    return found
        .at("/mission/causes")
        .valueStream()
        .filter(each -> each.get("id").asText().equals(id))
        .findFirst()
        .orElseThrow()
        .get("prior")
        .asDouble();
  }

  private record Set(String file, String key, String value) {}

  private HttpResponse<String> check(Map<String, String> texts, Set... set) throws Exception {
    return post("/api/set-up/check", Map.of("texts", texts, "set", List.of(set)));
  }

  private static void assertRefused(HttpResponse<String> answer) throws Exception {
    assertEquals(400, answer.statusCode(), answer.body());
    assertFalse(json(answer).at("/problems/0/what").asText().isEmpty());
  }

  private HttpResponse<String> get(String path) throws Exception {
    return client.send(
        HttpRequest.newBuilder(server.address().resolve(path)).build(), BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String path, Object body) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(server.address().resolve(path))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(JSON.writeValueAsString(body)))
            .build();
    return client.send(request, BodyHandlers.ofString());
  }

  private static JsonNode json(HttpResponse<String> answer) throws Exception {
    return JSON.readTree(answer.body());
  }
}
