package hark.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.cli.TableWriter.Column;
import hark.evidence.Entry;
import hark.journal.Journal;
import hark.problem.BadInput;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark journal MISSION}: shows and checks the record. */
@Command(
    name = "journal",
    description = {
      "Show or check the journal.",
      "  list    every entry as written, corrections among them",
      "  verify  recompute the chain of hashes: finds changed and missing entries,",
      "          not a cut tail",
      "  head    last number and its hash; keep it elsewhere, so that a cut tail",
      "          can be noticed",
      "export, import and backup come later and are refused by name."
    },
    mixinStandardHelpOptions = true)
final class JournalCommand implements Callable<Integer> {
  private static final List<String> ACTIONS = List.of("list", "verify", "head");
  private static final Set<String> LATER = Set.of("export", "import", "backup");
  private static final TableWriter ENTRIES =
      new TableWriter(
          "entries",
          List.of(
              Column.text("number"),
              Column.text("at"),
              Column.text("kind"),
              Column.text("keys"),
              Column.text("who"),
              Column.text("note"),
              Column.text("recordedAt")));
  private static final TableWriter HEAD =
      new TableWriter("head", List.of(Column.text("number"), Column.text("hash")));

  @Spec private CommandSpec spec;
  @Mixin private FormatOption format;

  @Parameters(index = "0", paramLabel = "MISSION", description = "The mission folder.")
  private Path folder;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "list|verify|head",
      defaultValue = "list",
      description = "What to do (default: ${DEFAULT-VALUE}).")
  private String action;

  @Override
  public Integer call() {
    if (LATER.contains(action)) {
      throw BadInput.of(
          "journal " + action + " comes in a later edition",
          "argument",
          "copy the whole mission folder while nothing is writing to it");
    }
    if (!ACTIONS.contains(action)) {
      throw BadInput.of(
          "'" + action + "' is nothing a journal can do",
          "argument",
          NearestWord.advice(action, ACTIONS));
    }
    if (!Files.isDirectory(folder)) {
      throw BadInput.of("there is no such folder", folder.toString(), "name the mission folder");
    }
    Path path = MissionRecord.journal(folder);
    PrintWriter out = spec.commandLine().getOut();
    switch (action) {
      case "verify" -> verify(path, out);
      case "head" -> head(path, out);
      default -> list(Journal.read(path), out);
    }
    out.flush();
    return ExitCode.DONE;
  }

  private void list(List<Entry> entries, PrintWriter out) {
    if (format.format() == OutputFormat.JSON) {
      ObjectNode document = JsonNodeFactory.instance.objectNode();
      entries.forEach(entry -> write(document.withArray("/entries").addObject(), entry));
      out.println(document.withArray("/entries").isEmpty() ? "{\"entries\":[]}" : document);
      return;
    }
    ENTRIES.write(format.format(), entries.stream().map(JournalCommand::row).toList(), out);
  }

  private static void write(ObjectNode node, Entry entry) {
    node.put("number", entry.number())
        .put("at", UtcTime.print(entry.evidence().at()))
        .put("kind", entry.evidence().kind());
    ObjectNode keys = node.putObject("keys");
    new TreeMap<>(entry.keys()).forEach(keys::put);
    node.put("who", entry.who())
        .put("note", entry.note())
        .put("recordedAt", UtcTime.print(entry.recordedAt()));
  }

  private static Object[] row(Entry entry) {
    String keys =
        new TreeMap<>(entry.keys())
            .entrySet().stream()
                .map(key -> key.getKey() + "=" + quoted(key.getValue()))
                .collect(Collectors.joining(" "));
    return new Object[] {
      entry.number(),
      entry.evidence().at(),
      entry.evidence().kind(),
      keys,
      oneLine(entry.who()),
      oneLine(entry.note()),
      entry.recordedAt()
    };
  }

  private static String quoted(String value) {
    String line = oneLine(value);
    return line.contains(" ") || line.isEmpty() ? '"' + line.replace("\"", "\\\"") + '"' : line;
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private void head(Path path, PrintWriter out) {
    try (Journal journal = Journal.openExisting(path)) {
      Journal.Head head = journal.head();
      HEAD.write(
          format.format(), List.<Object[]>of(new Object[] {head.number(), head.hash()}), out);
    }
  }

  private void verify(Path path, PrintWriter out) {
    Journal.Verification found;
    try (Journal journal = Journal.openExisting(path)) {
      found = journal.verify();
    }
    if (format.format() == OutputFormat.JSON) {
      out.println(json(found));
    } else if (found.fault().isEmpty()) {
      out.println("entries: " + found.entries() + "; the chain holds; head " + found.head().hash());
    }
    out.flush();
    found.fault().ifPresent(JournalCommand::fail);
  }

  private static void fail(Problem fault) {
    throw new BadInput(List.of(fault));
  }

  private static ObjectNode json(Journal.Verification found) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("entries", found.entries());
    node.putObject("head").put("number", found.head().number()).put("hash", found.head().hash());
    node.put("fault", found.fault().map(Problem::what).orElse(null));
    return node;
  }
}
