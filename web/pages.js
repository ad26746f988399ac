// @ts-check
/**
 * The pages, in the order in which their names stand. One line adds one; see "How to add a page" in
 * DEVELOPERS.md. A digit stays with its page for good, so that hands can learn it.
 *
 * @typedef {{hash: string, name: string, digit: string, under?: string, sheets: string[],
 *   load: () => Promise<{page: (shell: import('./model/shell.js').Shell) => import('./model/shell.js').Page}>}} Entry
 *
 * `hash` is what stands behind the #, up to a first / or -; what follows a / is the page's own. A page
 * without a name stands in no line of names; `under` says which name is marked while it is open.
 */

/** @type {Entry[]} */
export const PAGES = [
  { hash: '', name: 'Now', digit: '1', sheets: ['css/now.css'], load: () => import('./now.js') },
  { hash: 'pass', name: '', digit: '', under: 'passes', sheets: ['css/pass.css'], load: () => import('./pass.js') },
  { hash: 'energy', name: 'Energy', digit: '3', sheets: ['css/energy.css'], load: () => import('./energy.js') },
];
