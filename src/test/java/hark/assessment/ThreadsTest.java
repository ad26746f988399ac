package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ThreadsTest {
  @Test
  void whoIsInterruptedWhileComputingLeavesNoWorkBehind() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicInteger done = new AtomicInteger();
    int endless = 1_000_000;
    Thread caller =
        new Thread(
            () ->
                assertThrows(
                    IllegalStateException.class,
                    () ->
                        Threads.with(
                            2,
                            workers -> {
                              workers.each(
                                  endless,
                                  index -> {
                                    begun.countDown();
                                    done.incrementAndGet();
                                    pause();
                                  });
                              return 0;
                            })));
    caller.start();
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    caller.interrupt();
    caller.join(10_000);
    Thread.sleep(100);
    int then = done.get();
    Thread.sleep(200);
    assertTrue(done.get() == then, "work went on: " + then + " to " + done.get());
  }

  /** A piece of work that takes no notice of anything. */
  private static void pause() {
    long end = System.nanoTime() + 1_000_000;
    while (System.nanoTime() < end) {
      Thread.onSpinWait();
    }
  }
}
