// The run-time environment of SCORM 1.2 for tests, from the standard: ADL, SCORM Run-Time Environment 1.2 (2001), sections
// 3.3 (API) and 3.4 (data model). It holds to what may be called when, to the data types and vocabularies, and to the error
// codes, and notes every call.
"use strict";

const decimal = (s) => /^-?\d{0,3}(\.\d+)?$/.test(s) && s !== "" && s !== "-";
const inScore = (s) => s === "" || (decimal(s) && Number(s) >= 0 && Number(s) <= 100); // "a normalized value between 0 and 100"
const timespan = (s) => /^\d{2,4}:\d{2}:\d{2}(\.\d{1,2})?$/.test(s); // CMITimespan
const one = (...words) => (s) => words.includes(s);
const readOnly = (value) => ({ read: true, value });

// The elements that every course must have, and of the optional ones those that a test asks for.
const model = (have) => ({
  "cmi.core.student_id": readOnly("learner-1"), "cmi.core.student_name": readOnly("Learner, A."), "cmi.core.credit": readOnly("credit"),
  "cmi.core.entry": readOnly("ab-initio"), "cmi.core.total_time": readOnly("0000:00:00"), "cmi.launch_data": readOnly(""),
  "cmi.core.lesson_location": { read: true, type: (s) => s.length <= 255, value: "" },
  "cmi.core.lesson_status": { read: true, type: one("passed", "completed", "failed", "incomplete", "browsed"), value: "not attempted" },
  "cmi.core.score.raw": { read: true, type: inScore, value: "" }, "cmi.core.score.min": { read: true, type: inScore, value: "" }, "cmi.core.score.max": { read: true, type: inScore, value: "" },
  "cmi.core.exit": { type: one("time-out", "suspend", "logout", ""), value: "" },
  "cmi.core.session_time": { type: timespan, value: "" },
  "cmi.suspend_data": { read: true, type: (s) => s.length <= 4096, value: "" },
  ...(have.mastery ? { "cmi.student_data.mastery_score": readOnly(have.mastery) } : {}),
  ...(have.mode ? { "cmi.core.lesson_mode": readOnly(have.mode) } : {}),
});

const words = { 0: "No error", 101: "General exception", 201: "Invalid argument error", 301: "Not initialized", 401: "Not implemented error", 402: "Invalid set value, element is a keyword", 403: "Element is read only", 404: "Element is write only", 405: "Incorrect data type" };

globalThis.course = {
  have: {}, data: undefined, state: "new", error: "0", calls: [], committed: undefined, deaf: "",

  answer(call, args, result, error) {
    this.error = String(error);
    this.calls.push([call, ...args, String(result), this.error]);
    return String(result);
  },

  start(have = {}, levels = 0) {
    document.body.replaceChildren(); // the page before takes its leave
    this.have = have;
    const before = this.data;
    this.data = model(have);
    if (before) {
      for (const name of ["cmi.suspend_data", "cmi.core.lesson_status", "cmi.core.score.raw", "cmi.core.lesson_location"]) this.data[name].value = before[name].value;
      this.data["cmi.core.entry"].value = before["cmi.core.exit"].value === "suspend" ? "resume" : "";
    }
    this.state = "new";
    this.calls = [];
    let inside = document;
    for (let i = 0; i < levels; i++) { // frames between the course and the exercises
      const frame = inside.createElement("iframe");
      inside.body.append(frame);
      inside = frame.contentDocument;
    }
    const frame = inside.createElement("iframe");
    frame.id = "sco";
    frame.width = "390";
    frame.height = "800";
    frame.src = new URL("package/index.html", location.href).href;
    inside.body.append(frame);
    globalThis.sco = () => frame.contentDocument;
  },

  end() { document.body.replaceChildren(); },
};

globalThis.API = {
  LMSInitialize(text) {
    if (text !== "") return course.answer("LMSInitialize", [text], false, 201);
    if (course.state !== "new" || course.deaf === "LMSInitialize") return course.answer("LMSInitialize", [], false, 101);
    course.state = "running";
    return course.answer("LMSInitialize", [], true, 0);
  },
  LMSFinish(text) {
    if (text !== "") return course.answer("LMSFinish", [text], false, 201);
    if (course.state !== "running") return course.answer("LMSFinish", [], false, 301);
    if (course.deaf === "LMSFinish") return course.answer("LMSFinish", [], false, 101);
    course.state = "finished";
    const raw = course.data["cmi.core.score.raw"].value;
    // With a mastery score the course judges by itself (3.4.4, cmi.core.lesson_status).
    if (course.have.mastery && raw !== "") course.data["cmi.core.lesson_status"].value = Number(raw) >= Number(course.have.mastery) ? "passed" : "failed";
    return course.answer("LMSFinish", [], true, 0);
  },
  LMSGetValue(element) {
    if (course.state !== "running") return course.answer("LMSGetValue", [element], "", 301);
    const e = course.data[element];
    if (!e) return course.answer("LMSGetValue", [element], "", 401);
    if (!e.read) return course.answer("LMSGetValue", [element], "", 404);
    return course.answer("LMSGetValue", [element], e.value, 0);
  },
  LMSSetValue(element, text) {
    const args = [element, text];
    if (course.state !== "running") return course.answer("LMSSetValue", args, false, 301);
    if (element === course.deaf) return course.answer("LMSSetValue", args, false, 101);
    if (/\._(children|count|version)$/.test(element)) return course.answer("LMSSetValue", args, false, 402);
    const e = course.data[element];
    if (!e) return course.answer("LMSSetValue", args, false, 401);
    if (!e.type) return course.answer("LMSSetValue", args, false, 403);
    if (typeof text !== "string" || !e.type(text)) return course.answer("LMSSetValue", args, false, 405);
    e.value = text;
    return course.answer("LMSSetValue", args, true, 0);
  },
  LMSCommit(text) {
    if (text !== "") return course.answer("LMSCommit", [text], false, 201);
    if (course.state !== "running") return course.answer("LMSCommit", [], false, 301);
    course.committed = Object.fromEntries(Object.entries(course.data).map(([name, e]) => [name, e.value]));
    return course.answer("LMSCommit", [], true, 0);
  },
  LMSGetLastError: () => course.error,
  LMSGetErrorString: (code) => words[code] ?? "",
  LMSGetDiagnostic: () => "",
};
