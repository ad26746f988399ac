package hark.console;

import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.compression.gzip.GzipCompression;
import org.eclipse.jetty.compression.server.CompressionConfig;
import org.eclipse.jetty.compression.server.CompressionHandler;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.ContextHandlerCollection;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.component.LifeCycle;
import org.eclipse.jetty.util.resource.ResourceFactory;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The console's server: starts, serves one page over a model, stops cleanly. */
public final class ConsoleServer implements AutoCloseable {
  private static final int THREADS = 16;
  private static final long STOP_MILLIS = 3000;

  private final Server server;
  private final ServerConnector connector;
  private final Revisions revisions;
  private final Api api;
  private final ConsoleSettings settings;

  private ConsoleServer(ConsoleModel model, ConsoleSettings settings) {
    this.settings = settings;
    QueuedThreadPool threads = new QueuedThreadPool(THREADS);
    threads.setName("hark-console");
    threads.setDaemon(false);
    server = new Server(threads);
    connector = connector(server, settings);
    EventStream events = new EventStream(UUID.randomUUID().toString(), settings.heartbeat());
    revisions = new Revisions(model, news -> PageJson.tell(events, news));
    api = new Api(model, revisions, () -> events.send("clock", "{}"));
    server.setHandler(handlers(api.routes(), events));
    server.setErrorHandler(ConsoleServer::plainError);
    server.setStopTimeout(STOP_MILLIS);
    server.addEventListener(
        new LifeCycle.Listener() {
          @Override
          public void lifeCycleStopping(LifeCycle event) {
            events.closeAll();
          }
        });
    if (model.rehearsal().isPresent()) {
      followClock(new PassesOver(model));
    } else if (!model.ownClock()) {
      keepFresh(settings.refresh());
    }
  }

  /**
   * Starts to serve and to work out the first assessment; returns when the address answers.
   *
   * @throws BindException when the port is taken
   */
  public static ConsoleServer start(ConsoleModel model, ConsoleSettings settings)
      throws IOException {
    ConsoleServer console = new ConsoleServer(model, settings);
    try {
      console.server.start();
    } catch (IOException e) {
      console.close();
      throw e.getCause() instanceof BindException taken ? taken : e;
    } catch (Exception e) {
      console.close();
      throw new IllegalStateException("the console could not start", e);
    }
    console.revisions.refresh();
    return console;
  }

  /** Where the page is. */
  public URI address() {
    String host = settings.bind().contains(":") ? "[" + settings.bind() + "]" : settings.bind();
    return URI.create("http://" + host + ":" + connector.getLocalPort() + "/");
  }

  /** Ends event streams, lets requests in flight finish, frees the port. */
  @Override
  public void close() {
    revisions.close();
    api.close();
    try {
      server.stop();
    } catch (Exception e) {
      throw new IllegalStateException("the console could not stop", e);
    }
  }

  private static ServerConnector connector(Server server, ConsoleSettings settings) {
    HttpConfiguration http = new HttpConfiguration();
    http.setSendServerVersion(false);
    http.setSendDateHeader(true);
    ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
    connector.setHost(settings.bind());
    connector.setPort(settings.port());
    server.addConnector(connector);
    return connector;
  }

  private Handler handlers(Handler routes, Handler events) {
    ResourceFactory resources = ResourceFactory.of(server);
    Handler files =
        new ContextHandlerCollection(
            WebFiles.page(resources, settings.webFolder()), WebFiles.litHtml(resources));
    Handler inside = new Handler.Sequence(events, routes, files);
    String hash = WebFiles.importMapHash(settings.webFolder());
    CompressionHandler compressed =
        new CompressionHandler(new Guard(inside, hash, settings.bind()));
    compressed.putCompression(new GzipCompression());
    compressed.putConfiguration(
        "/*",
        CompressionConfig.builder()
            .defaults()
            .compressExcludeMimeType("text/event-stream")
            .compressIncludeMethod("GET")
            .build());
    return new GracefulHandler(compressed);
  }

  private static boolean plainError(
      org.eclipse.jetty.server.Request request,
      org.eclipse.jetty.server.Response response,
      org.eclipse.jetty.util.Callback callback) {
    int status = response.getStatus();
    if (status < 400) { // 304, "not modified", comes this way too and has no body
      response.write(true, null, callback);
      return true;
    }
    String what =
        status == 404 ? "there is nothing at this address" : "the request could not be answered";
    Reply.problem(status, what, request.getHttpURI().getPath(), "").send(response, callback);
    return true;
  }

  private void keepFresh(Duration pause) {
    server
        .getScheduler()
        .schedule(
            () -> {
              revisions.refresh();
              if (server.isRunning()) {
                keepFresh(pause);
              }
            },
            pause.toMillis(),
            TimeUnit.MILLISECONDS);
  }

  /** A rehearsal's clock may run fast: whether a window has ended is asked every second. */
  private void followClock(PassesOver over) {
    server
        .getScheduler()
        .schedule(
            () -> {
              if (over.since(revisions.current().map(Revisions.Revision::assessment))) {
                revisions.refresh();
              }
              if (server.isRunning() || server.isStarting()) {
                followClock(over);
              }
            },
            1,
            TimeUnit.SECONDS);
  }
}
