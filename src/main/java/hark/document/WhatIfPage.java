package hark.document;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.EnergyReport;
import hark.assessment.WhatIf;
import java.util.List;

/** A what-if for people: the sentence, then both sides and the difference. */
public final class WhatIfPage {
  private final Page page = new Page();

  private WhatIfPage() {}

  /** Both sides of a what-if and the difference. */
  public static String of(EnergyReport report, WhatIf what) {
    WhatIfPage it = new WhatIfPage();
    EnergyPage.head(it.page, report);
    it.page.prose("", what.sentence());
    it.page.blank();
    it.page.prose("  ", what.basis() + " Bodies on both sides: " + what.simulated() + ".");
    it.page.blank();
    it.change(what);
    it.page.blank();
    it.both(report, what);
    it.page.blank();
    it.bothBalances(what);
    return it.page.toString();
  }

  private void change(WhatIf what) {
    WhatIf.Side a = what.change().before();
    WhatIf.Side b = what.change().after();
    page.line("  From now to the horizon, %");
    Columns table = new Columns("", "as it is", "what if", "difference");
    change(table, "median charge at the horizon", a.socP50AtHorizon(), b.socP50AtHorizon());
    change(table, "one in twenty is below", a.socP05AtHorizon(), b.socP05AtHorizon());
    change(table, "off", a.states().off(), b.states().off());
    change(table, "boot", a.states().boot(), b.states().boot());
    change(table, "safe", a.states().safe(), b.states().safe());
    change(table, "nominal", a.states().nominal(), b.states().nominal());
    change(table, "sends", a.transmitting(), b.transmitting());
    table.print(page);
  }

  private static void change(Columns table, String name, double a, double b) {
    table.row(name, EnergyPage.tenth(a), EnergyPage.tenth(b), signedTenth(b - a));
  }

  private void both(EnergyReport report, WhatIf what) {
    page.line("  At sunrise on board: as it is → what if, %");
    Columns table = new Columns("time", "5 %", "median", "95 %", "off", "sends");
    List<EnergyPoint> before = EnergyPage.shown(report, what.before());
    List<EnergyPoint> after = EnergyPage.shown(report, what.after());
    for (int n = 0; n < before.size(); n++) {
      EnergyPoint a = before.get(n);
      EnergyPoint b = after.get(n);
      table.row(
          EnergyPage.time(report, a.time()),
          arrow(a.socP05(), b.socP05()),
          arrow(a.socP50(), b.socP50()),
          arrow(a.socP95(), b.socP95()),
          arrow(a.states().off(), b.states().off()),
          arrow(a.transmitting(), b.transmitting()));
    }
    table.print(page);
  }

  private void bothBalances(WhatIf what) {
    if (what.balanceAfter().isEmpty()) {
      return;
    }
    page.line("  Energy of one orbit, Wh, mean over all orbits shown");
    Columns table = EnergyPage.balanceColumns("");
    table.row(EnergyPage.row("as it is", what.balanceBefore()));
    table.row(EnergyPage.row("what if", what.balanceAfter()));
    table.print(page);
  }

  private static String arrow(double a, double b) {
    return EnergyPage.whole(a) + " → " + EnergyPage.whole(b);
  }

  private static String signedTenth(double share) {
    return Words.signed(100 * share);
  }
}
