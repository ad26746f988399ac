// @ts-check
/** Wires the page Passes: how much time is shown, what of it, in what order. */
import { timeOf } from './chart/overview.js';
import { whole, within, zoomed } from './model/passes.js';
import { DAY } from './model/time.js';
import { passesMain } from './view/passes.js';
/** @typedef {import('./model/passesstate.js').PassesState} PassesState */

const FIRST_DAYS = 3;
const CLOSER = 0.6;
/** A shorter stroke than this is a click, px. */
const STROKE_PX = 6;

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  /** @type {PassesState} */
  const mine = { span: [0, 0], days: FIRST_DAYS, filter: { station: '', plannedOnly: false }, order: { column: 'aos', down: false } };
  let revision = 0;

  const room = () => whole(s.page.assessment);

  /** @param {[number, number]} wish @param {number} days */
  function show(wish, days) {
    mine.span = within(wish, room());
    mine.days = days;
    draw();
  }

  /** A new answer begins later; what was shown stays where it still can. */
  function follow() {
    if (revision === s.page.revision) return;
    const first = revision === 0;
    revision = s.page.revision;
    const [from, to] = room();
    mine.span = within(first ? [from, from + FIRST_DAYS * DAY] : mine.days === 0 ? [from, to] : mine.span, room());
  }

  /** @type {import('./model/passesstate.js').PassesActions} */
  const actions = {
    days(days) {
      const [from, to] = room();
      show(days === 0 ? [from, to] : [mine.span[0], mine.span[0] + days * DAY], days);
    },
    turn(way) {
      const step = way * (mine.span[1] - mine.span[0]) * 0.75;
      show([mine.span[0] + step, mine.span[1] + step], mine.days);
    },
    zoom(factor) { show(zoomed(mine.span, factor), -1); },
    station(name) { mine.filter.station = name; draw(); },
    plannedOnly(on) { mine.filter.plannedOnly = on; draw(); },
    sort(column) {
      mine.order = { column, down: mine.order.column === column ? !mine.order.down : column !== 'aos' && column !== 'station' };
      draw();
    },
    brush(e) {
      const ground = /** @type {HTMLElement} */ (e.currentTarget);
      const left = ground.getBoundingClientRect().left;
      const at = (/** @type {PointerEvent} */ ev) => timeOf(ev.clientX - left, s.widths.overview, room());
      const start = e.clientX;
      const from = at(e);
      ground.setPointerCapture(e.pointerId);
      const move = (/** @type {PointerEvent} */ ev) => {
        if (Math.abs(ev.clientX - start) >= STROKE_PX) show([Math.min(from, at(ev)), Math.max(from, at(ev))], -1);
      };
      ground.addEventListener('pointermove', move);
      ground.addEventListener('pointerup', (ev) => {
        ground.removeEventListener('pointermove', move);
        const half = (mine.span[1] - mine.span[0]) / 2;
        if (Math.abs(ev.clientX - start) < STROKE_PX) show([from - half, from + half], mine.days);
      }, { once: true });
    },
    key(e) {
      const way = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
      if (way === undefined) return;
      e.preventDefault();
      actions.turn(way);
    },
  };

  return {
    title: 'passes',
    skip: ['#passes-ribbon', 'to the passes'],
    draw() { follow(); return passesMain(s, mine, actions); },
    keys: () => [
      { key: '+', does: 'come closer in time', run: () => actions.zoom(CLOSER) },
      { key: '-', does: 'see more time', run: () => actions.zoom(1 / CLOSER) },
      { key: '[', does: 'earlier', run: () => actions.turn(-1) },
      { key: ']', does: 'later', run: () => actions.turn(1) },
    ],
  };
}
