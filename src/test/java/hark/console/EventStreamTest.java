package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class EventStreamTest {
  private static final NewEntry NOTE = new NewEntry("note", Map.of("text", "fog at Quay"));

  private final FixtureModel model = new FixtureModel(true);
  private ConsoleServer server;

  @BeforeEach
  void start() throws Exception {
    ConsoleSettings usual = ConsoleSettings.of("127.0.0.1", 0);
    ConsoleSettings lively =
        new ConsoleSettings(
            usual.bind(), 0, Optional.empty(), Duration.ofMillis(50), usual.refresh());
    server = ConsoleServer.start(model, lively);
    Thread.sleep(200);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void anEntryIsFollowedByWorkingAndThenTheNewRevision() throws Exception {
    try (EventReader events = new EventReader(server.address(), "")) {
      events.next("hello");
      Posting.post(server.address(), NOTE);
      assertEquals("{\"revision\":1}", events.next("working").data());
      assertEquals("{\"revision\":2}", events.next("assessment").data());
    }
  }

  @Test
  void aReaderThatComesBackIsToldWhatItMissed() throws Exception {
    String seen;
    try (EventReader events = new EventReader(server.address(), "")) {
      seen = events.next("hello").id();
    }
    Posting.post(server.address(), NOTE);
    Thread.sleep(300);
    try (EventReader events = new EventReader(server.address(), seen)) {
      events.next("working");
      events.next("assessment");
    }
  }

  @Test
  void aReaderOfAnotherRunIsToldToReadEverythingAgain() throws Exception {
    try (EventReader events = new EventReader(server.address(), "another-run-7")) {
      events.next("resync");
    }
  }

  @Test
  void aReaderTooFarBehindIsToldToReadEverythingAgain() throws Exception {
    String seen;
    try (EventReader events = new EventReader(server.address(), "")) {
      seen = events.next("hello").id();
    }
    for (int i = 0; i < EventStream.KEPT; i++) {
      Posting.post(server.address(), NOTE);
      Thread.sleep(15);
    }
    try (EventReader events = new EventReader(server.address(), seen)) {
      events.next("resync");
    }
  }

  @Test
  void anIdleStreamGivesSignsOfLife() throws Exception {
    try (EventReader events = new EventReader(server.address(), "")) {
      EventReader.await(() -> events.comments() >= 3);
    }
  }

  @Test
  void aFailedRecomputationIsToldAndTheFormerNumbersStand() throws Exception {
    try (EventReader events = new EventReader(server.address(), "")) {
      events.next("hello");
      model.failNext(new IllegalStateException("no member left"));
      Posting.post(server.address(), NOTE);
      events.next("working");
      assertTrue(events.next("failed").data().contains("no member left"));
      Posting.post(server.address(), NOTE);
      events.next("working");
      assertEquals("{\"revision\":2}", events.next("assessment").data());
    }
  }

  @Test
  void aReaderThatDoesNotReadLosesItsQueueAndIsToldToReadAgain() {
    Deque<Callback> unfinished = new ArrayDeque<>();
    List<String> written = new ArrayList<>();
    EventClient client = new EventClient(stuck(unfinished, written), Callback.NOOP);
    for (int i = 0; i <= EventClient.QUEUE_LIMIT + 1; i++) {
      client.offer(EventText.event("run-" + i, "assessment", "{}"));
    }
    assertEquals(1, written.size(), "one write in flight");
    unfinished.remove().succeeded();
    assertEquals(EventText.resync(), written.get(1));
  }

  /** A response whose writes end only when the test says so. */
  private static Response stuck(Deque<Callback> unfinished, List<String> written) {
    return (Response)
        Proxy.newProxyInstance(
            Response.class.getClassLoader(),
            new Class<?>[] {Response.class},
            (proxy, method, args) -> {
              if (method.getName().equals("write")) {
                written.add(StandardCharsets.UTF_8.decode((ByteBuffer) args[1]).toString());
                unfinished.add((Callback) args[2]);
              }
              return null;
            });
  }
}
