package hark.console;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One Chromium for a class of tests; every page notes what it asked for and what it complained of.
 */
final class BrowserSession implements AutoCloseable {
  private static final List<String> FLAGS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private final Playwright playwright;
  private final Browser browser;

  BrowserSession() {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of("/usr/bin/chromium"))
                    .setArgs(FLAGS));
  }

  /** A page of a size, opened and drawn, for somebody who has been there before. */
  Visit open(URI address, int width, int height, ColorScheme scheme) {
    return open(address, width, height, scheme, "localStorage.setItem('hark.visited', 'yes')");
  }

  /** The same for somebody who comes for the first time. */
  Visit firstVisit(URI address, int width, int height) {
    return open(address, width, height, ColorScheme.LIGHT, "");
  }

  private Visit open(URI address, int width, int height, ColorScheme scheme, String before) {
    BrowserContext context =
        browser.newContext(
            new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(scheme));
    context.addInitScript(before);
    Page page = context.newPage();
    Visit visit = new Visit(page, new ArrayList<>(), new ArrayList<>());
    page.onRequest(request -> visit.requests.add(request.url()));
    page.onConsoleMessage(message -> visit.complaints.add(message.type() + ": " + message.text()));
    page.onPageError(error -> visit.complaints.add("error: " + error));
    page.navigate(address.toString());
    page.waitForSelector("h1");
    page.waitForSelector("svg.day");
    return visit;
  }

  /** A page with what it asked for and what it wrote to its console. */
  record Visit(Page page, List<String> requests, List<String> complaints) {}

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
