package hark.assessment;

import java.util.List;

/**
 * An event set of which the fault tree says otherwise than the simulation.
 *
 * @param events ids
 * @param treeSilent the tree's top holds with exactly these events
 * @param audibleShare share of the simulated bodies that are audible with them
 * @param bodies how many were simulated
 */
public record TreeDisagreement(
    List<String> events, String title, boolean treeSilent, double audibleShare, int bodies) {}
