package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EnergyApiTest {
  private static final String WHAT_IF = "/api/energy/what-if";

  private final HttpClient client = HttpClient.newHttpClient();
  private ConsoleServer server;

  @BeforeEach
  void start() throws Exception {
    server = ConsoleServer.start(new FixtureModel(false), ConsoleSettings.of("127.0.0.1", 0));
    EventReader.await(() -> get("/api/assessment").statusCode() == 200);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void theReportComesInTheShapeOfTheCommandWithNumbersToAskAbout() throws Exception {
    JsonNode report = json(get("/api/energy"), 200);
    assertTrue(report.at("/energy/0/states/off").isNumber());
    assertTrue(report.at("/balance/0/arrayWh").isNumber());
    assertTrue(report.at("/year/0/eclipseFraction").isNumber());
    assertEquals(1, report.get("revision").asInt());
    JsonNode number = report.at("/numbers/0");
    assertEquals(FixtureEnergy.CAPACITY, number.get("key").asText());
    assertEquals("Ah", number.get("unit").asText());
    assertEquals(12, number.get("greatest").asDouble());
  }

  @Test
  void aWhatIfAnswersWithBothSidesAndASentence() throws Exception {
    JsonNode answer = json(ask("{\"set\":{\"" + FixtureEnergy.CAPACITY + "\":\"6\"}}"), 200);
    double before = answer.at("/whatIfChange/before/socP50AtHorizon").asDouble();
    double after = answer.at("/whatIfChange/after/socP50AtHorizon").asDouble();
    assertTrue(after > before, before + " before, " + after + " after");
    assertTrue(answer.at("/whatIfChange/sentence").asText().contains("6 Ah"));
    assertEquals(answer.get("whatIfBefore").size(), answer.get("whatIf").size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "not json",
        "{\"set\":{}}",
        "{\"set\":{\"spacecraft.battery.cell.capacity_Ah\":[1]}}",
        "{\"set\":{\"spacecraft.battery.cell.capacity_Ah\":\"much\"}}",
        "{\"set\":{\"spacecraft.nothing\":\"1\"}}"
      })
  void aWhatIfThatCannotBeUnderstoodIsAProblem(String body) throws Exception {
    problem(ask(body), 400);
  }

  @Test
  void whyItIsSoIsAskedByTime() throws Exception {
    JsonNode why = json(get("/api/energy/why?at=2026-11-14T10:00:00Z"), 200);
    assertEquals("2026-11-14T10:00:00.000Z", why.get("time").asText());
    assertEquals("off", why.at("/states/0/state").asText());
    assertEquals(17, why.at("/states/0/reasons/0/member").asInt());
  }

  @Test
  void aMemberIsFollowedByItsNumber() throws Exception {
    JsonNode trace = json(get("/api/energy/member?n=17"), 200);
    assertEquals(17, trace.get("member").asInt());
    assertTrue(trace.at("/trace/0/change").isTextual());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/energy/why",
        "/api/energy/why?at=yesterday",
        "/api/energy/why?at=2020-01-01T00:00:00Z",
        "/api/energy/member",
        "/api/energy/member?n=-1",
        "/api/energy/member?n=0",
        "/api/energy/member?n=4001"
      })
  void aTimeOrMemberThatIsNotThereIsAProblem(String path) throws Exception {
    problem(get(path), 400);
  }

  private static void problem(HttpResponse<String> answer, int status) throws Exception {
    JsonNode problems = json(answer, status).get("problems");
    assertTrue(problems.size() > 0, answer.body());
    assertTrue(!problems.at("/0/what").asText().isEmpty(), answer.body());
  }

  private static JsonNode json(HttpResponse<String> answer, int status) throws Exception {
    assertEquals(status, answer.statusCode(), answer.body());
    return new ObjectMapper().readTree(answer.body());
  }

  private HttpResponse<String> get(String path) throws Exception {
    return client.send(
        HttpRequest.newBuilder(server.address().resolve(path)).build(), BodyHandlers.ofString());
  }

  private HttpResponse<String> ask(String body) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(server.address().resolve(WHAT_IF))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body))
            .build();
    return client.send(request, BodyHandlers.ofString());
  }

  @Test
  void returnsBeyondTheHorizonAreAnsweredAndTooFarIsRefused() throws Exception {
    JsonNode look = json(get("/api/recovery?days=365"), 200);
    assertEquals("2027-11-14T09:30:00.000Z", look.get("until").asText());
    assertEquals("computer_hung", look.at("/returns/0/cause").asText());
    assertTrue(look.at("/returns/0/words").asText().contains("(24 cases followed)"));
    assertEquals(400, get("/api/recovery?days=far").statusCode());
    assertEquals(400, get("/api/recovery?days=731").statusCode());
  }
}
