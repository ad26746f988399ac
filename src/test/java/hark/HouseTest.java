package hark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Where things lie: the top level, the rooms' own words, the decision records. */
class HouseTest {
  private static final Path TOP = Path.of("").toAbsolutePath();
  private static final Path ROOMS = TOP.resolve("src/main/java/hark");
  private static final Path DECISIONS = TOP.resolve("src/docs/decisions");
  private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:|#)([^)#]+)(#[^)]*)?\\)");

  @Test
  void theTopLevelHoldsWhatItShouldAndNoMore() throws IOException {
    Set<String> wanted =
        new TreeSet<>(
            List.of(
                "DEVELOPERS.md",
                "LICENSE",
                "README.md",
                "pom.xml",
                "runbooks",
                "src",
                "tle-samples",
                "web"));
    Set<String> found =
        list(TOP).stream()
            .map(path -> path.getFileName().toString())
            .filter(name -> !name.startsWith(".") && !name.equals("target"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(wanted, found);
  }

  @Test
  void everyRoomSaysWhatItIs() throws IOException {
    List<String> silent = new ArrayList<>();
    for (Path room : list(ROOMS)) {
      if (Files.isDirectory(room) && !Files.exists(room.resolve("package-info.java"))) {
        silent.add(room.getFileName().toString());
      }
    }
    assertEquals(List.of(), silent, "rooms without package-info.java");
  }

  @Test
  void decisionsAreNumberedWithoutGapsAndTheIndexNamesThemAll() throws IOException {
    String index = Files.readString(TOP.resolve("DEVELOPERS.md"));
    List<Path> records = list(DECISIONS);
    assertTrue(records.size() >= 6, "decision records: " + records.size());
    for (int i = 0; i < records.size(); i++) {
      String name = records.get(i).getFileName().toString();
      assertEquals(String.format("%04d", i + 1), name.substring(0, 4));
      assertTrue(index.contains("src/docs/decisions/" + name), "not in DEVELOPERS.md: " + name);
    }
  }

  @Test
  void linksBetweenDocumentsLeadSomewhere() throws IOException {
    List<String> broken = new ArrayList<>();
    for (String name : List.of("README.md", "DEVELOPERS.md")) {
      Matcher link = LINK.matcher(Files.readString(TOP.resolve(name)));
      while (link.find()) {
        if (!Files.exists(TOP.resolve(link.group(1)))) {
          broken.add(name + ": " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), broken);
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.sorted().toList();
    }
  }
}
