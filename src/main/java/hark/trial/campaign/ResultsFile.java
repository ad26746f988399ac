package hark.trial.campaign;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.problem.BadInput;
import hark.trial.score.Indexed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.TreeMap;

/**
 * Outcomes on disk: first a line that says what trial this is, then one line of JSON for each
 * campaign in the order they were done. A line that a crash tore is dropped when the file is opened
 * again.
 */
public final class ResultsFile<T extends Indexed> implements AutoCloseable {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  private final FileChannel channel;
  private final Class<T> type;
  private final Map<Integer, T> known = new TreeMap<>();

  private ResultsFile(FileChannel channel, Class<T> type) {
    this.channel = channel;
    this.type = type;
  }

  /**
   * Begins a file or goes on with one.
   *
   * @param type of the results
   * @param head one line that two trials share only if their outcomes belong together
   * @throws BadInput when the file holds another trial, or is there and was not to be continued
   */
  public static <T extends Indexed> ResultsFile<T> open(
      Path path, Class<T> type, String head, boolean resume) {
    try {
      boolean there = Files.exists(path) && Files.size(path) > 0;
      if (there && !resume) {
        throw BadInput.of(
            "the results file is there already",
            path.toString(),
            "continue it with --resume, or name another file");
      }
      ResultsFile<T> file =
          new ResultsFile<>(
              FileChannel.open(
                  path,
                  StandardOpenOption.CREATE,
                  StandardOpenOption.READ,
                  StandardOpenOption.WRITE),
              type);
      if (there) {
        file.read(path, head);
      } else {
        file.append(head);
      }
      return file;
    } catch (IOException e) {
      throw BadInput.of(
          "the results file cannot be used: " + e.getMessage(),
          path.toString(),
          "name a file in a folder that can be written");
    }
  }

  private void read(Path path, String head) throws IOException {
    String text = Files.readString(path);
    int whole = text.lastIndexOf('\n') + 1;
    String[] lines = text.substring(0, whole).split("\n", -1);
    if (!lines[0].equals(head)) {
      throw BadInput.of(
          "the results file belongs to another trial: " + lines[0],
          path.toString(),
          "give the mission, days, seed, world and members it was begun with: " + head);
    }
    for (int k = 1; k < lines.length - 1; k++) {
      try {
        T outcome = MAPPER.readValue(lines[k], type);
        known.put(outcome.index(), outcome);
      } catch (JsonProcessingException e) {
        throw BadInput.of(
            "this line is no outcome of a campaign",
            path + ":" + (k + 1),
            "delete the line; its campaign is then done again");
      }
    }
    long length = text.substring(0, whole).getBytes(StandardCharsets.UTF_8).length;
    channel.truncate(length);
    channel.position(length);
  }

  /** Outcomes that are there, by campaign. */
  public Map<Integer, T> known() {
    return known;
  }

  /** Writes one more; whole lines only, whatever happens afterwards. */
  public void add(T outcome) {
    try {
      append(MAPPER.writeValueAsString(outcome));
    } catch (IOException e) {
      throw new UncheckedIOException("the results file cannot be written", e);
    }
  }

  private synchronized void append(String line) throws IOException {
    java.nio.ByteBuffer bytes =
        java.nio.ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException("the results file cannot be closed", e);
    }
  }
}
