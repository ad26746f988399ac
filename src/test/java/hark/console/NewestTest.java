package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class NewestTest {
  private final Newest newest = new Newest();
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch end = new CountDownLatch(1);

  @Test
  void aWaitingQuestionIsOvertakenByANewerOneOfTheSamePage() throws Exception {
    assertEquals(List.of(Optional.of(0), Optional.empty(), Optional.of(2)), asked("a", "a", "a"));
  }

  @Test
  void anotherPagesQuestionIsNotOvertaken() throws Exception {
    List<Optional<Integer>> all = List.of(Optional.of(0), Optional.of(1), Optional.of(2));
    assertEquals(all, asked("a", "b", "c"));
  }

  @Test
  void whoGivesNoNameIsNeverOvertaken() throws Exception {
    List<Optional<Integer>> all = List.of(Optional.of(0), Optional.of(1), Optional.of(2));
    assertEquals(all, asked("", "", ""));
  }

  /** The first question is being answered while the others come, one after the other. */
  private List<Optional<Integer>> asked(String... askers) throws Exception {
    List<CompletableFuture<Optional<Integer>>> answers = new ArrayList<>();
    for (int i = 0; i < askers.length; i++) {
      int number = i;
      Thread[] thread = new Thread[1];
      CompletableFuture<Optional<Integer>> answer = new CompletableFuture<>();
      thread[0] =
          new Thread(() -> answer.complete(newest.answer(askers[number], () -> slowly(number))));
      thread[0].start();
      answers.add(answer);
      if (i == 0) {
        begun.await();
      } else {
        EventReader.await(() -> thread[0].getState() == Thread.State.WAITING);
      }
    }
    end.countDown();
    List<Optional<Integer>> all = new ArrayList<>();
    for (CompletableFuture<Optional<Integer>> answer : answers) {
      all.add(answer.get());
    }
    return all;
  }

  private int slowly(int number) {
    begun.countDown();
    try {
      end.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return number;
  }
}
