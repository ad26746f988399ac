package hark.console;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import hark.evidence.Entry;
import hark.evidence.EvidenceKinds;
import hark.evidence.OutsideReport;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LogBrowserTest {
  private static BrowserSession browser;
  private FixtureModel model;
  private ConsoleServer server;
  private BrowserSession.Visit visit;
  private Page page;

  @BeforeAll
  static void openBrowser() {
    browser = new BrowserSession();
  }

  @AfterAll
  static void closeBrowser() {
    browser.close();
  }

  @BeforeEach
  void open() throws Exception {
    model = new FixtureModel(true);
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", 0));
    visit = browser.open(server.address(), 1280, 900, ColorScheme.LIGHT);
    page = visit.page();
  }

  @AfterEach
  void close() {
    page.context().close();
    server.close();
  }

  @Test
  void loggingNothingHeardChangesTheNumbersInPlace() {
    page.evaluate("() => { window.still = 'here'; }");
    String beacon = fact("beacon");
    String group = fact("row-mute");
    String passes = page.locator(".who").innerText();
    page.keyboard().press("n");
    page.locator("#f-window").selectOption("Fen Hill 2026-11-14T07:41:00.000Z");
    send();
    assertThat(page.locator("[data-fact=beacon]")).not().hasText(beacon);
    assertThat(page.locator("[data-fact=beacon]")).hasClass(Pattern.compile("changed"));
    assertNotEquals(group, fact("row-mute"));
    assertNotEquals(passes, page.locator(".who").innerText());
    assertThat(page.locator(".status")).containsText("the last is entry 16");
    assertEquals("here", page.evaluate("() => window.still"), "the page was not loaded again");
    Entry last = last();
    assertEquals("nothing-heard", last.evidence().kind());
    assertEquals("2026-11-14T07:41:00Z", last.evidence().at().toString());
    assertEquals(List.of(), visit.complaints());
  }

  @Test
  void theKeysChooseWhatHappenedAndGoToTheForm() {
    for (Map.Entry<String, String> key :
        Map.of("h", "heard", "n", "nothing-heard", "x", "not-listened").entrySet()) {
      page.evaluate("() => document.activeElement.blur()");
      page.keyboard().press(key.getKey());
      assertThat(page.locator("input[value=" + key.getValue() + "]")).isChecked();
      assertThat(page.locator("#f-window")).isFocused();
    }
  }

  @Test
  void theKeysAreLettersInsideAFieldAndCanBeSwitchedOff() {
    page.keyboard().press("h");
    page.locator("#f-who").click();
    page.keyboard().type("nhx");
    assertEquals("nhx", page.locator("#f-who").inputValue());
    assertThat(page.locator("input[value=heard]")).isChecked();
    page.locator(".switch input[type=checkbox]").uncheck();
    page.evaluate("() => document.activeElement.blur()");
    page.keyboard().press("x");
    assertThat(page.locator("input[value=heard]")).isChecked();
  }

  @Test
  void badInputIsToldBesideTheFormAndNothingTypedIsLost() {
    page.keyboard().press("n");
    page.locator("#f-window").selectOption("other");
    page.locator("#f-from").fill("last night");
    page.locator("#f-to").fill("2026-11-14 08:00");
    page.locator("#f-note").fill("dew on the antenna");
    send();
    var problems = page.locator("#log-problems");
    assertThat(problems).containsText("Nothing was written down");
    assertThat(problems).containsText("where:");
    assertThat(problems).containsText("mend:");
    assertThat(page.locator("#f-from")).hasAttribute("aria-invalid", "true");
    assertEquals("last night", page.locator("#f-from").inputValue());
    assertEquals("dew on the antenna", page.locator("#f-note").inputValue());
    assertEquals(15, model.entries().size());
    page.locator("#f-from").fill("2026-11-14 07:50");
    send();
    assertThat(page.locator(".status")).containsText("the last is entry 16");
    assertThat(problems).isEmpty();
  }

  @Test
  void everyKindCanBeWrittenDown() {
    kind("heard");
    page.locator("#f-level_db").fill("11.5");
    sent(16, "heard");
    kind("not-listened");
    page.locator("#f-why").fill("power cut");
    sent(17, "not-listened");
    kind("telemetry");
    page.locator("#f-volts").fill("7.31");
    sent(18, "telemetry");
    kind("station-check");
    page.locator("#f-station").selectOption("Quay");
    page.locator("#f-result").selectOption("missed");
    sent(19, "station-check");
    kind("note");
    page.locator("#f-text").fill("the rotator squeaks");
    sent(20, "note");
    kind("correction");
    page.locator("#f-of").selectOption("18");
    page.locator("#f-new-volts").fill("7.13");
    sent(21, "correction");
    assertEquals("7.13", last().keys().get("volts"));
    kind("correction");
    page.locator("#f-of").selectOption("16");
    page.locator("text=withdraw it altogether").click();
    sent(22, "correction");
  }

  @Test
  void thePageComesBackByItselfAfterTheServerHasRestarted() throws Exception {
    int port = server.address().getPort();
    String beacon = fact("beacon");
    server.close();
    assertThat(page.locator(".status")).containsText("does not answer");
    model.append(new NewEntry("note", Map.of("text", "written while away")));
    server = ConsoleServer.start(model, ConsoleSettings.of("127.0.0.1", port));
    assertThat(page.locator("[data-fact=beacon]")).not().hasText(beacon);
    assertThat(page.locator(".status")).containsText("the last is entry 16");
  }

  @Test
  void anEntryThatCannotBeSentStaysInTheForm() {
    page.keyboard().press("x");
    page.locator("#f-why").fill("storm");
    server.close();
    send();
    assertThat(page.locator("#log-problems")).containsText("the console does not answer");
    assertEquals("storm", page.locator("#f-why").inputValue());
  }

  @Test
  void aFailedRecomputationIsToldAndTheNumbersStay() {
    String beacon = fact("beacon");
    model.failNext(new IllegalStateException("no member left"));
    kind("note");
    page.locator("#f-text").fill("odd");
    send();
    assertThat(page.locator(".status")).containsText("could not be worked out");
    assertEquals(beacon, fact("beacon"));
  }

  @Test
  void everyKindHasAFormWithItsKeys() {
    for (String kind : EvidenceKinds.list()) {
      Object found =
          page.evaluate(
              "async (kind) => { const e = await import('/model/entry.js');"
                  + " const f = e.FORMS.find(f => f.kind === kind); if (!f) return 'no form';"
                  + " const place = {window: ['station', 'from', 'to', 'pass', 'at'], span: ['from', 'to', 'pass'],"
                  + " moment: ['at'], none: ['of', 'withdrawn']}[f.place];"
                  + " return [...place, ...f.fields.map(f => f.key)].join(' '); }",
              kind);
      List<String> keys = List.of(found.toString().split(" "));
      List<String> without =
          EvidenceKinds.keysOf(kind).stream()
              .filter(key -> !keys.contains(key) && !key.equals("level_sd_db"))
              .toList();
      assertEquals(List.of(), without, "keys of " + kind + " that the form leaves out");
    }
  }

  @Test
  void whatOthersReportIsWrittenDownFromTheForm() {
    kind("outside-report");
    page.locator("#f-from").fill("2026-11-14 07:41");
    page.locator("#f-to").fill("2026-11-14 07:50");
    page.locator("#f-place").fill("51.4,-0.2");
    sent(16, "outside-report");
    OutsideReport report = (OutsideReport) last().evidence();
    assertTrue(report.heard() && report.station().isEmpty());
    assertEquals(51.4, report.place().orElseThrow().latitudeDeg());
  }

  @Test
  void modulesOfTheModelGiveTheseValues() {
    Object found =
        page.evaluate(
            "async () => { const t = await import('/model/time.js'), n = await import('/model/numbers.js'),"
                + " e = await import('/model/entry.js'), l = await import('/chart/labels.js'), u = await import('/chart/sunlight.js');"
                + " const plain = s => s.replaceAll('\\u00a0', ' ');"
                + " return JSON.stringify([t.span(72 * 6e4), t.span(9 * 6e4), t.span(148 * 36e5), t.typedTime('2026-10-17 14:03'),"
                + " t.typedTime('soon'), plain(n.percent(0.0004)), plain(n.percentError(0.173, 0.011)), plain(n.percent(0.005)),"
                + " e.keysOf({kind: 'telemetry', window: '', values: {at: '2026-10-17 14:03', volts: ' 7.1 '}}, undefined),"
                + " l.place([{x: 10, width: 20, weight: 1, of: 'a'}, {x: 12, width: 20, weight: 2, of: 'b'}], 2, [0, 22]).map(p => p.of),"
                + " u.sunlit([{from: '1970-01-01T00:00:01Z', to: '1970-01-01T00:00:03Z'}], [0, 5000])]); }");
    assertEquals(
        "[\"1 h 12 m\",\"9 min\",\"6 d 4 h\",\"2026-10-17T14:03:00Z\",\"soon\",\"under 0.1 %\",\"17 ± 1 %\","
            + "\"0.5 %\",{\"at\":\"2026-10-17T14:03:00Z\",\"volts\":\"7.1\"},[\"b\"],[[0,1000],[3000,5000]]]",
        found);
  }

  private void kind(String kind) {
    page.locator(".kinds label:has(input[value=" + kind + "])").click();
  }

  private void sent(int number, String kind) {
    send();
    assertThat(page.locator(".status")).containsText("the last is entry " + number);
    assertEquals(kind, last().evidence().kind());
    assertTrue(page.locator("#log-problems").innerText().isEmpty());
  }

  private void send() {
    page.locator("button.act").click();
  }

  private String fact(String name) {
    return page.locator("[data-fact=" + name + "]").first().innerText();
  }

  private Entry last() {
    List<Entry> all = model.entries();
    return all.get(all.size() - 1);
  }
}
