// What is entered at the bench is kept on the phone until the program on the maker's machine has it, and is sent once:
// each entry carries a mark of its own, and one that comes twice is entered once.
const shelf = 'duskwright-outbox';
const told = document.getElementById('outbox');
const refused = document.getElementById('refused');
const patience = 4000;
const longestEdge = 1600;
let sending = false;
let shutOut = false;

const waiting = () => JSON.parse(localStorage.getItem(shelf) ?? '[]');
const keep = entries => { localStorage.setItem(shelf, JSON.stringify(entries)); show(); };
const mark = () => [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, '0')).join('');

function refuse(why) {
  refused.hidden = false;
  refused.textContent = why;
  document.querySelectorAll('form.kept').forEach(f => f.classList.remove('kept'));
}

// Photographs are too large for the shelf: they lie beside it, by the mark of their entry.
function photographs(mode, work) {
  return new Promise((done, failed) => {
    const opening = indexedDB.open(shelf, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('photographs');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const transaction = opening.result.transaction('photographs', mode);
      const asked = work(transaction.objectStore('photographs'));
      transaction.oncomplete = () => { opening.result.close(); done(asked.result); };
      transaction.onabort = () => { opening.result.close(); failed(transaction.error); };
    };
  });
}

// Smaller, and without what a camera writes beside the picture: where and when.
async function smaller(file) {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, longestEdge / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise(done => canvas.toBlob(done, 'image/jpeg', 0.85));
}

function localTime() {
  const now = new Date();
  return new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 19);
}

function show() {
  const count = waiting().length;
  told.hidden = count === 0;
  const when = shutOut ? 'sent once it is in again. Load this page anew and type a code from the desk.' : 'sent as soon as the connection is back.';
  told.textContent = count === 0 ? '' : `${count === 1 ? 'One entry is' : `${count} entries are`} kept on this phone and ${when}`;
}

async function body(entry) {
  const { pictured, ...fields } = entry;
  if (!pictured) {
    return new URLSearchParams(fields);
  }

  const form = new FormData();
  Object.entries(fields).forEach(([name, value]) => form.append(name, value));
  const photograph = await photographs('readonly', store => store.get(entry.key));
  if (photograph) {
    form.append('photo', photograph, 'photograph.jpg');
  }

  return form;
}

async function send() {
  if (sending) {
    return;
  }

  sending = true;
  let sent = 0;
  try {
    for (let next = waiting()[0]; next; next = waiting()[0]) {
      const answer = await fetch('/bench/entries', { method: 'POST', body: await body(next) });
      // The door at the desk was shut meanwhile and knows this phone no more: nothing was read, so nothing is lost.
      shutOut = answer.status === 403;
      if (shutOut || answer.status >= 500) {
        show();
        break;
      }

      if (answer.ok) {
        sent++;
      } else {
        refuse(await answer.text());
      }

      keep(waiting().filter(e => e.key !== next.key));
      if (next.pictured) {
        await photographs('readwrite', store => store.delete(next.key));
      }
    }
  } catch (lost) {
    // The connection is away: the entry stays and is tried again.
    if (!(lost instanceof TypeError)) {
      throw lost;
    }
  } finally {
    sending = false;
  }

  if (sent > 0 && refused.hidden) {
    location.assign(location.pathname);
  }
}

async function enter(fields) {
  const entry = { ...fields, key: mark(), at: localTime() };
  const { photo } = entry;
  delete entry.photo;
  if (photo instanceof File && photo.size > 0) {
    try {
      const picture = await smaller(photo);
      await photographs('readwrite', store => store.put(picture, entry.key));
      entry.pictured = true;
    } catch (unkept) {
      refuse(unkept.name === 'QuotaExceededError'
        ? 'This phone has no room for the photograph. Come back into reach of the program, and it is sent and taken off the phone.'
        : 'This is not a picture that the phone can read. Take a photograph, or choose a PNG or JPEG picture.');
      return;
    }
  }

  keep([...waiting(), entry]);
  send();
}

document.addEventListener('submit', event => {
  const form = event.target;
  if (form.getAttribute('action') !== '/bench/entries') {
    return;
  }

  event.preventDefault();
  if (form.classList.contains('kept')) {
    return;
  }

  refused.hidden = true;
  form.classList.add('kept');
  enter(Object.fromEntries(new FormData(form, event.submitter)));
});

// A photograph is kept as soon as it is taken.
document.addEventListener('change', event => {
  if (event.target.type === 'file') {
    event.target.form.requestSubmit();
  }
});

addEventListener('online', send);
setInterval(() => { if (waiting().length > 0) { send(); } }, patience);
show();
send();
