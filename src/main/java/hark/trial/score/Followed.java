package hark.trial.score;

import java.util.List;

/**
 * One campaign under every rule. Written as one line of the results file.
 *
 * @param orbit index of the geometry
 * @param drawn truths drawn until one was heard and fell silent
 * @param startDays from separation to the silence that was noticed
 * @param causes that had begun by then
 * @param runs one for each rule, the oracle last
 */
public record Followed(
    int index, int orbit, int drawn, double startDays, List<String> causes, List<RuleRun> runs)
    implements Indexed {
  /** The run of a rule. */
  public RuleRun of(String rule) {
    return runs.stream().filter(run -> run.rule().equals(rule)).findFirst().orElseThrow();
  }
}
