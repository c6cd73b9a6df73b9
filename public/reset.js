// The page that still works when the app does not: counts what is stored, writes it out as text, and takes the app's
// own files off the device. It opens the databases as they are, whatever their version, and writes nothing into them.
const DATABASES = ['tussock', 'tussock-example'];
const NAMES = { tussock: 'Your records', 'tussock-example': 'Example yard' };
const PREFIX = 'tussock-';
const BATCH = 500; // rows held in memory at once
const LARGE = { pictures: 10 }; // and of stores whose rows are large
const PART = 4_000_000; // characters of text that are held before they are handed over to a blob

const at = (id) => document.getElementById(id);
const say = (text) => { at('said').textContent = text; };

/** A request as a promise. */
const done = (request) => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

/** The database as it stands, or null where there is none: opening must not make an empty one. */
function open(name) {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    request.onupgradeneeded = () => request.transaction.abort(); // only a database that was not there asks for this
    request.onsuccess = () => {
      request.result.onversionchange = () => request.result.close();
      resolve(request.result);
    };
    request.onerror = (event) => {
      if (request.error?.name !== 'AbortError') return reject(request.error);
      event.preventDefault();
      return resolve(null);
    };
  });
}

/** Every row of a store in batches by key, so that a hundred thousand rows do not stand in memory as objects. */
async function* rows(database, store) {
  const batch = LARGE[store] ?? BATCH;
  let after = null;
  for (;;) {
    const range = after === null ? null : IDBKeyRange.lowerBound(after, true);
    const source = database.transaction(store).objectStore(store);
    const [keys, values] = await Promise.all([done(source.getAllKeys(range, batch)), done(source.getAll(range, batch))]);
    for (const [i, key] of keys.entries()) yield { key, value: values[i] };
    if (keys.length < batch) return;
    after = keys.at(-1);
  }
}

/** Bytes have no place in JSON: an ArrayBuffer (a photograph) or a Blob is written as base64 beside its kind. */
async function plain(value) {
  if (value instanceof Blob) return { blob: value.type, base64: base64(await value.arrayBuffer()) };
  if (value instanceof ArrayBuffer) return { bytes: value.byteLength, base64: base64(value) };
  if (ArrayBuffer.isView(value)) return plain(value.buffer.slice(value.byteOffset, value.byteOffset + value.byteLength));
  if (Array.isArray(value)) return Promise.all(value.map(plain));
  if (value instanceof Date || value === null || typeof value !== 'object') return value;
  return Object.fromEntries(await Promise.all(Object.entries(value).map(async ([name, held]) => [name, await plain(held)])));
}

function base64(buffer) {
  const bytes = new Uint8Array(buffer);
  let text = '';
  for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(text);
}

/** One JSON value a line: first what this is, then {database, store, key, row} for every row of every store. */
async function dump() {
  const now = new Date();
  // Pictures make much text: what is written is handed over to a blob, which a browser can put on the disk.
  const parts = [];
  let text = `${JSON.stringify({ tussock: 'dump', v: 1, at: now.toISOString(), from: location.href })}\n`;
  let count = 0;
  for (const name of DATABASES) {
    const database = await open(name);
    if (!database) continue;
    for (const store of database.objectStoreNames) {
      for await (const { key, value } of rows(database, store)) {
        text += `${JSON.stringify({ database: name, store, key: await plain(key), row: await plain(value) })}\n`;
        count += 1;
        if (text.length < PART) continue;
        parts.push(new Blob([text]));
        text = '';
      }
    }
    database.close();
  }
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
  return { count, file: new File([...parts, text], `tussock-copy-${day}.txt`, { type: 'text/plain' }) };
}

async function list() {
  const lines = [];
  for (const name of DATABASES) {
    const database = await open(name);
    if (!database) continue;
    const counts = await Promise.all([...database.objectStoreNames].map(async (store) =>
      `${store} ${await done(database.transaction(store).objectStore(store).count())}`));
    database.close();
    lines.push([NAMES[name], counts.join(', ') || 'empty']);
  }
  at('databases').replaceChildren(...(lines.length ? lines : [['Nothing is stored', '']]).map(([name, counts]) => {
    const row = document.createElement('p');
    row.className = 'row';
    for (const [cls, text] of [['row-name', name], ['row-value', counts]]) {
      const span = document.createElement('span');
      span.className = cls;
      span.textContent = text;
      row.append(span);
    }
    const item = document.createElement('li');
    item.append(row);
    return item;
  }));
}

async function copy() {
  say('Reading');
  const { count, file } = await dump();
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: file.name });
      say(`${count} rows handed over as ${file.name}.`);
      return;
    } catch (problem) {
      if (problem.name === 'AbortError') { say('Not shared. Nothing is lost; try again when you like.'); return; }
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  say(`${count} rows written to ${file.name}. Look in the downloads before you go on.`);
}

async function remove() {
  const scope = new URL('./', location.href).href;
  const workers = (await navigator.serviceWorker?.getRegistrations()) ?? [];
  await Promise.all(workers.filter((worker) => worker.scope === scope).map((worker) => worker.unregister()));
  const names = 'caches' in self ? await caches.keys() : [];
  await Promise.all(names.filter((name) => name.startsWith(PREFIX)).map((name) => caches.delete(name)));
  location.replace('./');
}

const told = (act) => () => act().catch((problem) => say(`That did not work: ${problem.message || problem}. Nothing was changed in your records.`));
at('copy').addEventListener('click', told(copy));
at('remove').addEventListener('click', told(remove));
told(list)();
