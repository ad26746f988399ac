/**
 * What to do: options of every window, a plan under the crew's hours, the case for going on. Entry
 * type: {@link hark.plan.Planner}. Pure.
 *
 * <p>Not modelled yet: plans that adapt to what is heard, more than one command in a plan, weekly
 * windows of a station, the value of desk work beyond its information.
 */
package hark.plan;
