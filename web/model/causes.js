// @ts-check
/** What the page of causes says: the sentence, the way of the odds, the tree as lines. */
import { movements, rows } from './fits.js';
/** @typedef {import('./types.js').Assessment} Assessment */
/** @typedef {import('./types.js').Cause} Cause */
/** @typedef {import('./types.js').TreeNode} TreeNode */
/** @typedef {import('./fits.js').Row} Row */

/** From this weight on something may be the answer beside the first. */
const NOTABLE = 0.05;
const NEXT = 3;

/** Groups of less weight are not worth a sentence. */
const TOLD = 0.01;

/**
 * What fits best, what comes next, and which groups cannot be told apart, heaviest first.
 * @param {Assessment} a
 */
export function answerOf(a) {
  const all = rows(a);
  const [first, ...others] = all;
  return {
    first, next: others.filter((r) => r.now >= NOTABLE).slice(0, NEXT),
    together: all.filter((r) => r.members.length > 1 && r.now >= TOLD),
  };
}

/** Causes heaviest first, as one walks from page to page. @param {Assessment} a */
export const inOrder = (a) => [...a.causes].sort((x, y) => y.posterior - x.posterior);

/** @param {Assessment} a @param {string} id */
export const causeOf = (a, id) => a.causes.find((c) => c.id === id);

/**
 * How the odds of the heaviest causes went, entry by entry: bits gained since the start. Entries that
 * move none of them are left out.
 * @param {Assessment} a
 */
export function ways(a) {
  const { columns, moved } = movements(a);
  return {
    entries: moved.map((m) => m.e),
    ways: columns.map((cause, i) => {
      let sum = 0;
      return { cause, bits: [0, ...moved.map((m) => (sum += m.cells[i]))] };
    }),
  };
}

/**
 * Every entry with what it did to one cause, and where the odds then stood, in bits since the start.
 * @param {Assessment} a @param {string} id
 */
export function movesOf(a, id) {
  let sum = 0;
  return [...a.evidence].map((e) => {
    const bits = e.bits[id] ?? 0;
    sum += bits;
    return { e, bits, sum };
  });
}

/**
 * A line of the drawn tree.
 * @typedef {{node: TreeNode, path: string, depth: number, folded: boolean, below: number,
 *   limbs: {weight: number, through: number}[]}} Line
 *
 * `path` names a node by the way to it, since one may hang in several places. `limbs`: for each level above
 * it the weight of the branch that leads down to it or past it, and of what goes on below (0: nothing).
 */

/** @param {TreeNode[]} tree @param {(path: string, node: TreeNode) => boolean} isFolded @returns {Line[]} */
export function lines(tree, isFolded) {
  if (tree.length === 0) return [];
  const byId = new Map(tree.map((n) => [n.id, n]));
  /** @type {Line[]} */
  const all = [];
  const walk = (/** @type {TreeNode} */ node, /** @type {string} */ path, /** @type {Line['limbs']} */ limbs) => {
    const folded = node.inputs.length > 0 && isFolded(path, node);
    all.push({ node, path, depth: limbs.length, folded, below: node.inputs.length, limbs });
    if (folded) return;
    const children = node.inputs.flatMap((id) => byId.get(id) ?? []);
    children.forEach((child, i) => {
      const rest = heaviest(children.slice(i + 1));
      const passing = limbs.map((l) => ({ weight: l.through, through: l.through }));
      walk(child, `${path}/${child.id}`, [...passing, { weight: Math.max(weightOf(child), rest), through: rest }]);
    });
  };
  walk(tree[0], tree[0].id, []);
  return all;
}

/** @param {TreeNode} n */
export const weightOf = (n) => n.now ?? 0;

/** Branches that only touch what is kept elsewhere are drawn too. @param {TreeNode[]} list */
const heaviest = (list) => (list.length === 0 ? 0 : Math.max(1e-6, ...list.map(weightOf)));

/** Gates over a cause, from the top down, one way for each place it hangs in. @param {TreeNode[]} tree @param {string} id @returns {TreeNode[][]} */
export function gatesOver(tree, id) {
  const over = (/** @type {string} */ of) => tree.filter((n) => n.inputs.includes(of));
  const up = (/** @type {string} */ of) => {
    const above = over(of);
    return above.length === 0 ? [[]] : above.flatMap((n) => up(n.id).map((way) => [...way, n]));
  };
  return up(id).filter((way) => way.length > 0);
}

/**
 * Where commands that address a cause stand: of each procedure the furthest reach and the least and
 * greatest hazard among the windows ahead.
 * @param {Assessment} a @param {string} title of the procedure
 */
export function offered(a, title) {
  const all = a.windows.flatMap((w) => w.options.filter((o) => o.title === title).map((o) => ({ w, o })));
  if (all.length === 0) return undefined;
  const best = all.reduce((x, y) => ((y.o.reach ?? y.o.heardThisPass) > (x.o.reach ?? x.o.heardThisPass) ? y : x));
  return {
    id: best.o.procedure, window: best.w, option: best.o,
    planned: all.filter(({ w, o }) => w.planned === o.procedure).length,
    hazards: [Math.min(...all.map(({ o }) => o.hazard)), Math.max(...all.map(({ o }) => o.hazard))],
  };
}
