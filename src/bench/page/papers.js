// Papers out, the job file out and in.
import {Job} from './job.js';
import {rebuild_fits} from './form.js';
import {post} from './server.js';
import {edited, id, state, t} from './state.js';
import {show_view} from './views.js';

/** A line that is read out; it goes with the next.
 * @param {string} says */
export function say(says) { id('said').textContent = says; }

/** @param {Blob} blob @param {string} name */
function hand_out(blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

const query = (/** @type {string} */ more = '') => `?units=${state.job.root.getAttribute('units') || 'mm'}&paper=${state.catalogue.paper || 'a4'}${more}`;

/** @param {string} what a document's route @param {string} ending @param {string} [body] @param {string} [more] */
export async function document_out(what, ending, body = state.job.text(), more = '') {
  say(t('making'));
  const reply = await post(`/${what}${query(more)}`, body);
  if (reply.status === 200 && reply.blob) {
    const name = reply.name || `${state.job.get('@order')}-${what}.${ending}`;
    hand_out(reply.blob, name);
    say(t('made', name));
  } else say(reply.status === 0 ? t('offline') : (reply.json && reply.json.says) || t('not_made'));
}

async function print() {
  say(t('making'));
  const reply = await post('/print?what=cut-sheet', state.job.text());
  say((reply.json && reply.json.says) || t(reply.status === 200 ? 'printed' : reply.status === 0 ? 'offline' : 'not_made'));
}

export function job_out() {
  const name = `${state.job.get('@order') || 'job'}.xml`;
  hand_out(new Blob([state.job.text()], {type: 'application/xml'}), name);
  say(t('made', name));
}

/** @param {string} xml */
export function open_job(xml) {
  const job = new Job(xml);
  if (!job.readable) return void say(t('no_job_file'));
  state.job = job;
  state.view = null;
  state.faults = [];
  state.saw = {};
  state.unknown = !job.get('shaft@series') && job.get('shaft@shape') !== '';
  show_view('form');
  state.names = 0;
  state.skipped.clear();
  rebuild_fits();
  edited();
}

export function build_papers() {
  id('cut-sheet').addEventListener('click', () => document_out('cut-sheet', 'pdf'));
  id('tag').addEventListener('click', () => document_out('tag', 'pdf'));
  id('work-order').addEventListener('click', () => document_out('work-order', 'xlsx'));
  id('print').addEventListener('click', print);
  id('job-out').addEventListener('click', job_out);
  const file = /** @type {HTMLInputElement} */ (id('job-in'));
  file.addEventListener('change', async () => {
    if (file.files && file.files[0]) open_job(await file.files[0].text());
    file.value = '';
  });
}
