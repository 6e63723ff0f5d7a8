// What was typed is kept by the browser, one draft an order, with what was touched at the saw.
import {new_job} from './job.js';
import {open_job} from './papers.js';
import {button, id, make, on_edit, state, t} from './state.js';

const JOB = 'job:', SAW = 'saw:', LAST = 'last';
const MOST = 60; // drafts; the oldest go

/** @returns {string[]} */
const orders = () => Object.keys(localStorage).filter((key) => key.startsWith(JOB)).map((key) => key.slice(JOB.length)).sort().reverse();
let kept_as = '';

/** Under its order's number; a draft whose number was corrected moves along. */
export function keep() {
  const order = state.job.get('@order');
  if (kept_as && kept_as !== order) for (const kind of [JOB, SAW]) localStorage.removeItem(kind + kept_as);
  kept_as = order;
  localStorage.setItem(JOB + order, state.job.text());
  localStorage.setItem(SAW + order, JSON.stringify(state.saw));
  localStorage.setItem(LAST, order);
  for (const old of orders().slice(MOST)) if (old !== order) for (const kind of [JOB, SAW]) localStorage.removeItem(kind + old);
}

/** @param {string} order */
function take(order) {
  const saw = localStorage.getItem(SAW + order);
  kept_as = '';
  open_job(localStorage.getItem(JOB + order) || '');
  state.saw = saw ? JSON.parse(saw) : {};
  keep();
}

export function start_new() {
  kept_as = '';
  open_job(new_job(state.catalogue.units || 'mm', orders()));
}

function show_list() {
  const list = id('drafts');
  list.replaceChildren(...orders().map((order) => make('li', {}, button(order, () => { take(order); id('jobs').removeAttribute('open'); }, {'aria-current': String(order === kept_as)}),
    button(t('throw_away'), () => {
      for (const kind of [JOB, SAW]) localStorage.removeItem(kind + order);
      if (order === kept_as) start_new();
      show_list();
    }, {'aria-label': `${t('throw_away')} ${order}`}))));
}

/** Another file or a new one begins a draft of its own. */
export const forget_number = () => void (kept_as = '');

export function build_drafts() {
  on_edit(keep);
  id('jobs').addEventListener('toggle', show_list);
  id('new-job').addEventListener('click', () => { start_new(); id('jobs').removeAttribute('open'); });
  id('job-in').addEventListener('change', forget_number, {capture: true});
  const last = localStorage.getItem(LAST);
  if (last !== null && localStorage.getItem(JOB + last)) take(last);
  else start_new();
}
