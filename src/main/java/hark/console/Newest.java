package hark.console;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Works out one answer at a time, since each takes the whole machine; of the questions that wait,
 * only the newest of each asker is still worth an answer.
 */
final class Newest {
  /** Askers remembered; beyond it all are forgotten, and none of those who wait is overtaken. */
  private static final int MOST_ASKERS = 1000;

  private final ReentrantLock one = new ReentrantLock(true);
  private final AtomicLong count = new AtomicLong();
  private final Map<String, Long> newest = new ConcurrentHashMap<>();

  /**
   * @param asker who asks; empty for somebody who never overtakes
   * @return empty when the same asker has asked again before this one's turn came
   */
  <T> Optional<T> answer(String asker, Supplier<T> question) {
    long mine = count.incrementAndGet();
    if (!asker.isEmpty()) {
      if (newest.size() >= MOST_ASKERS) {
        newest.clear();
      }
      newest.merge(asker, mine, Math::max);
    }
    one.lock();
    try {
      boolean overtaken = !asker.isEmpty() && newest.getOrDefault(asker, mine) > mine;
      return overtaken ? Optional.empty() : Optional.of(question.get());
    } finally {
      one.unlock();
    }
  }
}
