// @ts-check
/** @typedef {import('./types.js').Assessment} Assessment */
/** @typedef {import('./types.js').Cause} Cause */
/**
 * A row of "what still fits".
 * @typedef {{id: string, title: string, prior: number, now: number, error: number, tell: string,
 *   members: Cause[], cause: Cause|null, separators: import('./types.js').Separator[],
 *   band: [number, number]|null}} Row
 *
 * `band`: where it would stand with half and with double the prior.
 */

/** Rows below this now, and never large, stand in the folded rest. */
export const SMALL = 0.01;
const ONCE_LARGE = 0.05;
const NAMED = 3;
const STORY = 0.005;
const COLUMNS = 6;
export const LEAST_BITS = 0.05;

/**
 * Causes as rows, an inseparable group as one of them, largest first; nothing wrong among them.
 * @param {Assessment} a
 * @returns {Row[]}
 */
export function rows(a) {
  const grouped = new Set(a.groups.flatMap((g) => g.causes));
  const byId = new Map(a.causes.map((c) => [c.id, c]));
  /** @type {Row[]} */
  const all = a.causes.filter((c) => !grouped.has(c.id)).map(single);
  for (const g of a.groups) {
    const members = g.causes.flatMap((id) => byId.get(id) ?? []);
    all.push({
      id: g.id, title: g.title, prior: g.prior, now: g.posterior, error: g.error,
      tell: '', members, cause: null, separators: g.separators, band: null,
    });
  }
  const nothing = a.explanations.find((e) => e.events.length === 0);
  if (nothing) {
    all.push({
      id: 'nothing-wrong', title: nothing.title, prior: nothing.prior, now: nothing.posterior,
      error: nothing.error, tell: 'any reception', members: [], cause: null, separators: [], band: null,
    });
  }
  return all.sort((x, y) => y.now - x.now);
}

/** @param {Cause} c @returns {Row} */
export function single(c) {
  return {
    id: c.id, title: c.title, prior: c.prior, now: c.posterior, error: c.error,
    tell: c.signature, members: [], cause: c, separators: [], band: [c.ifPriorHalved, c.ifPriorDoubled],
  };
}

/** @param {Row[]} all */
export function split(all) {
  const large = all.filter((r) => r.now >= SMALL || r.prior >= ONCE_LARGE);
  return { large, small: all.filter((r) => !large.includes(r)) };
}

/**
 * What the last entry moved most, as pairs of title and bits; a group counts once when its causes
 * moved alike.
 * @param {Assessment} a
 * @param {Record<string, number>} bits
 * @param {number} limit
 */
export function movers(a, bits, limit) {
  const groups = new Map(a.groups.flatMap((g) => g.causes.map((id) => [id, g])));
  const titles = new Map(a.causes.map((c) => [c.id, c.title]));
  /** @type {Map<string, {title: string, bits: number}>} */
  const seen = new Map();
  for (const [id, moved] of Object.entries(bits)) {
    const group = groups.get(id);
    const key = group ? `${group.id} ${moved.toFixed(1)}` : id;
    const title = group ? named(group.causes.map((c) => titles.get(c) ?? c)) : titles.get(id) ?? id;
    if (!seen.has(key)) seen.set(key, { title, bits: moved });
  }
  return [...seen.values()]
    .filter((m) => Math.abs(m.bits) >= 0.05)
    .sort((x, y) => Math.abs(y.bits) - Math.abs(x.bits))
    .slice(0, limit);
}

/**
 * Single explanations, heaviest first: those worth a line, and how many others there are.
 * @param {Assessment} a
 */
export function stories(a) {
  const sorted = [...a.explanations].sort((x, y) => y.posterior - x.posterior);
  const told = sorted.filter((e) => e.posterior >= STORY || e.events.length === 0);
  const others = sorted.length - told.length;
  const sum = (/** @type {'prior'|'posterior'} */ key) => told.reduce((all, e) => all + e[key], 0);
  return {
    told, others,
    prior: Math.max(0, 1 - sum('prior') - a.remainderAtStart),
    posterior: Math.max(0, 1 - sum('posterior') - a.remainder),
  };
}

/**
 * What moved what: entries down, the heaviest causes across (of those that moved alike the first),
 * entries that moved none of them left out and counted.
 * @param {Assessment} a
 */
export function movements(a) {
  const seen = new Set();
  const columns = [...a.causes].sort((x, y) => y.posterior - x.posterior).filter((c) => {
    if (c.inseparableGroup === null) return true;
    if (seen.has(c.inseparableGroup)) return false;
    return seen.add(c.inseparableGroup);
  }).slice(0, COLUMNS);
  const lines = a.evidence.map((e) => ({ e, cells: columns.map((c) => e.bits[c.id] ?? 0) }));
  const moved = lines.filter((l) => l.cells.some((b) => Math.abs(b) >= LEAST_BITS));
  return {
    columns, moved, still: lines.length - moved.length,
    sums: columns.map((_, i) => lines.reduce((all, l) => all + l.cells[i], 0)),
  };
}

/** The first few, and how many more. @param {string[]} titles */
export function named(titles) {
  const more = titles.length - NAMED;
  return more <= 1 ? titles.join(', ') : `${titles.slice(0, NAMED).join(', ')} and ${more} more`;
}
