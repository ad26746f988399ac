/**
 * Reads a mission folder and finds every problem in it at once.
 *
 * <p>Entry type: {@link hark.mission.Mission}, made by {@link hark.mission.MissionFolder} (the only
 * class here that touches a disk) or, from any {@link hark.mission.FolderSource}, by {@link
 * hark.mission.Missions}. Everything else is pure: text in, values and problems out.
 *
 * <p>{@link hark.mission.YamlTree} keeps the line of every key; {@link hark.mission.YamlMap} knows
 * which keys were asked for, so an unknown one is named together with its nearest neighbour.
 *
 * <p>Not modelled: mass and area are read and checked, and nothing is computed from them yet
 * ({@code hark check} lists such keys).
 */
package hark.mission;
