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
  { hash: 'passes', name: 'Passes', digit: '2', sheets: ['css/passes.css'], load: () => import('./passes.js') },
  { hash: 'pass', name: '', digit: '', under: 'passes', sheets: ['css/pass.css'], load: () => import('./pass.js') },
  { hash: 'energy', name: 'Energy', digit: '3', sheets: ['css/energy.css'], load: () => import('./energy.js') },
  { hash: 'causes', name: 'Causes', digit: '4', sheets: ['css/causes.css'], load: () => import('./causes.js') },
  { hash: 'cause', name: '', digit: '', under: 'causes', sheets: ['css/causes.css'], load: () => import('./cause.js') },
  { hash: 'plan', name: 'Plan', digit: '5', sheets: ['css/plan.css'], load: () => import('./plan.js') },
  { hash: 'record', name: 'Record', digit: '6', sheets: ['css/record.css'], load: () => import('./record.js') },
  { hash: 'runbook', name: 'Runbook', digit: '7', sheets: ['css/runbook.css'], load: () => import('./runbook.js') },
  { hash: 'setup', name: 'Set-up', digit: '8', sheets: ['css/setup.css'], load: () => import('./setup.js') },
  { hash: 'orbit', name: 'Orbit', digit: '9', sheets: ['css/orbit.css'], load: () => import('./orbit.js') },
];
