// What is entered at the bench is kept on the phone until the program on the maker's machine has it, and is sent once:
// each entry carries a mark of its own, and one that comes twice is entered once.
const shelf = 'duskwright-outbox';
const told = document.getElementById('outbox');
const refused = document.getElementById('refused');
const patience = 4000;
let sending = false;

const waiting = () => JSON.parse(localStorage.getItem(shelf) ?? '[]');
const keep = entries => { localStorage.setItem(shelf, JSON.stringify(entries)); show(); };
const mark = () => [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, '0')).join('');

function localTime() {
  const now = new Date();
  return new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 19);
}

function show() {
  const count = waiting().length;
  told.hidden = count === 0;
  told.textContent = count === 0 ? '' : `${count === 1 ? 'One entry is' : `${count} entries are`} kept on this phone and sent as soon as the connection is back.`;
}

async function send() {
  if (sending) {
    return;
  }

  sending = true;
  let sent = 0;
  try {
    for (let next = waiting()[0]; next; next = waiting()[0]) {
      const answer = await fetch('/bench/entries', { method: 'POST', body: new URLSearchParams(next) });
      if (answer.status >= 500) {
        break;
      }

      if (answer.ok) {
        sent++;
      } else {
        refused.hidden = false;
        refused.textContent = await answer.text();
        document.querySelectorAll('form.kept').forEach(f => f.classList.remove('kept'));
      }

      keep(waiting().filter(e => e.key !== next.key));
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

document.addEventListener('submit', event => {
  const form = event.target;
  if (form.getAttribute('action') !== '/bench/entries') {
    return;
  }

  event.preventDefault();
  if (form.classList.contains('kept')) {
    return;
  }

  const fields = Object.fromEntries(new FormData(form, event.submitter));
  refused.hidden = true;
  keep([...waiting(), { ...fields, key: mark(), at: localTime() }]);
  form.classList.add('kept');
  send();
});

addEventListener('online', send);
setInterval(() => { if (waiting().length > 0) { send(); } }, patience);
show();
send();
