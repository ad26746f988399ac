package hark.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A planning question in bare numbers: windows and what they cost, what can be done in each, what
 * every possibility lets it hear, and the limits. Nothing of satellites is left in it, so that
 * textbook cases can be asked too.
 *
 * @param halves rows to choose on and rows to value on
 * @param commands what commands change
 * @param noSlip chance that a sitting does not fail unnoticed, 0…1
 * @param earlyDays a reception this much later is worth 1/e, d; infinite: only whether counts
 * @param price early-found weight that an hour of people's time must bring, 1/h
 */
record PlanProblem(
    Timetable time,
    List<List<Move>> moves,
    Limits limits,
    List<Rows> halves,
    CommandRows commands,
    double noSlip,
    double earlyDays,
    double price) {
  /** The half a plan is chosen on. */
  static final int CHOOSE = 0;

  /** The half that says what it is worth. */
  static final int VALUE = 1;

  /** A station found not to work is mended by the next day, d. Judged. */
  private static final double MENDED_AFTER_DAYS = 1;

  /** A command that is sent: in this window by this move. */
  record Sent(int window, int move) {}

  /** What commands change. */
  interface CommandRows {
    /** Nothing is ever sent. */
    CommandRows NONE = (sent, half) -> new Rows(new double[0], new double[0][], (w, m) -> null);

    /**
     * Rows to be added to those without any command, so that the sum is what the commands make of
     * it.
     *
     * @param sent in the order of time, never empty
     */
    Rows of(List<Sent> sent, int half);
  }

  /** The same with other limits. */
  PlanProblem within(Limits other) {
    return new PlanProblem(time, moves, other, halves, commands, noSlip, earlyDays, price);
  }

  Effort effort() {
    return new Effort(time, moves);
  }

  /** A choice that does nothing anywhere. */
  int[] nothing() {
    int[] choice = new int[time.count()];
    Arrays.fill(choice, -1);
    return choice;
  }

  /** Commands in a choice, in the order of time. */
  List<Sent> sent(int[] choice) {
    List<Sent> sent = new ArrayList<>();
    for (int w = 0; w < choice.length; w++) {
      if (choice[w] >= 0 && moves.get(w).get(choice[w]).sends()) {
        sent.add(new Sent(w, choice[w]));
      }
    }
    return sent;
  }

  /** What a choice is worth on one half. */
  Worth worth(int[] choice, int half) {
    Walk walk = new Walk(choice);
    walk.add(halves.get(half));
    List<Sent> sent = sent(choice);
    if (!sent.isEmpty()) {
      walk.add(commands.of(sent, half));
    }
    return new Worth(walk.found, walk.early, walk.days);
  }

  /** The mean of both halves, for what nothing was chosen by. */
  Worth worth(int[] choice) {
    Worth a = worth(choice, CHOOSE);
    Worth b = worth(choice, VALUE);
    return new Worth(
        (a.found() + b.found()) / 2, (a.early() + b.early()) / 2, (a.days() + b.days()) / 2);
  }

  /** Early-found weight less the price of the hours it takes, on the half to choose on. */
  double objective(int[] choice) {
    return worth(choice, CHOOSE).early() - price * effort().hours(choice);
  }

  /** Discount of a reception in a window. */
  double discount(int window) {
    return Math.exp(-Math.max(0, time.beginDays()[window]) / earlyDays);
  }

  /** Chance that nothing is heard by the horizon, by place of a half's rows. */
  double[] missed(int[] choice, int half, int length) {
    Walk walk = new Walk(choice);
    walk.missedAt = new double[length];
    walk.add(halves.get(half));
    return walk.missedAt;
  }

  /** Goes through the windows of a choice, one possibility after the other. */
  private final class Walk {
    private final int[] taken;
    private final int[] move;
    private final double[] gone;
    private final int stations = time.stations();
    private final double[] mendFrom = new double[stations];
    private final double[] mends = new double[stations];
    private final Map<Procedure.Question, Integer> settledBy =
        new EnumMap<>(Procedure.Question.class);
    private final double[] missedBy = new double[stations];
    private final double[] missedSince = new double[stations];
    private final double[] missedAtAll = new double[stations];
    private double found;
    private double early;
    private double days;
    private double[] missedAt;

    Walk(int[] choice) {
      int count = 0;
      int[] windows = new int[choice.length];
      Arrays.fill(mendFrom, Double.POSITIVE_INFINITY);
      for (int w = 0; w < choice.length; w++) {
        Move does = choice[w] < 0 ? null : moves.get(w).get(choice[w]);
        if (does == null || does.kind() == Move.Kind.STAY) {
          continue;
        }
        windows[count++] = w;
        if (does.settles().isPresent()) {
          settledBy.putIfAbsent(does.settles().get(), w);
        }
        int station = time.station()[w];
        if (does.mends() > 0 && mends[station] == 0) {
          mends[station] = does.mends();
          mendFrom[station] = time.endDays()[w] + MENDED_AFTER_DAYS;
        }
      }
      taken = Arrays.copyOf(windows, count);
      move = new int[count];
      gone = new double[count];
      for (int k = 0; k < count; k++) {
        move[k] = choice[taken[k]];
        gone[k] = discount(taken[k]);
      }
    }

    void add(Rows rows) {
      float[][] heard = new float[taken.length][];
      for (int k = 0; k < taken.length; k++) {
        heard[k] = settled(rows, rows.heard(taken[k], move[k]), taken[k]);
      }
      for (int r = 0; r < rows.count(); r++) {
        one(rows, r, heard);
      }
    }

    private float[] settled(Rows rows, float[] heard, int window) {
      float[] now = heard;
      for (Map.Entry<Procedure.Question, Integer> settled : settledBy.entrySet()) {
        boolean known = settled.getValue() < window && heard != null;
        float[] more = known ? rows.better(settled.getKey(), window) : null;
        if (more != null) {
          now = now == heard ? heard.clone() : now;
          for (int r = 0; r < now.length; r++) {
            now[r] = Math.min(1, now[r] + more[r]);
          }
        }
      }
      return now;
    }

    private void one(Rows rows, int row, float[][] heard) {
      Arrays.fill(missedBy, 1);
      Arrays.fill(missedSince, 1);
      Arrays.fill(missedAtAll, 1);
      double[] works = rows.works(row);
      int place = rows.place(row);
      double missed = 1;
      double foundEarly = 0;
      double waited = 0;
      double at = 0;
      for (int k = 0; k < taken.length; k++) {
        float chance = heard[k] == null ? 0 : heard[k][place];
        if (chance <= 0) {
          continue;
        }
        double before = missed;
        missed = listen(taken[k], noSlip * chance, works);
        foundEarly += (before - missed) * gone[k];
        double end = Math.max(at, time.endDays()[taken[k]]); // windows of stations overlap
        waited += before * (end - at);
        at = end;
      }
      waited += missed * Math.max(0, time.horizonDays() - at);
      double weight = rows.weight(row);
      found += weight * (1 - missed);
      early += weight * foundEarly;
      days += weight * waited;
      if (missedAt != null) {
        missedAt[place] = missed;
      }
    }

    /**
     * A station that does not work is deaf in all its windows, or until it is mended: misses
     * multiply within a station, and only then its health enters.
     */
    private double listen(int window, double chance, double[] works) {
      int station = time.station()[window];
      missedBy[station] *= 1 - chance;
      if (time.beginDays()[window] >= mendFrom[station]) {
        missedSince[station] *= 1 - chance;
      }
      double well = works[station];
      missedAtAll[station] =
          1
              - well * (1 - missedBy[station])
              - (1 - well) * mends[station] * (1 - missedSince[station]);
      double missed = 1;
      for (double each : missedAtAll) {
        missed *= each;
      }
      return missed;
    }
  }
}
