package hark.mission;

import hark.plan.Procedure;
import hark.plan.Procedure.Change;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A procedure as a Markdown file: YAML front matter between two lines {@code ---} for the model,
 * then text for people. Pure.
 *
 * @param procedure as read
 * @param warnings of the lint: steps that do not say enough, cautions that are wanting
 */
public record ProcedureFile(Procedure procedure, List<Problem> warnings) {
  /** A longer procedure nobody reads during a pass. */
  static final int MAX_CHARACTERS = 60_000;

  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{1,60}");
  private static final Span COST_HOURS = Span.of(0, 200);
  private static final List<String> NEEDS =
      List.of("receiver", "transmitter", "licence", "rotator", "outside_station", "lithium_cells");

  /**
   * Reads a procedure.
   *
   * @throws hark.problem.BadInput with every problem of the file
   */
  public static Procedure read(String fileName, String markdown) {
    Problems problems = new Problems();
    Optional<ProcedureFile> file = check(fileName, markdown, problems);
    problems.throwIfAny();
    return file.orElseThrow().procedure();
  }

  /** Reads a procedure; empty when anything was added to {@code problems}. */
  static Optional<ProcedureFile> check(String fileName, String markdown, Problems problems) {
    int before = problems.count();
    Optional<FrontMatter> parts = FrontMatter.split(fileName, markdown, problems);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    YamlTree tree = YamlParser.parse(fileName, 2, parts.get().yaml(), problems);
    if (tree.isNothing()) {
      return Optional.empty();
    }
    Procedure procedure = procedure(YamlMap.of(tree, problems), parts.get().body(), problems);
    if (procedure.markdown().isBlank()) {
      problems.add(tree, "there is no text for people under the front matter", "write the steps");
    }
    if (problems.count() > before) {
      return Optional.empty();
    }
    List<Problem> warnings =
        new ArrayList<>(CautionLint.check(procedure, tree.find("cautions").orElse(tree).where()));
    warnings.addAll(
        StepLint.check(fileName, parts.get().bodyLine(), procedure.markdown(), procedure.kind()));
    return Optional.of(new ProcedureFile(procedure, List.copyOf(warnings)));
  }

  private static Procedure procedure(YamlMap map, String body, Problems problems) {
    String id = YamlValues.text(map.require("id"), problems).orElse("");
    if (!id.isEmpty() && !ID.matcher(id).matches()) {
      problems.add(
          map.get("id"),
          "found '" + id + "', expected lower-case letters, digits and hyphens",
          "write it like blind-reset");
    }
    String title = YamlValues.text(map.require("title"), problems).orElse("");
    Optional<Procedure.Kind> kind =
        YamlValues.choice(map.require("kind"), Procedure.Kind.class, problems);
    List<String> needs = needs(map.get("needs"), problems);
    Change change =
        kind.map(k -> ProcedureChange.read(map.get("changes"), k, problems))
            .orElse(new Procedure.Wait());
    map.get("changes"); // known even when the kind is not
    OptionalDouble cost = YamlValues.number(map.get("cost_hours"), COST_HOURS, problems);
    List<String> cautions = YamlValues.texts(map.get("cautions"), problems);
    List<String> forbidden = YamlValues.texts(map.get("forbidden_if"), problems);
    map.finish();
    if (kind.filter(k -> k == Procedure.Kind.COMMAND).isPresent()) {
      requireCare(map, needs, cautions, problems);
    } else if (needs.contains("transmitter") && !needs.contains("licence")) {
      problems.add(
          map.get("needs"), "whoever needs 'transmitter' must need 'licence'", "add it to needs");
    }
    return new Procedure(
        id,
        title,
        kind.orElse(Procedure.Kind.WAIT),
        needs,
        change,
        cost.orElse(0),
        cautions,
        forbidden,
        body);
  }

  private static List<String> needs(YamlTree node, Problems problems) {
    List<String> needs = new ArrayList<>();
    for (String need : YamlValues.texts(node, problems)) {
      if (!NEEDS.contains(need)) {
        problems.add(node, "nothing is called '" + need + "'", NearestWord.advice(need, NEEDS));
      }
      needs.add(need);
    }
    return needs;
  }

  /** Whoever sends must be told what to heed, and must be allowed to. */
  private static void requireCare(
      YamlMap map, List<String> needs, List<String> cautions, Problems problems) {
    if (cautions.isEmpty()) {
      problems.add(
          map.get("cautions"),
          "a command procedure without cautions",
          "name at least who may authorise it and how the transmitter is silenced");
    }
    for (String must : List.of("transmitter", "licence")) {
      if (!needs.contains(must)) {
        problems.add(
            map.get("needs"), "a command procedure must need '" + must + "'", "add it to needs");
      }
    }
  }
}
