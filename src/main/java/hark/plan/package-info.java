/**
 * What to do: options of every window, a plan under the crew's hours, the case for going on. Entry
 * types: {@link hark.plan.Planner} makes a plan, {@link hark.plan.PlanBook} answers questions about
 * it. Pure.
 *
 * <p>The plan itself is worked out in bare numbers ({@code PlanProblem}: windows, costs, limits,
 * what each possibility lets every move hear), so that textbook cases can be asked of the same
 * code; {@code Setup} makes these numbers of a diagnosis, {@code CommandTree} follows commands.
 *
 * <p>Not modelled: telemetry as a way to choose (after a reception people decide); a recording that
 * exists already and is searched again; receptions of two commands by one possibility that depend
 * on each other.
 */
package hark.plan;
