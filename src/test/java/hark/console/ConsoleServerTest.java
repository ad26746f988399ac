package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.problem.BadInput;
import java.io.IOException;
import java.net.BindException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConsoleServerTest {
  private static final String NOTHING =
      "{\"kind\":\"nothing-heard\",\"keys\":{\"station\":\"Quay\","
          + "\"from\":\"2026-11-13T20:12:30Z\",\"to\":\"2026-11-13T20:21:00Z\"}}";

  private final HttpClient client = HttpClient.newHttpClient();
  private final FixtureModel model = new FixtureModel(false);
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
  void everyAnswerCarriesAStrictContentPolicy() throws Exception {
    for (String path : new String[] {"/", "/main.js", "/api/journal", "/nowhere"}) {
      HttpResponse<String> answer = get(path);
      String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none'"), path);
      assertFalse(policy.contains("unsafe"), path);
      assertEquals("nosniff", answer.headers().firstValue("X-Content-Type-Options").orElse(""));
      assertTrue(answer.headers().firstValue("Server").isEmpty(), path);
    }
  }

  @Test
  void thePageAndItsLibraryAreServed() throws Exception {
    assertTrue(get("/").body().contains("importmap"));
    assertTrue(get("/api/console.js").body().contains("fetch("));
    assertEquals(200, get("/lib/lit-html/directives/live.js").statusCode());
  }

  @Test
  void aFileThatHasNotChangedIsNotSentAgain() throws Exception {
    HttpRequest first = request("/main.js").header("Accept-Encoding", "gzip").build();
    HttpResponse<byte[]> whole = client.send(first, BodyHandlers.ofByteArray());
    String tag = whole.headers().firstValue("ETag").orElseThrow();
    HttpRequest again =
        request("/main.js").header("Accept-Encoding", "gzip").header("If-None-Match", tag).build();
    HttpResponse<byte[]> answer = client.send(again, BodyHandlers.ofByteArray());
    assertEquals(304, answer.statusCode());
    assertEquals(0, answer.body().length);
  }

  @Test
  void jsonIsCompressedAndEventsAreNot() throws Exception {
    HttpRequest zipped = request("/api/assessment").header("Accept-Encoding", "gzip").build();
    HttpResponse<byte[]> answer = client.send(zipped, BodyHandlers.ofByteArray());
    assertEquals("gzip", answer.headers().firstValue("Content-Encoding").orElse(""));
    HttpRequest events = request("/api/events").header("Accept-Encoding", "gzip").build();
    try (var stream = client.send(events, BodyHandlers.ofInputStream()).body()) {
      assertEquals('r', stream.read(), "a plain 'retry:' comes first");
    }
  }

  @Test
  void theAssessmentComesWithClockRecordAndPastWindows() throws Exception {
    JsonNode page = json(get("/api/assessment"));
    assertEquals("2026-11-14T09:30:00.000Z", page.at("/clock/now").asText());
    assertFalse(page.at("/clock/own").asBoolean());
    assertEquals(model.entries().size(), page.at("/journal").size());
    assertEquals(2, page.at("/pastWindows").size());
    assertTrue(page.at("/assessment/headline/action").isTextual());
  }

  @Test
  void theSkyOfAWindowIsFoundByItsId() throws Exception {
    String id = json(get("/api/assessment")).at("/assessment/windows/0/id").asText();
    String path = "/api/windows/" + id.replace(" ", "%20").replace(":", "%3A") + "/sky";
    assertTrue(json(get(path)).at("/tracks/0/points").size() > 10);
    assertProblem(404, get("/api/windows/elsewhere/sky"));
  }

  @Test
  void anUnknownAddressIsAProblemInJson() throws Exception {
    assertProblem(404, get("/api/elsewhere"));
    assertProblem(404, get("/elsewhere.html"));
    assertProblem(404, get("/api/procedures/none"));
  }

  @Test
  void aWrongMethodIsToldTheRightOne() throws Exception {
    HttpResponse<String> answer = post("/api/assessment", NOTHING, "application/json");
    assertProblem(405, answer);
    assertEquals("GET", answer.headers().firstValue("Allow").orElse(""));
    HttpRequest delete = request("/api/journal").DELETE().build();
    assertProblem(405, client.send(delete, BodyHandlers.ofString()));
  }

  @Test
  void anEntryIsAppendedAndItsNumberReturned() throws Exception {
    int before = model.entries().size();
    HttpResponse<String> answer = post("/api/journal", NOTHING, "application/json");
    assertEquals(201, answer.statusCode(), answer.body());
    assertEquals(before + 1, json(answer).get("number").asInt());
    assertEquals(before + 1, json(get("/api/journal")).get("entries").size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "not json",
        "{\"kind\":\"nothing-heard\"}",
        "{\"kind\":\"note\",\"keys\":{\"text\":[1]}}",
        "{\"kind\":\"nothing-heard\",\"keys\":{\"station\":\"Nowhere\",\"from\":\"yesterday\"}}",
        "{\"kind\":\"nothing-herd\",\"keys\":{}}"
      })
  void aBadEntryIsToldWhatIsWrongAndNothingIsRecorded(String body) throws Exception {
    int before = model.entries().size();
    assertProblem(400, post("/api/journal", body, "application/json"));
    assertEquals(before, model.entries().size());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 100_000, 900_000})
  void aBodyTooLargeIsRefusedAndTheRefusalArrives(int more) throws Exception {
    String words = "a".repeat(RequestBody.LIMIT + more);
    String note = "{\"kind\":\"note\",\"keys\":{\"text\":\"" + words + "\"}}";
    int before = model.entries().size();
    for (int turn = 0; turn < 20; turn++) { // what is lost on its way is lost now and then only
      assertProblem(413, post("/api/journal", note, "application/json"));
    }
    assertEquals(before, model.entries().size());
  }

  @Test
  void entriesFromAnotherOriginOrNotJsonAreRefused() throws Exception {
    int before = model.entries().size();
    HttpRequest foreign =
        request("/api/journal")
            .header("Content-Type", "application/json")
            .header("Origin", "http://elsewhere.example")
            .POST(BodyPublishers.ofString(NOTHING))
            .build();
    assertProblem(403, client.send(foreign, BodyHandlers.ofString()));
    assertProblem(415, post("/api/journal", NOTHING, "text/plain"));
    assertEquals(before, model.entries().size());
  }

  @Test
  void aNameThatIsNotOursIsRefused() throws Exception {
    try (Socket socket = new Socket("127.0.0.1", server.address().getPort())) {
      socket.setSoTimeout(5000);
      String request =
          "GET /api/journal HTTP/1.1\r\nHost: rebound.example\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(answer.startsWith("HTTP/1.1 421"), answer);
      assertTrue(answer.contains("\"problems\""), answer);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0.0.0", "192.0.2.7", "::", "example.org", ""})
  void addressesOtherThanLoopbackAreRefusedByName(String bind) {
    BadInput refused = assertThrows(BadInput.class, () -> ConsoleSettings.of(bind, 0));
    assertTrue(refused.getMessage().contains("log-ins"), refused.getMessage());
  }

  @Test
  void aPortInUseIsTold() {
    ConsoleSettings same = ConsoleSettings.of("127.0.0.1", server.address().getPort());
    assertThrows(BindException.class, () -> ConsoleServer.start(model, same));
  }

  @Test
  void openStreamsDoNotHoldTheServerUp() throws Exception {
    try (EventReader events = new EventReader(server.address(), "")) {
      events.next("hello");
      long start = System.nanoTime();
      server.close();
      assertTrue(Duration.ofNanos(System.nanoTime() - start).toMillis() < 3000);
      assertTrue(events.ended());
    }
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(server.address() + path.substring(1)))
        .timeout(Duration.ofSeconds(10));
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return client.send(request(path).build(), BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String path, String body, String type)
      throws IOException, InterruptedException {
    HttpRequest request =
        request(path).header("Content-Type", type).POST(BodyPublishers.ofString(body)).build();
    return client.send(request, BodyHandlers.ofString());
  }

  private static JsonNode json(HttpResponse<String> answer) throws IOException {
    return new ObjectMapper().readTree(answer.body());
  }

  private static void assertProblem(int status, HttpResponse<String> answer) throws IOException {
    assertEquals(status, answer.statusCode(), answer.body());
    JsonNode first = json(answer).at("/problems/0");
    assertFalse(first.get("what").asText().isEmpty(), answer.body());
    assertTrue(first.has("where") && first.has("mend"), answer.body());
  }

  @Test
  void anEntrySentAgainUnderItsTokenIsAnsweredWithTheNumberItHas() throws Exception {
    String sent = NOTHING.replaceFirst("\\{", "{\"token\":\"token-0001\",");
    int before = model.entries().size();
    HttpResponse<String> first = post("/api/journal", sent, "application/json");
    HttpResponse<String> again = post("/api/journal", sent, "application/json");
    assertEquals(201, first.statusCode());
    assertEquals(200, again.statusCode());
    assertEquals(first.body(), again.body());
    assertEquals(before + 1, model.entries().size());
    String bad = NOTHING.replaceFirst("\\{", "{\"token\":\"?\",");
    assertEquals(400, post("/api/journal", bad, "application/json").statusCode());
  }

  @Test
  void theRealClockCannotBeMoved() throws Exception {
    HttpResponse<String> answer = post("/api/clock", "{\"held\":true}", "application/json");
    assertEquals(400, answer.statusCode());
    assertTrue(answer.body().contains("keeps real time"), answer.body());
  }
}
