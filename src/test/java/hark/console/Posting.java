package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Map;

/** Writes an entry down over HTTP, as the page does. */
final class Posting {
  private Posting() {}

  static void post(URI address, NewEntry entry) throws Exception {
    String body =
        new ObjectMapper().writeValueAsString(Map.of("kind", entry.kind(), "keys", entry.keys()));
    HttpRequest request =
        HttpRequest.newBuilder(address.resolve("/api/journal"))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    int status = HttpClient.newHttpClient().send(request, BodyHandlers.ofString()).statusCode();
    assertEquals(201, status);
  }
}
