// Papers out, the job file out and in.
import {Job} from './job.js';
import {rebuild_fits} from './form.js';
import {on_paper, post} from './server.js';
import {edited, id, on_edit, state, t} from './state.js';
import {show_view} from './views.js';

/** A line that is read out, beside what was touched; it goes with the next.
 * @param {string} says @param {HTMLElement} [beside] */
export function say(says, beside) {
  const line = id('said');
  if (beside) (beside.closest('.row') || beside).after(line);
  line.textContent = says;
  if (says) line.scrollIntoView({block: 'nearest'});
}

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

/** The button's name is the document's route.
 * @param {string} what @param {string} ending @param {string} [body] @param {string} [more] */
export async function document_out(what, ending, body = state.job.text(), more = '') {
  say(t('making'), id(what));
  const reply = await post(`/${what}?${on_paper()}${more}`, body);
  if (reply.status === 200 && reply.blob) {
    const name = reply.name || `${state.job.get('@order')}-${what}.${ending}`;
    hand_out(reply.blob, name);
    say(t('made', name));
  } else say(reply.status === 0 ? t('offline') : (reply.json && reply.json.says) || t('not_made'));
}

async function print() {
  say(t('making'), id('print'));
  const reply = await post(`/print?${on_paper()}&what=cut-sheet`, state.job.text());
  say((reply.json && reply.json.says) || t(reply.status === 200 ? 'printed' : reply.status === 0 ? 'offline' : 'not_made'));
}

export function job_out() {
  const name = `${state.job.get('@order') || 'job'}.xml`;
  hand_out(new Blob([state.job.text()], {type: 'application/xml'}), name);
  say(t('made', name), id('job-out'));
}

/** @param {string} xml */
export function open_job(xml) {
  const job = new Job(xml);
  if (!job.readable) return void say(t('no_job_file'), id('jobs'));
  say('');
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
  on_edit(() => say('')); // what was made was made of what stood there before
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
