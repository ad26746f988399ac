package hark.console;

/** Writes server-sent events as the HTML standard (section 9.2) frames them. */
final class EventText {
  private EventText() {}

  static String event(String id, String name, String data) {
    return "id: " + id + "\nevent: " + name + "\ndata: " + data.replace("\n", "\ndata: ") + "\n\n";
  }

  static String heartbeat() {
    return ": still here\n\n";
  }

  /** Sent without a number, so that the reader's last number stays what it has really read. */
  static String resync() {
    return "event: resync\ndata: {}\n\n";
  }

  /** How long a reader waits before it calls again, in milliseconds. */
  static String retry(int millis) {
    return "retry: " + millis + "\n\n";
  }
}
