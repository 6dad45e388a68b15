// How a cmi5 course starts the page, and the requests that go to it (cmi5, Quartz, 1st edition, sections 8, 10 and 11;
// Experience API 1.0.3).
import { say } from "../scripts/words.js";

const names = ["endpoint", "fetch", "actor", "registration", "activityId"];

/** What the course has put behind the page's address; undefined where it lacks something. */
export function launched() {
  const query = new URLSearchParams(location.search);
  const given = Object.fromEntries(names.map((name) => [name, query.get(name)?.trim()]));
  try {
    if (names.some((name) => !given[name])) return undefined;
    const agent = JSON.parse(given.actor), endpoint = new URL(given.endpoint.replace(/\/*$/, "/")), fetch = new URL(given.fetch);
    if ([endpoint, fetch].some(({ protocol }) => !/^https?:$/.test(protocol))) return undefined;
    return { ...given, agent, endpoint: endpoint.href, fetch: fetch.href };
  } catch {
    return undefined;
  }
}

// An address as a content security policy names it: without what follows the path.
const source = (address) => address.split(/[?#]/)[0].replace(/[;,]/g, encodeURIComponent);

/** From here on the page may ask these addresses and no others: a policy that is added can only narrow the one there is. */
export function narrow({ endpoint, fetch }) {
  const policy = document.createElement("meta");
  policy.httpEquiv = "Content-Security-Policy";
  policy.content = `connect-src ${source(endpoint)} ${source(fetch)}`;
  document.head.append(policy);
}

const refusal = (what, why) => new Error(say("The course refused {what}: {why}.", { what, why }));

/** The token that the course gives once. */
export async function token({ fetch: address }) {
  const answer = await fetch(address, { method: "POST", credentials: "omit" }).catch((error) => { throw refusal("fetch", error.message); });
  const given = await answer.json().catch(() => ({}));
  if (given["auth-token"]) return given["auth-token"];
  if (given["error-code"] === "1") throw new Error(say("This start of the exercises has been used. Open them from the course again."));
  throw refusal("fetch", given["error-text"] ?? String(answer.status));
}

/** What sends requests to the course's endpoint. A document that is not there is undefined. */
export function client({ endpoint, agent, registration, activityId }, auth) {
  const headers = { Authorization: "Basic " + auth, "X-Experience-API-Version": "1.0.3" };
  async function send(what, path, query, { method = "GET", body, missing = [], keepalive } = {}) {
    const address = endpoint + path + "?" + new URLSearchParams(query);
    const type = body ? { "Content-Type": "application/json" } : {};
    const answer = await fetch(address, { method, credentials: "omit", keepalive, headers: { ...headers, ...type }, body: body && JSON.stringify(body) })
      .catch((error) => { throw refusal(what, error.message); });
    if (missing.includes(answer.status)) return undefined;
    if (!answer.ok) throw refusal(what, String(answer.status));
    return method === "GET" ? answer.json() : undefined;
  }
  const who = JSON.stringify(agent);
  const state = (stateId) => ({ activityId, agent: who, registration, stateId });
  return {
    launchData: () => send("LMS.LaunchData", "activities/state", state("LMS.LaunchData")),
    preferences: () => send("cmi5LearnerPreferences", "agents/profile", { agent: who, profileId: "cmi5LearnerPreferences" }, { missing: [403, 404] }),
    kept: (id) => send(id, "activities/state", state(id), { missing: [404] }),
    keep: (id, body) => send(id, "activities/state", state(id), { method: "PUT", body }),
    // 409: there is a statement with this id already.
    statement: (body, keepalive) => send(body.verb.display.en, "statements", { statementId: body.id }, { method: "PUT", body, keepalive, missing: [409] }),
  };
}
