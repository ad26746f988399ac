package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.ProcedureView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cautions and prohibitions of the procedures that the plan uses, each said once. */
final class Cautions {
  private Cautions() {}

  /** {@code Moving antennas start without warning. (listen wide, blind reset)}. */
  static List<String> planned(Assessment assessment) {
    Map<String, List<String>> procedures = new LinkedHashMap<>();
    for (ProcedureView procedure : assessment.procedures()) {
      if (isPlanned(assessment, procedure)) {
        String title = Words.brief(procedure.title());
        procedure.cautions().forEach(c -> add(procedures, c, title));
        procedure.forbiddenIf().forEach(c -> add(procedures, "Forbidden if: " + c, title));
      }
    }
    List<String> lines = new ArrayList<>();
    procedures.forEach(
        (text, titles) -> lines.add(text.strip() + " (" + String.join(", ", titles) + ")"));
    return lines;
  }

  private static boolean isPlanned(Assessment assessment, ProcedureView procedure) {
    return assessment.windows().stream()
        .anyMatch(w -> w.planned().filter(procedure.id()::equals).isPresent());
  }

  private static void add(Map<String, List<String>> procedures, String text, String title) {
    procedures.computeIfAbsent(text, t -> new ArrayList<>()).add(title);
  }
}
