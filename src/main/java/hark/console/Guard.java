package hark.console;

import java.util.Locale;
import java.util.Set;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Security headers on every answer, and refusals: a Host header that is not ours (a page elsewhere
 * whose name was pointed at this machine), a POST from another origin or not of JSON.
 */
final class Guard extends Handler.Wrapper {
  private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");

  private final String contentPolicy;
  private final String boundTo;

  /**
   * @param importMapHash of the one inline script the page has, as a policy writes it
   */
  Guard(Handler next, String importMapHash, String boundTo) {
    super(next);
    this.boundTo = boundTo.contains(":") ? "[" + boundTo + "]" : boundTo;
    this.contentPolicy =
        "default-src 'none'; script-src 'self' '"
            + importMapHash
            + "'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
            + "base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    HttpFields.Mutable headers = response.getHeaders();
    headers.put("Content-Security-Policy", contentPolicy);
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("Referrer-Policy", "no-referrer");
    headers.put("Cross-Origin-Opener-Policy", "same-origin");
    headers.put("Cross-Origin-Resource-Policy", "same-origin");
    headers.put("X-Frame-Options", "DENY");
    Reply refusal = refusal(request);
    if (refusal == null) {
      return super.handle(request, response, callback);
    }
    RequestBody.discard(request);
    refusal.send(response, callback);
    return true;
  }

  private Reply refusal(Request request) {
    String host = request.getHeaders().get(HttpHeader.HOST);
    if (host == null || !isOwn(host)) {
      return Reply.problem(
          421, "this server does not answer to that name", "Host", "open http://127.0.0.1/");
    }
    return switch (request.getMethod()) {
      case "GET", "HEAD" -> null;
      case "POST" -> postRefusal(request, host);
      default -> Reply.methodNotAllowed("GET, HEAD, POST");
    };
  }

  private static Reply postRefusal(Request request, String host) {
    String origin = request.getHeaders().get(HttpHeader.ORIGIN);
    String site = request.getHeaders().get("Sec-Fetch-Site");
    boolean foreign =
        (origin != null && !origin.equals("http://" + host))
            || (site != null && !site.equals("same-origin"));
    if (foreign) {
      return Reply.problem(
          403, "entries are taken from this console's own page only", "Origin", "");
    }
    String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
    if (type == null || !type.toLowerCase(Locale.ROOT).matches("application/json(\\s*;.*)?")) {
      return Reply.problem(415, "entries are taken as application/json only", "Content-Type", "");
    }
    return null;
  }

  private boolean isOwn(String host) {
    String name = host.replaceFirst(":\\d+$", "");
    return OWN_NAMES.contains(name) || name.equals(boundTo);
  }
}
