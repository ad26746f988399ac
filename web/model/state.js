// @ts-check
/**
 * What the page holds beside what the server sent.
 *
 * @typedef {{page: import('./types.js').PageData, now: number, theme: string, status: string, written: string,
 *   widths: Record<string, number>, dayShift: number, selected: string|undefined,
 *   allWindows: boolean, opened: Set<string>, procedures: Map<string, string>,
 *   skies: Map<string, import('./types.js').SkyView>,
 *   draft: import('./entry.js').Draft, loggable: import('./model/windows.js').Loggable[],
 *   problems: import('./types.js').Problem[], sending: boolean, keysOn: boolean,
 *   shown: Record<string, string>, before: Record<string, string>,
 *   farAhead: {look: import('./types.js').LongLook|null, asked: boolean, problems: import('./types.js').Problem[]},
 *   view: 'now'|'energy', energy: import('./energystate.js').EnergyState}} State
 *
 * `shown` collects the figures as they are drawn, `before` those of the former revision, so that
 * what changed can be marked.
 *
 * @typedef {{theme: (id: string) => void, turn: (days: number) => void, select: (id: string) => void,
 *   allWindows: (all: boolean) => void, opened: (id: string, open: boolean) => void,
 *   procedure: (id: string) => void, kind: (kind: string) => void, window: (id: string) => void,
 *   value: (key: string, value: string) => void, keys: (on: boolean) => void, send: () => void,
 *   lookFar: () => void}} Actions
 */
export {};
