// @ts-check
/** Which page is open, by the hash; pages are fetched when first asked for and kept. */
import { PAGES } from '../pages.js';
/** @typedef {import('../pages.js').Entry} Entry */
/** @typedef {import('../model/shell.js').Page} Page */

/** The page a hash names and the rest behind the first slash; what names no page is a place on the first. @param {string} hash */
export function placeOf(hash) {
  const [head, ...rest] = hash.replace(/^#/, '').split('/');
  const name = head.split('-')[0];
  const entry = PAGES.find((p) => p.hash === name) ?? PAGES[0];
  return { entry, rest: decoded(rest.join('/')) };
}

/** @param {string} text */
function decoded(text) {
  try { return decodeURIComponent(text); } catch { return text; }
}

/** @param {import('../model/shell.js').Shell} shell */
export function wireRouter(shell) {
  const { s } = shell;
  /** @type {Map<Entry, Page>} */
  const open = new Map();

  /** @param {Entry} entry */
  async function fetched(entry) {
    const [module] = await Promise.all([entry.load(), ...entry.sheets.map(sheet)]);
    return module;
  }

  /** @param {Entry} entry */
  async function arrive(entry) {
    try {
      const module = await fetched(entry);
      if (!open.has(entry)) open.set(entry, module.page(shell));
      s.unopened = '';
    } catch {
      s.unopened = `The page ${entry.name} could not be fetched: the console does not answer. It is tried again when you come back to it.`;
    }
    shell.draw();
  }

  function go() {
    const { entry, rest } = placeOf(location.hash);
    const turned = s.view !== entry.hash || s.rest !== rest;
    s.view = entry.hash;
    s.rest = rest;
    if (!open.has(entry)) arrive(entry).then(() => stand(turned));
    else {
      shell.draw();
      stand(turned);
    }
  }

  /** Goes to the place named once it is drawn; a page newly turned to begins at its top. @param {boolean} turned */
  function stand(turned) {
    setTimeout(() => {
      const place = document.getElementById(decoded(location.hash.slice(1)));
      if (place) place.scrollIntoView();
      else if (turned) scrollTo(0, 0);
    });
  }

  addEventListener('hashchange', go);
  return {
    go,
    /** The page looked at, once it is here. @returns {Page|undefined} */
    page: () => open.get(placeOf(location.hash).entry),
    /** Fetches the other pages beforehand, so that they open even if the server is lost meanwhile. */
    foresee: () => PAGES.forEach((entry) => fetched(entry).catch(() => {})),
  };
}

/** @param {string} href @returns {Promise<void>} */
function sheet(href) {
  if (document.querySelector(`link[rel=stylesheet][href="${href}"]`)) return Promise.resolve();
  return new Promise((resolve, reject) => {
    const link = document.createElement('link');
    link.rel = 'stylesheet';
    link.href = href;
    link.onload = () => resolve();
    link.onerror = () => { link.remove(); reject(new Error(href)); };
    document.head.append(link);
  });
}
