package hark.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts commands into a plan, one after the other, each valued given the ones before: of every
 * command the window that does best by itself is tried in full, and the best of those is taken
 * while it adds enough and stays within the hazard.
 */
final class CommandChoice {
  /**
   * A command enters the plan only when it adds this much to the chance of hearing by the horizon.
   * Judged.
   */
  private static final double MUST_ADD = 0.01;

  /** …and this many of its Monte-Carlo errors: nobody transmits on noise. */
  private static final double SURE_ERRORS = 2;

  /** Commands tried in full for each one that is taken. */
  private static final int MOST_TRIED = 3;

  private final PlanProblem problem;
  private final Effort effort;
  private final Search search;
  private final double hazardLimit;
  private final Map<PlanProblem.Sent, Candidate> candidates = new HashMap<>();

  /**
   * A command by itself.
   *
   * @param kind what is sent: of each kind the best window is tried
   * @param adds to the chance of hearing by the horizon, with the plan's listening or the widest
   *     ear everywhere, whichever is more
   * @param error Monte-Carlo standard error of it
   * @param early what it adds to the weight found early
   */
  record Candidate(
      PlanProblem.Sent sent, Object kind, double adds, double error, double early, double hazard) {}

  CommandChoice(
      PlanProblem problem, Search search, List<Candidate> candidates, double hazardLimit) {
    this.problem = problem;
    this.effort = problem.effort();
    this.search = search;
    this.hazardLimit = hazardLimit;
    candidates.forEach(each -> this.candidates.put(each.sent(), each));
  }

  /** The choice with commands, listening arranged anew around each. */
  int[] with(int[] listening) {
    int[] choice = listening.clone();
    for (int taken = 0; taken < problem.limits().mostCommands(); taken++) {
      int[] better = oneMore(choice);
      if (better == null) {
        return choice;
      }
      choice = better;
    }
    return choice;
  }

  private int[] oneMore(int[] choice) {
    double before = problem.objective(choice);
    Worth now = problem.worth(choice, PlanProblem.CHOOSE);
    int[] best = null;
    double most = before;
    for (Candidate candidate : tried(choice)) {
      int[] with = placed(choice, candidate.sent());
      if (with == null) {
        continue;
      }
      Worth then = problem.worth(with, PlanProblem.CHOOSE);
      if (then.found() - now.found() <= MUST_ADD) {
        // what a command wakes may be heard only in windows that were not worth a sitting before
        search.extend(with);
        then = problem.worth(with, PlanProblem.CHOOSE);
      }
      double objective = then.early() - problem.price() * effort.hours(with);
      if (then.found() - now.found() > MUST_ADD && objective > most) {
        most = objective;
        best = with;
      }
    }
    return best == null ? null : search.rearranged(best);
  }

  /** Of each kind the best windows that may be sent in. */
  private List<Candidate> tried(int[] choice) {
    double hazard = hazard(choice);
    Map<Object, Candidate> byKind = new HashMap<>();
    for (Candidate each : candidates.values()) {
      boolean sure = each.adds() > MUST_ADD && each.adds() > SURE_ERRORS * each.error();
      boolean harmless = each.hazard() <= hazardLimit && hazard + each.hazard() <= hazardLimit;
      if (sure && harmless && mayCome(choice, each.sent())) {
        byKind.merge(each.kind(), each, (a, b) -> later(a, b) ? b : a);
      }
    }
    List<Candidate> tried = new ArrayList<>(byKind.values());
    tried.sort(
        Comparator.comparingDouble(Candidate::early)
            .reversed()
            .thenComparingInt(each -> each.sent().window())
            .thenComparingInt(each -> each.sent().move()));
    return tried.subList(0, Math.min(MOST_TRIED, tried.size()));
  }

  /** True when the second adds more early; of equals the earlier window stays. */
  private static boolean later(Candidate a, Candidate b) {
    return b.early() > a.early()
        || (b.early() == a.early() && b.sent().window() < a.sent().window());
  }

  private boolean mayCome(int[] choice, PlanProblem.Sent sent) {
    int[] with = choice.clone();
    with[sent.window()] = sent.move();
    return problem.sent(with).size() > problem.sent(choice).size()
        && effort.keepsGaps(with, problem.limits());
  }

  /** With the command in its window; listening is given up where hours do not suffice. */
  private int[] placed(int[] choice, PlanProblem.Sent sent) {
    int[] with = choice.clone();
    with[sent.window()] = sent.move();
    return search.fitted(with);
  }

  /** Chance that commands of a choice spoil something: their sum, which is never too small. */
  double hazard(int[] choice) {
    return problem.sent(choice).stream()
        .map(candidates::get)
        .mapToDouble(each -> each == null ? 0 : each.hazard())
        .sum();
  }
}
