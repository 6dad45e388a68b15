// Records kept in the browser: profiles, timers, the log. Where storage is refused they are kept in memory, and kept()
// says so. A record is a plain object with an id; each write gives it the next rev, and a write that starts from
// an older rev than the stored one is refused, so that two tabs never overwrite each other unseen.

import { notify } from "./notices.js";
import { say } from "./words.js";

const name = "spraywright";
const version = 2;
const kinds = { profile: ["kind"], timer: [], mix: ["day"], month: [] }; // the stores and what they are searched by

// The totals of a month are worked out from its mixes. A changed mix turns its month's record into a newer, empty one in
// the same step, so that totals read before the change cannot be written after it.
const monthOf = (record) => record.day.slice(0, 7);

let opened;
const memory = new Map(Object.keys(kinds).map((kind) => [kind, new Map()]));
const watchers = new Set();
const channel = globalThis.BroadcastChannel && new BroadcastChannel("spraywright:records");
if (channel) channel.onmessage = ({ data }) => tell(data);

/** Another tab has changed the record since it was read here. */
export class Conflict extends Error {
  constructor(record) {
    super(record.name ? say("Another tab has changed “{name}” meanwhile. Nothing was kept.", { name: record.name }) : say("Another tab has changed this meanwhile. Nothing was kept."));
  }
}

/** A newer page has changed how records are kept, and this one can neither read nor write them any more. */
export class Outdated extends Error {
  constructor() {
    super(say("This page is older than the site in another tab: reload this page. Nothing was kept."));
  }
}

/** What to say of a failure: how a page that is too old is put right, or else the words given. */
export const told = (error, otherwise) => (error instanceof Outdated ? error.message : otherwise);

const done = (request) => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

// Everything asked of an old page fails from then on; the person is told once, in one line.
addEventListener("unhandledrejection", (event) => event.reason instanceof Outdated && event.preventDefault());

function outdated() {
  const error = new Outdated();
  opened = Promise.reject(error);
  opened.catch(() => {});
  notify(error.message, { [say("Reload")]: () => location.reload(), [say("Close")]: undefined });
  return opened;
}

function open() {
  opened ??= new Promise((resolve) => {
    let request;
    try {
      request = indexedDB.open(name, version);
    } catch {
      return resolve(undefined);
    }
    request.onupgradeneeded = () => {
      for (const [kind, keys] of Object.entries(kinds)) {
        if (request.result.objectStoreNames.contains(kind)) continue;
        const store = request.result.createObjectStore(kind, { keyPath: "id" });
        for (const key of keys) store.createIndex(key, key);
      }
    };
    request.onsuccess = () => {
      request.result.onversionchange = () => { // a newer page may upgrade
        request.result.close();
        outdated();
      };
      request.result.onclose = () => { opened = undefined; };
      resolve(request.result);
    };
    request.onerror = () => resolve(request.error?.name === "VersionError" ? outdated() : undefined);
    request.onblocked = () => resolve(undefined);
  });
  return opened;
}

/** Whether records outlive the page. */
export const kept = () => open().then(Boolean, () => true);

/** Every record of a kind, or those whose key lies between two values, both included; most limits how many. */
export async function all(kind, key, from, to, most) {
  const d = await open();
  if (!d) return [...memory.get(kind).values()].filter((r) => !key || (r[key] >= from && r[key] <= to)).slice(0, most).map((r) => structuredClone(r));
  const store = d.transaction(kind).objectStore(kind);
  return done(key ? store.index(key).getAll(IDBKeyRange.bound(from, to), most) : store.getAll(null, most));
}

/** One record, or undefined. */
export async function get(kind, id) {
  const d = await open();
  if (!d) return structuredClone(memory.get(kind).get(id));
  return done(d.transaction(kind).objectStore(kind).get(id));
}

/** Writes records, all or none, and returns them as stored. It rejects with a Conflict, or as storage fails. */
export async function put(kind, ...records) {
  return write(kind, async (find, set) => Promise.all(records.map(async (record) => {
    const old = await find(record.id);
    if (old && old.rev !== record.rev) throw new Conflict(record);
    const next = { ...record, rev: (old?.rev ?? record.rev ?? 0) + 1, at: Date.now() }; // one that comes back counts on
    await set(next);
    return next;
  })));
}

/** Removes records. */
export const remove = (kind, ...ids) => write(kind, async (_, __, drop) => Promise.all(ids.map(drop)));

async function write(kind, change) {
  const d = await open();
  let result;
  if (d) {
    const transaction = d.transaction(kind === "mix" ? ["mix", "month"] : kind, "readwrite", { durability: "strict" });
    const store = transaction.objectStore(kind), months = kind === "mix" && transaction.objectStore("month");
    const find = (id) => done(store.get(id));
    const stale = async (record) => record && months && months.put({ id: monthOf(record), rev: ((await done(months.get(monthOf(record))))?.rev ?? 0) + 1 });
    const finished = new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error ?? new Error("aborted"));
    });
    finished.catch(() => {}); // told below
    try {
      result = await change(find, async (r) => {
        await stale(await find(r.id));
        await stale(r);
        store.put(r);
      }, async (id) => {
        await stale(await find(id));
        store.delete(id);
      });
    } catch (error) {
      transaction.abort();
      throw error;
    }
    await finished;
    dispatchEvent(new Event("kept")); // something is worth asking the browser to keep
  } else {
    const m = memory.get(kind), months = memory.get("month");
    const stale = (r) => r && kind === "mix" && months.set(monthOf(r), { id: monthOf(r), rev: (months.get(monthOf(r))?.rev ?? 0) + 1 });
    const steps = []; // taken once none of them can fail
    result = await change(async (id) => m.get(id), (r) => steps.push(() => {
      stale(m.get(r.id));
      stale(r);
      m.set(r.id, structuredClone(r));
    }), (id) => steps.push(() => {
      stale(m.get(id));
      m.delete(id);
    }));
    for (const step of steps) step();
  }
  tell(kind);
  channel?.postMessage(kind);
  return result;
}

/** Calls f with the kind whenever records have changed, here or in another tab. */
export function watch(f) {
  watchers.add(f);
  return () => watchers.delete(f);
}

function tell(kind) {
  for (const f of watchers) f(kind);
}

/** A fresh id; later ones sort after earlier ones. */
export const freshId = () => Date.now().toString(36).padStart(9, "0") + Math.random().toString(36).slice(2, 8);

/** The values that a key takes in records of a kind, in order, each once. */
export async function valuesOf(kind, key) {
  const d = await open();
  if (!d) return [...new Set([...memory.get(kind).values()].map((r) => r[key]))].sort();
  const found = [];
  const request = d.transaction(kind).objectStore(kind).index(key).openKeyCursor(null, "nextunique");
  return new Promise((resolve, reject) => {
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      if (!request.result) return resolve(found);
      found.push(request.result.key);
      request.result.continue();
    };
  });
}
