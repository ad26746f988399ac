package hark.console;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Queue;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * One listener on the event stream: a bounded queue and at most one write in flight. When the queue
 * is full it is emptied and the listener told to read everything again.
 */
final class EventClient {
  /** Events waiting for a slow reader. */
  static final int QUEUE_LIMIT = 32;

  private final Response response;
  private final Callback done;
  private final Queue<String> queue = new ArrayDeque<>();
  private boolean writing;
  private boolean closing;
  private boolean gone;

  EventClient(Response response, Callback done) {
    this.response = response;
    this.done = done;
  }

  void offer(String event) {
    synchronized (this) {
      if (closing || gone) {
        return;
      }
      if (queue.size() >= QUEUE_LIMIT) {
        queue.clear();
        queue.add(EventText.resync());
      } else {
        queue.add(event);
      }
    }
    pump();
  }

  void close() {
    synchronized (this) {
      closing = true;
    }
    pump();
  }

  synchronized boolean isGone() {
    return gone;
  }

  private void pump() {
    String next;
    boolean last = false;
    synchronized (this) {
      if (writing || gone) {
        return;
      }
      next = queue.poll();
      if (next == null) {
        if (!closing) {
          return;
        }
        last = true;
        gone = true;
      }
      writing = true;
    }
    if (last) {
      response.write(true, null, done);
    } else {
      ByteBuffer bytes = ByteBuffer.wrap(next.getBytes(StandardCharsets.UTF_8));
      response.write(false, bytes, Callback.from(this::wrote, this::failed));
    }
  }

  private void wrote() {
    synchronized (this) {
      writing = false;
    }
    pump();
  }

  private void failed(Throwable why) {
    synchronized (this) {
      gone = true;
      queue.clear();
    }
    done.failed(why);
  }
}
