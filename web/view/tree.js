// @ts-check
import { html } from 'lit-html';
import { STEP, drawLimbs } from '../chart/limbs.js';
import { drawMovement } from '../chart/movement.js';
import { lines } from '../model/causes.js';
import { percent, percentError } from '../model/numbers.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').TreeNode} TreeNode */
/** @typedef {import('../model/causes.js').Line} Line */
/** @typedef {import('./causes.js').Mine} Mine */
/** @typedef {import('./causes.js').Actions} Actions */

/** Gates below this weight begin folded. */
const SMALL = 0.05;

/** @type {Record<string, string>} */
const JOINS = { or: 'any of', and: 'all of', not: 'none of' };

/** The fault tree with its weights. @param {State} s @param {Mine} mine @param {Actions} act */
export function treeView(s, mine, act) {
  const tree = s.page.assessment.tree;
  const isFolded = (/** @type {string} */ path, /** @type {TreeNode} */ node) => mine.folded.get(path) ?? mine.folded.get('') ?? (node.now ?? 0) < SMALL;
  const all = lines(tree, isFolded);
  const top = tree[0];
  if (!top) return '';
  return html`
    <section id="causes-tree" class="tree" aria-labelledby="causes-tree-title">
      <div class="heading"><h2 id="causes-tree-title">The fault tree, by weight</h2>
        <div class="turn"><button type="button" @click=${() => act.foldAll(false)}>open all</button>
          <button type="button" @click=${() => act.foldAll(true)}>fold all</button></div></div>
      <p class="legend">A branch is as thick as it is likely now. A gate’s figure counts what has begun, taken together; its inputs do not exclude each
        other, so they need not add up. Sets of three events and more are left out (${percent(s.page.assessment.remainder)}). Broken: kept elsewhere, with objects and stations.</p>
      <ul class="lines">${nested(all, 0, s, act)[0]}</ul>
    </section>`;
}

/** Lines of one level from a place on, as nested lists. @param {Line[]} all @param {number} from @param {State} s @param {Actions} act @returns {[unknown[], number]} */
function nested(all, from, s, act) {
  const depth = all[from].depth;
  /** @type {unknown[]} */
  const items = [];
  let at = from;
  while (at < all.length && all[at].depth === depth) {
    const line = all[at];
    const inside = at + 1 < all.length && all[at + 1].depth > depth ? nested(all, at + 1, s, act) : null;
    items.push(html`<li>${lineView(line, s, act)}${inside ? html`<ul>${inside[0]}</ul>` : ''}</li>`);
    at = inside ? inside[1] : at + 1;
  }
  return [items, at];
}

/** @param {Line} line @param {State} s @param {Actions} act */
function lineView(line, s, act) {
  const { node, depth, folded, path, below } = line;
  const width = s.widths['causes-tree-row'] || 140;
  return html`
    <div class="line" data-node=${node.id}>
      <span class="words">${drawLimbs(line)}<span class="indent">${spacer(depth)}</span>
        <span class="name">${below > 0 ? html`<button type="button" aria-expanded=${folded ? 'false' : 'true'} @click=${() => act.fold(path, !folded)}>${node.title}</button>
            <span class="soft">${join(node)}${folded ? `, folded` : ''}</span>`
          : node.join === 'event' ? html`<a href=${`#cause/${node.id}`}>${node.title}</a>` : html`${node.title} <span class="soft">kept elsewhere</span>`}</span></span>
      ${node.now === null || node.prior === null ? html`<span></span><span class="figure soft">–<span class="unseen"> no figure here</span></span>` : html`
        <span class="small-movement" data-measure=${depth === 0 ? 'causes-tree-row' : ''}>${drawMovement({ prior: node.prior, now: node.now, error: node.error, band: null }, 1, width)}</span>
        <span class="figure"><span class="soft">${percent(node.prior)} →</span> ${percentError(node.now, node.error)}</span>`}
    </div>`;
}

/** Room for the branches; a style attribute is not allowed here. @param {number} depth */
const spacer = (depth) => html`<svg width=${depth * STEP} height="1" aria-hidden="true"></svg>`;

/** @param {TreeNode} node */
const join = (node) => (node.join === 'at_least' ? `at least ${node.atLeast} of` : JOINS[node.join] ?? '') + ` ${node.inputs.length}`;
