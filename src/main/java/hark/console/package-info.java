/**
 * The console: one page in a browser, its small HTTP interface, and server-sent events that tell
 * the page when the numbers have changed.
 *
 * <p>Entry type: {@link hark.console.ConsoleServer}, over a {@link hark.console.ConsoleModel}.
 * Nothing here computes anything of the domain; an assessment is shown as it is. Recomputation runs
 * on one worker thread. The server listens on loopback only.
 *
 * <p>Not here yet: log-ins for a crew, TLS, sending to hardware (never).
 */
package hark.console;
