// Talks with the server that the page came from. While it does not answer, what is typed stays and is asked again.
import {changed, state} from './state.js';

/** @typedef {{status: number, json: any, blob: Blob | null, name: string}} Reply */

/** The same wishes for the screen and for every paper: the job's unit, the workshop's paper. */
export const in_units = () => `units=${state.job.get('@units') === 'in' ? 'in' : 'mm'}`;
export const on_paper = () => `${in_units()}&paper=${state.catalogue.paper}`;

/** @param {string} route @param {string} body @returns {Promise<Reply>} */
export async function post(route, body) {
  try {
    const reply = await fetch(route, {method: 'POST', headers: {'Content-Type': 'application/xml'}, body});
    if (reply.status === 429 || reply.status === 503) return {status: 0, json: null, blob: null, name: ''};
    const is_json = (reply.headers.get('Content-Type') || '').includes('json');
    const name = /filename="([^"]*)"/.exec(reply.headers.get('Content-Disposition') || '');
    return {status: reply.status, json: is_json ? await reply.json() : null, blob: is_json ? null : await reply.blob(), name: name ? name[1] : ''};
  } catch {
    return {status: 0, json: null, blob: null, name: ''};
  }
}

export async function get_catalogue() {
  try {
    const reply = await fetch('/catalogue');
    const json = await reply.json();
    if (json.words) state.catalogue = {words: json.words}; // of a tablet that is not let in: those of its one screen
    return {status: reply.status, json: reply.ok ? json : null, says: json.says || ''};
  } catch {
    return {status: 0, json: null, says: ''};
  }
}

const PAUSE = 120, AGAIN = 2000;
const OLD = 500; // an answer to what no longer stands in the boxes is not shown for longer
let asked = 0, timer = 0, old = 0;

/** What was asked before is no answer to what stands in the boxes now. */
export function drop_asked() {
  ++asked;
  clearTimeout(timer);
  clearTimeout(old);
  state.view = null;
  state.faults = [];
}

/** Asks once the hand rests; an answer that came too late is dropped.
 * @param {() => boolean} enough */
export function ask_soon(enough) {
  ++asked;
  clearTimeout(timer);
  clearTimeout(old);
  old = window.setTimeout(() => { state.view = null; changed(); }, OLD);
  timer = window.setTimeout(() => ask(enough), PAUSE);
}

/** @param {() => boolean} enough */
async function ask(enough) {
  const number = ++asked;
  const reply = await post(`/view?${in_units()}`, state.job.text());
  if (number !== asked) return;
  clearTimeout(old);
  state.offline = reply.status === 0;
  if (state.offline) {
    state.view = null;
    timer = window.setTimeout(() => ask(enough), AGAIN);
  } else {
    state.view = reply.status === 200 ? reply.json : null;
    state.faults = reply.status === 422 ? reply.json.faults : [];
  }
  changed();
}
