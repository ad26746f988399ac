package hark.console;

import hark.journal.JournalUnavailable;
import hark.problem.BadInput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.pathmap.UriTemplatePathSpec;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.URIUtil;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A small router: method and path template to an action; every failure becomes a problem. */
final class Routes extends Handler.Abstract {
  private static final Logger LOG = LoggerFactory.getLogger(Routes.class);

  /** Answers a request. */
  interface Action {
    /**
     * @param values of the template's variables and of the query; the former win
     * @param body the text sent; empty for GET
     */
    Reply answer(Map<String, String> values, String body);
  }

  private record Route(String method, UriTemplatePathSpec template, Action action) {}

  private final List<Route> routes = new ArrayList<>();

  Routes on(String method, String template, Action action) {
    routes.add(new Route(method, new UriTemplatePathSpec(template), action));
    return this;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws IOException {
    String path = Request.getPathInContext(request);
    // The page's own module folder is called api/ too; its files are no business of this router.
    if (!path.startsWith("/api/") || path.endsWith(".js")) {
      return false;
    }
    Reply reply = reply(request, path);
    RequestBody.discard(request);
    reply.send(response, callback);
    return true;
  }

  private Reply reply(Request request, String path) {
    List<Route> here = routes.stream().filter(route -> route.template.matches(path)).toList();
    if (here.isEmpty()) {
      return Reply.problem(404, "there is nothing at this address", path, "");
    }
    for (Route route : here) {
      if (route.method.equals(request.getMethod())) {
        return answer(route, request, path);
      }
    }
    return Reply.methodNotAllowed(
        here.stream().map(Route::method).distinct().collect(Collectors.joining(", ")));
  }

  private static Map<String, String> values(Route route, Request request, String path) {
    Map<String, String> values = new HashMap<>();
    Request.extractQueryParameters(request)
        .forEach(field -> values.put(field.getName(), field.getValue()));
    values.putAll(decoded(route.template.getPathParams(path)));
    return values;
  }

  private static Map<String, String> decoded(Map<String, String> params) {
    return params.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> URIUtil.decodePath(e.getValue())));
  }

  private static Reply answer(Route route, Request request, String path) {
    try {
      String body = route.method.equals("GET") ? "" : RequestBody.read(request);
      request.addIdleTimeoutListener(timeout -> false); // an answer may take its time
      return route.action.answer(values(route, request, path), body);
    } catch (BadInput bad) {
      return Reply.problems(400, bad.problems());
    } catch (JournalUnavailable e) {
      return Reply.problem(
          503, e.getMessage(), "the journal", "nothing was written down; try again");
    } catch (RequestBody.TooLarge e) {
      return Reply.problem(413, e.getMessage(), path, "send less at once");
    } catch (HttpException.RuntimeException e) {
      return Reply.problem(e.getCode(), "the request was refused: " + e.getReason(), path, "");
    } catch (Exception e) {
      LOG.error("{} {} failed: {}", request.getMethod(), path, e.toString());
      LOG.debug("Where it failed", e);
      return Reply.problem(
          500, "an unexpected defect stopped this", path, "the terminal has the particulars");
    }
  }
}
