package hark.assessment;

/**
 * An assessment and, beside it, what answers further questions about the electrical system and the
 * plan of the same possibilities, what makes the case for going on, and what answers for one more
 * entry until that is worked out.
 */
public record Examination(
    Assessment assessment,
    EnergyDesk energy,
    CaseDesk goingOn,
    PlanDesk plan,
    FirstLook firstLook) {}
