package hark.console;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.problem.Problem;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * An answer to one request: JSON, a piece of HTML, or a file to keep.
 *
 * @param allow methods named in the answer to a wrong one; empty otherwise
 * @param fileName name to keep the answer under; empty for what is only read
 */
record Reply(int status, String contentType, String body, String allow, String fileName) {

  static Reply json(int status, JsonNode body) {
    return new Reply(status, "application/json", body.toString(), "", "");
  }

  static Reply html(String body) {
    return new Reply(200, "text/html;charset=utf-8", body, "", "");
  }

  /**
   * A text to keep as a file.
   *
   * @param fileName letters, digits, hyphens and dots only
   */
  static Reply file(String contentType, String fileName, String body) {
    return new Reply(200, contentType, body, "", fileName);
  }

  static Reply problem(int status, String what, String where, String mend) {
    return problems(status, List.of(new Problem(what, where, mend)));
  }

  /** The one shape of every failure: {@code {"problems":[{what, where, mend}]}}. */
  static Reply problems(int status, List<Problem> problems) {
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    problems.forEach(problem -> body.withArray("problems").add(node(problem)));
    return json(status, body);
  }

  static Reply methodNotAllowed(String allow) {
    Reply plain = problem(405, "this address does not take that method", "", "use " + allow);
    return new Reply(plain.status, plain.contentType, plain.body, allow, "");
  }

  static ObjectNode node(Problem problem) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("what", problem.what())
        .put("where", problem.where())
        .put("mend", problem.mend());
  }

  void send(Response response, Callback callback) {
    response.setStatus(status);
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, contentType);
    response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
    if (!allow.isEmpty()) {
      response.getHeaders().put(HttpHeader.ALLOW, allow);
    }
    if (!fileName.isEmpty()) {
      String disposition = "attachment; filename=\"" + fileName + "\"";
      response.getHeaders().put("Content-Disposition", disposition);
    }
    ByteBuffer bytes = ByteBuffer.wrap(body.getBytes(StandardCharsets.UTF_8));
    response.write(true, bytes, callback);
  }
}
