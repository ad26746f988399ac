package hark.assessment;

import hark.plan.PlanBook;
import hark.plan.PlanFigures;
import java.util.List;
import java.util.Map;

/**
 * What another plan would be worth beside the proposed one.
 *
 * @param objections what it would break, in words
 * @param taken procedure by window of the edited plan
 */
public record PlanTrial(
    PlanFigures proposed,
    PlanFigures edited,
    List<PlanBook.WeekHours> weeks,
    List<String> objections,
    String sentence,
    Map<String, String> taken) {}
