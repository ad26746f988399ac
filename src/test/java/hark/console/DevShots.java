package hark.console;

import com.microsoft.playwright.*;
import com.microsoft.playwright.options.*;
import java.nio.file.Path;
import java.util.*;

public final class DevShots {
  public static void main(String[] a) throws Exception {
    Set<String> want = new HashSet<>(List.of(a).subList(1, a.length));
    try (Playwright pw =
            Playwright.create(
                new Playwright.CreateOptions()
                    .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser b =
            pw.chromium()
                .launch(
                    new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setArgs(List.of("--no-sandbox", "--disable-gpu")))) {
      for (String w : want) {
        String[] parts = w.split("-");
        boolean phone = w.contains("phone"), full = w.contains("full"), small = w.contains("720");
        Page p =
            b.newContext(
                    new Browser.NewContextOptions()
                        .setViewportSize(phone ? 390 : 1280, phone ? 844 : small ? 720 : 900))
                .newPage();
        p.onConsoleMessage(m -> System.out.println(m.type() + ": " + m.text()));
        p.onResponse(
            r -> {
              if (r.status() >= 400) System.out.println(r.status() + " " + r.url());
            });
        p.onPageError(e -> System.out.println("ERR " + e));
        p.navigate(a[0]);
        try {
          p.waitForSelector("svg.day", new Page.WaitForSelectorOptions().setTimeout(6000));
        } catch (Exception e) {
          System.out.println("no svg");
        }
        p.evaluate("t => document.querySelector(`input[value=${t}]`)?.click()", parts[0]);
        if (w.contains("open"))
          p.evaluate(
              "() => { for (const d of [...document.querySelectorAll('.windows li details')].slice(0,1)) d.open = true; for (const d of [...document.querySelectorAll('.fits details')].slice(0,2)) d.open = true; }");
        p.waitForTimeout(200);
        if (w.contains("open")) {
          p.evaluate(
              "() => { for (const d of [...document.querySelectorAll('.procedure')].slice(0,2)) d.open = true; }");
          if (w.contains("reload")) {
            p.reload();
            p.waitForTimeout(2500);
            System.out.println(p.evaluate("document.body.innerText.slice(0,200)"));
          }
          p.waitForTimeout(900);
        }
        if (w.contains("reload")) {
          p.reload();
          p.waitForTimeout(2500);
          System.out.println(p.evaluate("document.body.innerText.slice(0,200)"));
        }
        p.waitForTimeout(900);
        p.screenshot(
            new Page.ScreenshotOptions()
                .setFullPage(full)
                .setPath(Path.of("/tmp/shots/" + w + ".png")));
        System.out.println(
            w + " scrollWidth " + p.evaluate("document.documentElement.scrollWidth"));
      }
    }
  }
}
