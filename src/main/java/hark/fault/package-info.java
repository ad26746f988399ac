/**
 * Fault trees, solved exactly.
 *
 * <p>Entry type: {@link hark.fault.FaultTrees}. A {@link hark.fault.FaultTree} becomes a reduced,
 * ordered binary decision diagram, from which the probability of the top event, the minimal cut
 * sets and the importance of every basic event are read without approximation. All is pure; nothing
 * is read or written.
 *
 * <p>Leaves that read something other than a basic event (which object it is, whether a station
 * works) are <em>nuisances</em>: they stand in the tree so that people see them, and count as false
 * here, since they have no probability of their own.
 *
 * <p>Not modelled: dependence between basic events, common-cause groups, repair, order of events in
 * time. For trees with NOT the sets listed are inclusion-minimal sets of events that happen, with
 * all others not happening; they are not prime implicants.
 */
package hark.fault;
