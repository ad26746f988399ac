package hark.mission;

import hark.plan.Procedure;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * Looks whether every numbered step under the heading <em>Steps</em> says what to expect, until
 * when, and what to do <em>if not</em>: the confirmation and the watchdog of ECSS-E-ST-70-32C.
 */
final class StepLint {
  private static final String HEADING = "steps";

  /** What a step must say: one of the words, how it is called, how to mend its absence. */
  private record Part(List<String> words, String called, String mend) {}

  private static final List<Part> PARTS =
      List.of(
          new Part(List.of("expect"), "what to expect", "add 'Expect …' to the step"),
          new Part(
              List.of("time-out", "timeout", "time out"),
              "until when to wait",
              "add 'Time-out: …' to the step"),
          new Part(List.of("if not"), "what to do if not", "add 'If not: …' to the step"));

  private StepLint() {}

  /** Warnings; the body begins in line {@code bodyLine} of the file. */
  static List<Problem> check(String file, int bodyLine, String markdown, Procedure.Kind kind) {
    Parser parser = Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
    List<Problem> warnings = new ArrayList<>();
    boolean underSteps = false;
    boolean anySteps = false;
    for (Node node = parser.parse(markdown).getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Heading) {
        underSteps = words(node).strip().equals(HEADING);
      } else if (underSteps && node instanceof OrderedList) {
        anySteps = true;
        checkSteps(file, bodyLine, node, warnings);
      }
    }
    if (!anySteps && kind != Procedure.Kind.WAIT) {
      warnings.add(
          new Problem(
              "no numbered steps under a heading 'Steps'",
              file + ":" + bodyLine,
              "number the steps, each with what to expect and what to do if not"));
    }
    return warnings;
  }

  private static void checkSteps(String file, int bodyLine, Node list, List<Problem> warnings) {
    int number = 0;
    for (Node step = list.getFirstChild(); step != null; step = step.getNext()) {
      number++;
      int line = bodyLine + ((Block) step).getSourceSpans().get(0).getLineIndex();
      String said = words(step);
      for (Part part : PARTS) {
        if (part.words().stream().noneMatch(said::contains)) {
          warnings.add(
              new Problem(
                  "step " + number + " does not say " + part.called(),
                  file + ":" + line,
                  part.mend()));
        }
      }
    }
  }

  private static String words(Node node) {
    StringBuilder words = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral()).append(' ');
          }
        });
    return words.toString().toLowerCase(Locale.ROOT);
  }
}
