// @ts-check
/**
 * What all pages hold beside what the server sent. What one page alone needs it keeps itself.
 *
 * @typedef {{token: string, kind: string, keys: Record<string, string>, title: string, since: number,
 *   problems: import('./types.js').Problem[]}} Waiting
 *
 * An entry not yet known to be on disk; with problems it was refused.
 *
 * @typedef {{page: import('./types.js').PageData, now: number, theme: string, status: string, written: string,
 *   widths: Record<string, number>, dayShift: number, selected: string|undefined,
 *   allWindows: boolean, opened: Set<string>, procedures: Map<string, string>,
 *   skies: Map<string, import('./types.js').SkyView>,
 *   draft: import('./entry.js').Draft, loggable: import('./windows.js').Loggable[],
 *   problems: import('./types.js').Problem[], sending: boolean, keysOn: boolean,
 *   shown: Record<string, string>, before: Record<string, string>,
 *   farAhead: {look: import('./types.js').LongLook|null, asked: boolean, problems: import('./types.js').Problem[]},
 *   view: string, rest: string, unopened: string,
 *   waiting: Waiting[], lost: number, guide: number,
 *   energy: import('./energystate.js').EnergyState}} State
 *
 * `shown` collects the figures as they are drawn, `before` those of the former revision, so that
 * what changed can be marked. `view` is the hash of the page looked at, `rest` what stands behind a
 * slash, `unopened` why the page could not be fetched, or empty; `lost` since when the server
 * has not answered, 0 while it does; `guide` the step of a first visit, 0 for none.
 *
 * @typedef {{theme: (id: string) => void, keys: (on: boolean) => void, showKeys: () => void,
 *   drop: (token: string) => void, guide: (step: number) => void, guideAgain: () => void, clock: (wish: {held?: boolean, speed?: number, to?: string}) => void}} ShellActions
 * @typedef {{kind: (kind: string) => void, window: (id: string) => void, value: (key: string, value: string) => void,
 *   keys: (on: boolean) => void, send: () => void}} LogActions
 * @typedef {{turn: (days: number) => void, select: (id: string) => void, allWindows: (all: boolean) => void,
 *   opened: (id: string, open: boolean) => void, procedure: (id: string) => void, lookFar: () => void}} NowActions
 */

/** @returns {State} */
export const freshState = () => ({
  page: /** @type {any} */ (undefined), now: Date.now(), status: '', written: '', widths: {}, dayShift: 0,
  theme: document.documentElement.dataset.theme ?? 'light', selected: undefined, allWindows: false,
  opened: new Set(), procedures: new Map(), skies: new Map(), loggable: [], problems: [], sending: false,
  draft: { kind: 'nothing-heard', window: '', values: { who: localStorage.getItem('hark.who') ?? '' } },
  keysOn: localStorage.getItem('hark.keys') !== 'off', shown: {}, before: {},
  farAhead: { look: null, asked: false, problems: [] }, view: '', rest: '', unopened: '', waiting: [], lost: 0, guide: 0, energy: /** @type {any} */ (undefined),
});
