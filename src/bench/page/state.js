// What the whole page looks at: the job, what the server knows, what it last said; and small helpers for elements.
import {Job} from './job.js';

/** @typedef {{word: string, says: string}} Named */
/** @typedef {{path: string, says: string, file?: string, line?: number}} Fault */
/** @typedef {{letter: string, part: string, what: string, cut: boolean, says: string, mm: number | null, keep_says: string | null, keep_mm: number | null}} Cut */
/** @typedef {{number: number, heading?: string, says: string[], lengths?: {letter: string, says: string}[]}} Step */
/** @typedef {{path: string, value: string | null}} Change */
/** @typedef {{step: number, name: string, expected_says: string, from_says: string, to_says: string, never_says: string, outside_says: string | string[], expected_mm: number, from_mm: number, to_mm: number, never_mm: number}} Mark */
/** @typedef {{what: string, step: number, says: string, why: string, expected_mm: number | null, plus_minus_mm: number | null}} Confirm */
/** @typedef {{verdict: string, band: {says: string, lengths: Cut[]}, warnings: string[], confirm: Confirm[], front: Step[], back: Step[],
 *   marks: Mark[], not_checked: {id: string, says: string}[], reasons: string[], ways_out: {number: number | null, says: string, choices: {says: string | null, changes: Change[]}[]}[], rules: string[], confirm_outside: string | null, cautions: string[]}} View */

export const state = {
  /** @type {any} */ catalogue: {},
  /** @type {Job} */ job: new Job('<job/>'),
  /** @type {View | null} */ view: null,
  /** @type {Fault[]} */ faults: [],
  /** @type {any} */ saw: {},            // what was touched and read at the saw: goes with the draft
  unknown: false,                        // "unknown" was touched, its shape not yet
  skipped: new Set(),                    // what the fitter passed over
  names: 0,                              // boxes for tractors that were not measured
  offline: false,
};

/** The words of a key, with what stands in the place of %1, %2.
 * @param {string} key @param {...string} values */
export function t(key, ...values) {
  const words = (state.catalogue.words || {})[key];
  if (words === undefined) console.error(`no words for ${key}`);
  return (words === undefined ? key : words).replace(/%(\d)/g, (/** @type {string} */ _, /** @type {string} */ n) => values[Number(n) - 1] || '');
}

/** @type {(() => void)[]} */ const listeners = [];
/** Called after every change of the job or of what is known of it.
 * @param {() => void} listener */
export const on_change = (listener) => void listeners.push(listener);
/** Whatever comes and goes above it, what the hand is at stays where it is. */
export function changed() {
  const held = document.activeElement, top = () => held && held.closest('main') ? held.getBoundingClientRect().top : 0, before = top();
  listeners.forEach((listener) => listener());
  const moved = held && document.contains(held) ? top() - before : 0;
  if (Math.abs(moved) > 1) scrollBy(0, moved);
}

/** Paths of what a touch wrote in the place of what the tape had said: they count once they were measured again.
 * @returns {string[]} */
export const again = () => state.saw.again || [];
/** @param {string} path */
export function measured_again(path) {
  if (again().length) state.saw.again = again().filter((one) => one !== path && !state.job.same(one, path));
}

/** @param {string} path @param {string | null} value */
export function put(path, value) {
  state.job.set(path, value);
  measured_again(path);
  edited();
}
/** @type {(() => void)[]} */ const editors = [];
/** Called only when something of the job was changed.
 * @param {() => void} listener */
export const on_edit = (listener) => void editors.push(listener);
export function edited() {
  editors.forEach((listener) => listener());
  changed();
}

export const id = (/** @type {string} */ name) => /** @type {HTMLElement} */ (document.getElementById(name));

/** An element with attributes; a text, or elements, inside.
 * @param {string} tag @param {Record<string, any>} [attributes] @param {...(Node | string)} inside
 * @returns {any} */
export function make(tag, attributes = {}, ...inside) {
  const one = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith('on')) one.addEventListener(name.slice(2), value);
    else if (value !== null && value !== false) one.setAttribute(name, value === true ? '' : value);
  }
  one.append(...inside);
  return one;
}
/** @param {string} says @param {() => void} act @param {Record<string, any>} [more] */
export const button = (says, act, more = {}) => make('button', {type: 'button', onclick: act, ...more}, says);

export const escaped = (/** @type {string} */ text) => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

/** Between wide-angle crosses or not: the kinds of joints, by side.
 * @param {string} side */
export const joint_at = (side) => state.job.get(`shaft/end[side=${side}]@joint`);
export const wide_anywhere = () => ['tractor', 'implement'].some((side) => joint_at(side) === 'wide-angle');
export const series = () => (state.catalogue.series || []).find((/** @type {any} */ one) => one.name === state.job.get('shaft@series')) || null;
/** The cross that the closed length is read from: as it was said, never supposed. */
export const closed_reference = () => state.job.get('shaft/closed@reference');
export const inner_side = () => state.job.get('shaft@inner-tube') || 'implement';
