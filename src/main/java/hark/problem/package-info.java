/**
 * What is wrong with something people gave us: what, where, and how to mend it.
 *
 * <p>Begin with {@link hark.problem.BadInput}, which carries every {@link hark.problem.Problem} of
 * one input at once. Parsers collect, then throw; the command line prints the problems and exits
 * with 2, the console returns the same words as JSON.
 *
 * <p>Everything here is pure. Not in this room: defects of the program itself, and work that fails
 * for a reason outside of its input, such as a full disk.
 */
package hark.problem;
