// What to measure next, in the order of the bench: together, parted, on the machine. Never back.
import {box_of} from './boxes.js';
import {again, closed_reference, joint_at, series, state, wide_anywhere} from './state.js';

/** `aside`: never lit, but the key Enter comes to it. `again`: written by a touch, to be measured again.
 * @typedef {{path: string, word: string, must: boolean, there?: boolean, aside?: boolean, again?: boolean}} Step */

/** @param {string} path @param {string} word @param {boolean} must @returns {Step} */
const step = (path, word, must) => ({path, word, must});

function together() {
  const known = series() !== null;
  const steps = [{...step('shaft@series', 'series', true), there: known || state.job.get('shaft@shape') !== ''}, step('shaft@inner-tube', 'inner_tube', true)];
  for (const side of ['tractor', 'implement']) steps.push(step(`shaft/end[side=${side}]@joint`, `${side}_joint`, true));
  steps.push(step('shaft/closed@length', 'closed', true));
  if (wide_anywhere() && !closed_reference()) steps.push(step('shaft/closed@reference', 'reference', true));
  if (wide_anywhere() && !known) steps.push({...step('shaft@spacing', 'spacing', true), there: state.job.get('shaft@spacing') !== '' || spacing_by_end()});
  return steps;
}
const spacing_by_end = () => ['tractor', 'implement'].every((side) => joint_at(side) !== 'wide-angle' || state.job.get(`shaft/end[side=${side}]@spacing`) !== '');

function parted() {
  const known = series() !== null;
  return ['inner', 'outer'].flatMap((which) => {
    const half = `shaft/half[tube=${which}]`;
    const steps = [step(`${half}@length`, `${which}_half`, !known), step(`${half}@guard`, `${which}_guard`, false)];
    if (!known) steps.push({...step(`${half}@stop-depth`, `${which}_stop_depth`, false), there: ['stop-depth', 'shoulder'].some((a) => state.job.get(`${half}@${a}`) !== '')});
    return steps;
  });
}

export const MACHINE = /** @type {Record<string, string[]>} */ ({
  trailed: ['pto-height', 'pin-behind', 'pin-height', 'input-behind', 'input-height', 'input-left', 'input-tilt'],
  mounted: ['pto-height', 'lower-pivot-behind', 'lower-pivot-height', 'lower-link', 'top-pivot-behind', 'top-pivot-height', 'top-link', 'mast', 'input-behind', 'input-above', 'input-tilt'],
});
export const RANGE = /** @type {Record<string, string[]>} */ ({trailed: ['turn', 'pitch', 'roll'], mounted: ['lowest', 'highest']});
export const machine_of = (/** @type {string} */ fit) => Object.keys(MACHINE).find((kind) => state.job.element(`${fit}/${kind}`)) || '';

/** Some length of this fit was read with the tape.
 * @param {string} fit */
const taped = (fit) => !machine_of(fit) || ['shortest', ...['working', 'turning', 'standing'].map((when) => `longest[when=${when}]`)].some((each) => state.job.get(`${fit}/${each}@length`) !== '');
/** The lengths run from one of two crosses: which one is never taken from the closed length.
 * @param {string} fit */
export const asks_cross = (fit) => wide_anywhere() && state.job.get(`${fit}@between`) !== 'grooves' && taped(fit);

/** @param {string} fit @returns {Step[]} */
const on_machine = (fit) => [...(asks_cross(fit) ? [step(`${fit}@reference`, 'fit_reference', true)] : []), ...(machine_of(fit) ? of_machine(fit, machine_of(fit)) : by_tape(fit))];

/** @param {string} fit @returns {Step[]} */
const by_tape = (fit) => [step(`${fit}/shortest@length`, 'shortest', true), {...step(`${fit}/longest[when=working]@length`, 'longest_working', false), aside: true},
  step(`${fit}/longest[when=turning]@length`, 'longest_turning', true), {...step(`${fit}/longest[when=standing]@length`, 'longest_standing', false), aside: true}];

/** @param {string} fit @param {string} kind */
function of_machine(fit, kind) {
  const word = (/** @type {string} */ a) => `${kind}_${a.replace(/-/g, '_')}`;
  const steps = MACHINE[kind].map((a) => step(`${fit}/${kind}@${a}`, word(a), true));
  const ranges = ['working', 'turning', 'standing'].filter((when) => when === 'turning' || RANGE[kind].some((a) => state.job.get(`${fit}/${kind}/${when}@${a}`)));
  if (state.job.get(`${fit}/longest[when=turning]@length`) && !state.job.element(`${fit}/${kind}/turning`)) ranges.splice(ranges.indexOf('turning'), 1);
  return steps.concat(ranges.flatMap((when) => RANGE[kind].map((a) => step(`${fit}/${kind}/${when}@${a}`, word(a), true))));
}

/** @returns {Step[]} */
export function steps() {
  const fits = [...Array(Math.max(1, state.job.count('', 'fit'))).keys()].flatMap((n) => on_machine(`fit[${n + 1}]`));
  const others = {...step('for@other-tractors', 'other_tractors', true), there: state.job.get('for@other-tractors') !== '' || state.job.element('for/other-tractor') !== null || state.job.count('', 'fit') > 1};
  return [...to_measure_again(), ...together(), ...parted(), ...fits, others];
}
const to_measure_again = () => again().map((path) => ({...step(path, box_of(path)?.word || (path.endsWith('@reference') ? 'reference' : 'again'), true), there: false, again: true}));

const there = (/** @type {Step} */ one) => !one.again && (one.there || state.job.get(one.path) !== '');

/** The first that is missing and was not passed over; null where all is there. */
export const next = () => steps().find((one) => !there(one) && !one.aside && !state.skipped.has(one.path)) || null;
/** The next that is empty after this one, in the order of the form; undefined where this one has no place in it.
 * @param {string} path */
export function after(path) {
  const all = steps(), at = all.findIndex((one) => !one.again && one.path === path);
  return at < 0 ? undefined : all.slice(at + 1).find((one) => !there(one)) || null;
}
/** All that an answer needs is typed. */
export const enough = () => steps().every((one) => !one.must || there(one));
