package hark.assessment;

/**
 * An assessment and, beside it, what answers further questions about the electrical system and the
 * plan of the same possibilities, and what makes the case for going on.
 */
public record Examination(
    Assessment assessment, EnergyDesk energy, CaseDesk goingOn, PlanDesk plan) {}
