/**
 * The pure function from mission, record and clock to one immutable {@link
 * hark.assessment.Assessment}. Entry type: {@link hark.assessment.Assessor}. Every page, table and
 * document is a view of the result; no view computes anything of the domain.
 */
package hark.assessment;
