package hark.console;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** Reads an event stream for tests. */
final class EventReader implements AutoCloseable {
  private static final long PATIENCE_MILLIS = 10_000;
  private static final Event END = new Event("", "end", "");

  /** One event as it came. */
  record Event(String id, String name, String data) {}

  private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
  private final InputStream stream;
  private volatile int comments;

  /**
   * @param lastSeen sent as {@code Last-Event-ID}; empty for a first visit
   */
  EventReader(URI address, String lastSeen) throws IOException, InterruptedException {
    HttpRequest.Builder request = HttpRequest.newBuilder(address.resolve("/api/events"));
    if (!lastSeen.isEmpty()) {
      request.header("Last-Event-ID", lastSeen);
    }
    stream = HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofInputStream()).body();
    Thread reader = new Thread(this::read, "event-reader");
    reader.setDaemon(true);
    reader.start();
  }

  /** The next event, which must have a name. */
  Event next(String name) throws InterruptedException {
    Event event = events.poll(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
    if (event == null || !event.name.equals(name)) {
      fail("expected event '" + name + "', got " + event);
    }
    return event;
  }

  boolean ended() throws InterruptedException {
    Event event = events.poll(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
    return event == END;
  }

  int comments() {
    return comments;
  }

  private void read() {
    String id = "";
    String name = "";
    StringBuilder data = new StringBuilder();
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith(":")) {
          comments++;
        } else if (line.startsWith("id: ")) {
          id = line.substring(4);
        } else if (line.startsWith("event: ")) {
          name = line.substring(7);
        } else if (line.startsWith("data: ")) {
          data.append(line.substring(6));
        } else if (line.isEmpty() && !name.isEmpty()) {
          events.add(new Event(id, name, data.toString()));
          name = "";
          data.setLength(0);
        }
      }
    } catch (IOException e) {
      // The end of the stream is told below, however it came.
    }
    events.add(END);
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }

  /** Waits until something holds. */
  static void await(Callable<Boolean> holds) throws Exception {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MILLIS);
    while (!holds.call()) {
      if (System.nanoTime() > end) {
        fail("it did not come about in " + PATIENCE_MILLIS + " ms");
      }
      Thread.sleep(20);
    }
  }
}
