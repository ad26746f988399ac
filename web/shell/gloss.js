// @ts-check
/** Shows what a marked word means, beside it, on hover and on focus; Escape puts it away. */
import { GLOSSARY } from '../model/glossary.js';

const EDGE = 12;
const LEAVING_MS = 150;

export function listenForWords() {
  const box = document.createElement('div');
  box.className = 'gloss';
  box.hidden = true;
  // The same words reach a screen reader through aria-describedby of the marked word.
  box.setAttribute('aria-hidden', 'true');
  document.body.append(box);
  /** @type {ReturnType<typeof setTimeout>|undefined} */
  let leaving;

  const away = () => { box.hidden = true; };
  const leave = () => { leaving = setTimeout(away, LEAVING_MS); };
  const stay = () => clearTimeout(leaving);

  /** @param {Event} e */
  function come(e) {
    const word = e.target instanceof Element ? e.target.closest('.term') : null;
    const said = word instanceof HTMLElement ? GLOSSARY[word.dataset.term ?? ''] : undefined;
    if (!word || !said) return;
    stay();
    const name = document.createElement('b');
    name.textContent = said.word;
    box.replaceChildren(name, ` ${said.means}`);
    (word.closest('dialog') ?? document.body).append(box);
    box.hidden = false;
    const at = word.getBoundingClientRect();
    const below = at.bottom + 6 + box.offsetHeight < innerHeight;
    box.style.left = `${Math.max(EDGE, Math.min(at.left, innerWidth - box.offsetWidth - EDGE))}px`;
    box.style.top = `${below ? at.bottom + 6 : at.top - box.offsetHeight - 6}px`;
  }

  addEventListener('mouseover', come);
  addEventListener('focusin', come);
  addEventListener('mouseout', (e) => { if (e.target instanceof Element && e.target.closest('.term')) leave(); });
  addEventListener('focusout', away);
  addEventListener('scroll', away, { passive: true, capture: true });
  addEventListener('keydown', (e) => { if (e.key === 'Escape') away(); });
  box.addEventListener('mouseenter', stay);
  box.addEventListener('mouseleave', leave);
}
