// One page: the form, and what lies over it for a while.
import {id} from './state.js';

const VIEWS = ['form', 'saw', 'choose', 'quote', 'identify'];
/** @type {Record<string, () => void>} */ const opened = {};

/** @param {string} name */
export function show_view(name) {
  for (const each of VIEWS) id(each).hidden = each !== name;
  document.body.dataset.view = name;
  if (opened[name]) opened[name]();
  scrollTo(0, 0);
  dispatchEvent(new Event('resize'));
  const heading = /** @type {HTMLElement | null} */ (id(name).querySelector('h2'));
  if (heading) { heading.tabIndex = -1; heading.focus({preventScroll: true}); }
}
/** @param {string} name @param {() => void} act */
export const on_open = (name, act) => void (opened[name] = act);

export function build_views() {
  document.querySelectorAll('[data-view-to]').forEach((one) => one.addEventListener('click', () => show_view(/** @type {HTMLElement} */ (one).dataset.viewTo || 'form')));
  document.body.dataset.view = 'form';
}
