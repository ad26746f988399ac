package hark.assessment;

/**
 * An assessment and, beside it, what answers further questions about the electrical system of the
 * same possibilities.
 */
public record Examination(Assessment assessment, EnergyDesk energy) {}
