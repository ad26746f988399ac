package hark.console;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;

/** A console of its own over the invented mission for each test, and one of its pages looked at. */
abstract class ConsolePage {
  private static BrowserSession browser;
  final FixtureModel model = new FixtureModel(true);
  ConsoleServer server;
  BrowserSession.Visit visit;
  Page page;

  @BeforeAll
  static void openBrowser() {
    browser = new BrowserSession();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @BeforeEach
  void start() throws Exception {
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", 0));
    open(1280, 800);
  }

  @AfterEach
  void stop() {
    page.context().close();
    server.close();
  }

  /** Opens the console in a window of a size and goes to the page. */
  void open(int width, int height) {
    visit = browser.open(server.address(), width, height, ColorScheme.LIGHT);
    page = visit.page();
    arrive();
  }

  /** The same page on a phone. */
  void onPhone() {
    page.context().close();
    open(390, 844);
  }

  /** Goes from the first page to the one looked at and waits until it is drawn. */
  abstract void arrive();
}
