/**
 * The pure function from mission, record and clock to one immutable {@link
 * hark.assessment.Assessment}. Entry type: {@link hark.assessment.Assessor}. Every page, table and
 * document is a view of the result; no view computes anything of the domain. Questions about the
 * electrical system of the same possibilities go to {@link hark.assessment.EnergyDesk}: what-if,
 * one member's trace, why the bus is in a state. Not modelled there: array power that nobody took
 * (the books count what is drawn), and another separation or orbit.
 */
package hark.assessment;
