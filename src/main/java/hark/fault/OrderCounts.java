package hark.fault;

import java.util.SortedMap;
import java.util.TreeMap;

/** How many sets of each order, from the lowest order that has any. */
final class OrderCounts {
  static final OrderCounts NONE = new OrderCounts(0, new long[0]);
  static final OrderCounts EMPTY_SET = new OrderCounts(0, new long[] {1});

  private final int lowest;
  private final long[] counts;

  private OrderCounts(int lowest, long[] counts) {
    this.lowest = lowest;
    this.counts = counts;
  }

  /** These together with the others, each of those made larger by one variable. */
  OrderCounts plusOneHigher(OrderCounts others) {
    OrderCounts higher = new OrderCounts(others.lowest + 1, others.counts);
    if (counts.length == 0) {
      return higher;
    }
    int first = Math.min(lowest, higher.lowest);
    int end = Math.max(lowest + counts.length, higher.lowest + higher.counts.length);
    long[] sum = new long[end - first];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = saturatedSum(of(first + i), higher.of(first + i));
    }
    return new OrderCounts(first, sum);
  }

  SortedMap<Integer, Long> byOrder() {
    SortedMap<Integer, Long> all = new TreeMap<>();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        all.put(lowest + i, counts[i]);
      }
    }
    return all;
  }

  /** Counts beyond {@code long} stay at its largest value. */
  static long saturatedSum(long a, long b) {
    long sum = a + b;
    return sum < 0 ? Long.MAX_VALUE : sum;
  }

  private long of(int order) {
    int at = order - lowest;
    return at < 0 || at >= counts.length ? 0 : counts[at];
  }
}
