package hark.trial.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What campaigns under several rules say.
 *
 * @param drawn truths drawn for all campaigns
 * @param none share of campaigns that no rule regains
 * @param noneOracle share that even the oracle does not regain
 * @param rules one for each rule, the oracle last
 * @param against the first rule against each of the others
 */
public record FollowReport(
    Subject subject,
    int campaigns,
    long drawn,
    Paired none,
    Paired noneOracle,
    List<Row> rules,
    List<Versus> against) {
  /** The rule that knows the truth. */
  public static final String ORACLE = "oracle";

  /** What was followed. */
  public record Subject(
      String mission,
      double days,
      long seed,
      String truth,
      double hoursPerWeek,
      List<String> orbits,
      List<String> rules,
      List<String> without) {}

  /**
   * Means of one rule over all campaigns, those never regained with their whole length.
   *
   * @param medianDays to the first reception
   */
  public record Row(
      String rule,
      Paired regained,
      Paired days,
      double medianDays,
      Paired hours,
      Paired nights,
      Paired sittings,
      Paired commands,
      Paired received,
      Paired harmed,
      Paired helped) {}

  /**
   * One rule against another in the same campaigns.
   *
   * @param moreRegained share regained less the other's
   * @param hours over the other's
   * @param moreDays less the other's
   */
  public record Versus(
      String rule, String other, Paired moreRegained, Paired hours, Paired moreDays) {}

  /** Makes the report. */
  public static FollowReport of(Subject subject, List<Followed> all) {
    List<String> names = new ArrayList<>(subject.rules());
    names.add(ORACLE);
    List<Row> rows = names.stream().map(rule -> row(all, rule)).toList();
    List<Versus> against = new ArrayList<>();
    for (String other : names.subList(1, names.size())) {
      against.add(versus(all, names.get(0), other));
    }
    return new FollowReport(
        subject,
        all.size(),
        all.stream().mapToLong(Followed::drawn).sum(),
        Paired.mean(all, f -> f.runs().stream().noneMatch(RuleRun::regained) ? 1 : 0),
        Paired.mean(all, f -> f.of(ORACLE).regained() ? 0 : 1),
        rows,
        List.copyOf(against));
  }

  private static Row row(List<Followed> all, String rule) {
    double[] days = all.stream().mapToDouble(f -> f.of(rule).days()).sorted().toArray();
    return new Row(
        rule,
        mean(all, rule, run -> run.regained() ? 1 : 0),
        mean(all, rule, RuleRun::days),
        days.length == 0
            ? Double.NaN
            : Arrays.stream(days).skip(days.length / 2).findFirst().orElse(0),
        mean(all, rule, RuleRun::hours),
        mean(all, rule, RuleRun::nights),
        mean(all, rule, RuleRun::sittings),
        mean(all, rule, RuleRun::commands),
        mean(all, rule, RuleRun::received),
        mean(all, rule, run -> run.harmed() ? 1 : 0),
        mean(all, rule, run -> run.helped() ? 1 : 0));
  }

  private static Paired mean(List<Followed> all, String rule, ToDoubleFunction<RuleRun> number) {
    return Paired.mean(all, f -> number.applyAsDouble(f.of(rule)));
  }

  private static Versus versus(List<Followed> all, String rule, String other) {
    return new Versus(
        rule,
        other,
        Paired.mean(all, f -> share(f, rule) - share(f, other)),
        Paired.ratio(all, f -> f.of(rule).hours(), f -> f.of(other).hours()),
        Paired.mean(all, f -> f.of(rule).days() - f.of(other).days()));
  }

  private static double share(Followed followed, String rule) {
    return followed.of(rule).regained() ? 1 : 0;
  }
}
