/**
 * The commands: reading arguments, asking the other rooms, printing for people or as one JSON
 * document.
 *
 * <p>Begin with {@link hark.cli.Main}. A command is one class and one line in its list. Main turns
 * every failure into words and an exit code: 0 done, 1 could not be done, 2 wrong usage or bad
 * input, 3 a defect.
 *
 * <p>Nothing here is pure, and nothing here computes anything of the domain: this is the only room
 * that makes a clock, prints, and decides when to stop. {@link hark.cli.DemoMission} holds the
 * invented mission that lies in the program.
 */
package hark.cli;
