package hark.fault;

import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import hark.fault.FaultTree.Join;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Just enough of the Open-PSA exchange format for the benchmark trees: and, or, atleast over gates
 * and basic events, probabilities as plain numbers.
 */
final class MefReader {
  private final Map<String, Gate> gates = new LinkedHashMap<>();
  private final Map<String, BasicEvent> events = new LinkedHashMap<>();

  static FaultTree read(Path file, String top) throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(file.toFile())
            .getDocumentElement();
    MefReader reader = new MefReader();
    reader.walk(root);
    return new FaultTree(top, reader.gates, reader.events);
  }

  private void walk(Element element) {
    for (Element child : children(element)) {
      String name = child.getAttribute("name");
      switch (child.getTagName()) {
        case "define-gate" -> gates.put(name, gate(name, last(child)));
        case "define-basic-event" -> {
          double p = Double.parseDouble(last(child).getAttribute("value"));
          events.put(name, new BasicEvent(name, name, p));
        }
        default -> walk(child);
      }
    }
  }

  private Gate gate(String id, Element formula) {
    Join join =
        switch (formula.getTagName()) {
          case "and" -> Join.AND;
          case "or", "gate", "basic-event" -> Join.OR;
          case "atleast" -> Join.AT_LEAST;
          default -> throw new IllegalArgumentException(formula.getTagName());
        };
    int k = join == Join.AT_LEAST ? Integer.parseInt(formula.getAttribute("min")) : 0;
    boolean single = formula.hasAttribute("name");
    List<Element> inputs = single ? List.of(formula) : children(formula);
    return new Gate(id, id, join, k, inputs.stream().map(e -> e.getAttribute("name")).toList());
  }

  private static Element last(Element parent) {
    List<Element> all = children(parent);
    return all.get(all.size() - 1);
  }

  private static List<Element> children(Element parent) {
    List<Element> all = new ArrayList<>();
    for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element element) {
        all.add(element);
      }
    }
    return all;
  }
}
