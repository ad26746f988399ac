// @ts-check
/**
 * What the page Passes holds. `days` is the choice of how much time is shown, −1 after somebody zoomed.
 *
 * @typedef {{span: [number, number], days: number, filter: {station: string, plannedOnly: boolean},
 *   order: {column: import('./passes.js').Column, down: boolean}}} PassesState
 * @typedef {{days: (days: number) => void, turn: (way: number) => void, zoom: (factor: number) => void,
 *   station: (name: string) => void, plannedOnly: (on: boolean) => void,
 *   sort: (column: import('./passes.js').Column) => void, brush: (e: PointerEvent) => void,
 *   key: (e: KeyboardEvent) => void}} PassesActions
 */
export {};
