package hark.console;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * {@code GET /api/events}: server-sent events. Numbers are {@code RUN-N}, RUN naming this run of
 * the server; a reader that returns with the number it saw last is told what it missed, or, when
 * that is no longer kept or was another run's, to read everything again.
 */
final class EventStream extends Handler.Abstract {
  static final String PATH = "/api/events";

  /** Events kept for readers that come back. */
  static final int KEPT = 64;

  /** Readers at once; a crew is a handful of people. */
  static final int CLIENT_LIMIT = 64;

  private static final int RETRY_MILLIS = 1000;

  private record Sent(long number, String text) {}

  private final String run;
  private final Duration heartbeat;
  private final Set<EventClient> clients = ConcurrentHashMap.newKeySet();
  private final Deque<Sent> kept = new ArrayDeque<>();
  private long last;
  private boolean open = true;

  EventStream(String run, Duration heartbeat) {
    this.run = run;
    this.heartbeat = heartbeat;
  }

  /** Sends to everybody who listens. */
  synchronized void send(String name, String data) {
    last++;
    String text = EventText.event(run + "-" + last, name, data);
    kept.addLast(new Sent(last, text));
    if (kept.size() > KEPT) {
      kept.removeFirst();
    }
    clients.forEach(client -> client.offer(text));
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    if (!Request.getPathInContext(request).equals(PATH)) {
      return false;
    }
    if (!request.getMethod().equals("GET")) {
      Reply.methodNotAllowed("GET").send(response, callback);
      return true;
    }
    if (clients.size() >= CLIENT_LIMIT) {
      Reply.problem(
              503, "too many pages are open", PATH, "close some; " + CLIENT_LIMIT + " may be open")
          .send(response, callback);
      return true;
    }
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/event-stream");
    response.getHeaders().put(new HttpField(HttpHeader.CACHE_CONTROL, "no-store"));
    request.addIdleTimeoutListener(timeout -> false);
    welcome(new EventClient(response, callback), request.getHeaders().get("Last-Event-ID"));
    return true;
  }

  private synchronized void welcome(EventClient client, String lastSeen) {
    if (!open) {
      client.close();
      return;
    }
    client.offer(EventText.retry(RETRY_MILLIS));
    missed(lastSeen).forEach(client::offer);
    clients.add(client);
  }

  private List<String> missed(String lastSeen) {
    if (lastSeen == null) {
      // A first visit: the reader fetches everything anyway. Its number starts here.
      return List.of(EventText.event(run + "-" + last, "hello", "{}"));
    }
    long seen = numberOf(lastSeen);
    boolean known = seen >= 0 && seen <= last && seen >= last - kept.size();
    if (!known) {
      return List.of(EventText.event(run + "-" + last, "resync", "{}"));
    }
    return kept.stream().filter(sent -> sent.number() > seen).map(Sent::text).toList();
  }

  private long numberOf(String id) {
    if (!id.startsWith(run + "-")) {
      return -1;
    }
    try {
      return Long.parseLong(id.substring(run.length() + 1));
    } catch (NumberFormatException e) {
      return -1;
    }
  }

  @Override
  protected void doStart() throws Exception {
    super.doStart();
    scheduleHeartbeat();
  }

  private void scheduleHeartbeat() {
    getServer().getScheduler().schedule(this::beat, heartbeat.toMillis(), TimeUnit.MILLISECONDS);
  }

  private void beat() {
    clients.removeIf(EventClient::isGone);
    clients.forEach(client -> client.offer(EventText.heartbeat()));
    if (isRunning()) {
      scheduleHeartbeat();
    }
  }

  /** Ends every stream, so that the server can stop. */
  synchronized void closeAll() {
    open = false;
    clients.forEach(EventClient::close);
    clients.clear();
  }
}
