// What else would serve, where this shaft does not or is gone.
import {Job} from './job.js';
import {in_units, post} from './server.js';
import {button, edited, id, make, state, t} from './state.js';
import {on_open, show_view} from './views.js';

/** The job with only the ends of its shaft. */
function ends_only() {
  const job = new Job(state.job.text());
  for (const path of ['shaft/closed', 'shaft/half[tube=inner]', 'shaft/half[tube=outer]', 'shaft/condition', 'shaft/measures']) job.remove(path);
  for (const attribute of ['series', 'shape', 'spacing', 'inner-tube', 'built', 'number']) job.set(`shaft@${attribute}`, null);
  for (const side of ['tractor', 'implement']) for (const a of ['spacing', 'cross-to-groove']) job.set(`shaft/end[side=${side}]@${a}`, null);
  return job;
}

/** @param {any} one */
function choice(one) {
  const cuts = Object.values(one.cuts_mm || {}).filter(Boolean);
  const says = one.result === 'as-is' ? t('as_it_is') : one.result === 'cut' ? t('cut_by', String(cuts.length ? Math.max(.../** @type {number[]} */ (cuts)) : one.cut_mm)) : t('to_order');
  const price = one.price ? ` · ${one.price} ${state.catalogue.currency || ''}` : '';
  const take = button(t('take_this'), () => {
    state.job.set('shaft@series', one.series);
    state.job.set('shaft@inner-tube', state.job.get('shaft@inner-tube') || 'implement');
    for (const path of ['shaft@shape', 'shaft@spacing', 'shaft@built', 'shaft@number']) state.job.set(path, null);
    for (const path of ['shaft/half[tube=inner]', 'shaft/half[tube=outer]', 'shaft/condition']) state.job.remove(path);
    for (const side of ['tractor', 'implement']) state.job.set(`shaft/end[side=${side}]@joint`, one.joints[side]);
    state.job.set('shaft/closed@length', `${one.closed_mm} mm`);
    state.job.set('shaft/closed@reference', one.reference || null);
    edited();
    show_view('form');
  });
  return make('li', {}, make('p', {}, make('strong', {}, says), ` · ${one.series} · ${t('closed')} ${one.closed_mm} mm${price}`), take);
}

async function ask() {
  id('choices').replaceChildren(make('p', {}, t('asking')));
  const reply = await post(`/choose?${in_units()}`, ends_only().text());
  if (reply.status !== 200) {
    const faults = reply.status === 422 ? reply.json.faults.map((/** @type {any} */ one) => make('p', {class: 'fault'}, one.says)) : [];
    return id('choices').replaceChildren(make('p', {}, t(reply.status ? 'cannot_choose' : 'offline')), ...faults);
  }
  const serving = reply.json.choices.filter((/** @type {any} */ one) => one.result === 'as-is' || one.result === 'cut');
  id('choices').replaceChildren(make('p', {class: 'big'}, t(serving.length ? 'would_serve' : 'none_serves', String(serving.length))), make('ol', {}, ...serving.map(choice)));
}

export function build_choose() { on_open('choose', () => void ask()); }
