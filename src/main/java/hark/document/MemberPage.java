package hark.document;

import hark.assessment.MemberTrace;
import hark.assessment.WhyThere;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One member for people, and why the bus is in its state in all of them. */
public final class MemberPage {
  /** Reasons of one state that are printed; the JSON has all. */
  private static final int REASONS = 5;

  /** Explanations under this share are left out, but for the first. */
  private static final double LEAST = 0.005;

  private final Page page = new Page();

  private MemberPage() {}

  /** Why the bus is in its state. */
  public static String of(WhyThere why) {
    MemberPage it = new MemberPage();
    it.page.line("The bus at " + Words.yearAndMinute(why.time()));
    for (WhyThere.StateShare state : why.states()) {
      it.page.blank();
      it.page.line(
          "  "
              + Words.percent(state.share())
              + "  "
              + state.state()
              + " · member "
              + state.member());
      state.reasons().stream().limit(REASONS).forEach(it::reason);
    }
    return it.page.toString();
  }

  /** What stands above a member's trace. */
  public static String of(MemberTrace trace) {
    MemberPage it = new MemberPage();
    it.page.line(
        String.format(
            Locale.ROOT,
            "Member %d of %d · weight %.3g",
            trace.member(),
            trace.members(),
            trace.weight()));
    it.page.blank();
    it.page.line("  Drawn numbers");
    Columns body = new Columns("key", "value");
    trace.body().forEach((key, value) -> body.row(key, String.format(Locale.ROOT, "%.4g", value)));
    body.print(it.page);
    it.page.blank();
    it.page.line(trace.events().isEmpty() ? "  Nothing happens to it." : "  Events");
    for (MemberTrace.Event event : trace.events()) {
      it.page.prose("    ", onset(event));
    }
    it.page.blank();
    it.page.prose("  Stands for: ", shares(trace.explanations()));
    it.page.blank();
    return it.page.toString();
  }

  private static String onset(MemberTrace.Event event) {
    return Words.yearAndMinute(event.onset()) + "  " + event.title() + " (" + event.does() + ")";
  }

  /** The first, and the others as long as they would not be printed as under one in a hundred. */
  private static String shares(List<MemberTrace.Share> shares) {
    return shares.stream()
        .filter(share -> share.equals(shares.get(0)) || share.share() >= LEAST)
        .map(share -> share.title() + " " + Words.percent(share.share()))
        .collect(Collectors.joining("; "));
  }

  private void reason(WhyThere.Reason reason) {
    page.prose(
        "      ",
        Words.percent(reason.share())
            + ": "
            + reason.words()
            + " (half of them by "
            + Words.dayAndMinute(reason.typicalSince())
            + "; member "
            + reason.member()
            + "). Behind it: "
            + shares(reason.explanations())
            + ".");
  }
}
