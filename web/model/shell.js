// @ts-check
/**
 * What a page is given, and what it is.
 *
 * @typedef {{s: import('./state.js').State, draw: () => void,
 *   act: import('./state.js').ShellActions, log: import('./state.js').LogActions,
 *   put: (kind: string, keys: Record<string, string>, title: string) => void}} Shell
 *
 * `draw` draws soon, once for many calls; `put` sends an entry that survives the loss of the server.
 *
 * @typedef {{key: string, does: string, run?: () => void}} Key
 *
 * A key without `run` is answered elsewhere, by what has the focus, and is only told of.
 *
 * @typedef {{title: string, skip: [string, string], draw: () => import('lit-html').TemplateResult,
 *   shown?: () => void, keys?: () => Key[]}} Page
 *
 * `title` stands in the window's title; `skip` is the place by hash to which a person may jump at once,
 * and its words; `draw` gives the page's <main>; `shown` runs after each drawing and asks for what is
 * missing.
 */
export {};
