// Takes in calendar files one after the other, as a calendar does (RFC 5545, 3.8.7.4): an event with a known id is replaced
// where its sequence is not lower, and a cancelled one goes. Prints what the calendar then has.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

const events = new Map();
for (const file of process.argv.slice(2)) {
  const calendar = new ICAL.Component(ICAL.parse(readFileSync(file, "utf8")));
  if (calendar.getFirstPropertyValue("version") !== "2.0" || !calendar.getFirstPropertyValue("prodid")) throw new Error("no VERSION or PRODID");
  for (const component of calendar.getAllSubcomponents("vevent")) {
    const event = new ICAL.Event(component, { strictExceptions: true });
    if (!event.uid || !component.getFirstPropertyValue("dtstamp")) throw new Error("no UID or DTSTAMP");
    const known = events.get(event.uid);
    if (known && known.sequence > event.sequence) continue;
    if (component.getFirstPropertyValue("status") === "CANCELLED") {
      events.delete(event.uid);
      continue;
    }
    events.set(event.uid, {
      uid: event.uid,
      sequence: event.sequence,
      allDay: event.startDate.isDate && event.endDate.isDate,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      summary: event.summary,
      description: event.description,
    });
  }
}
console.log(JSON.stringify([...events.values()]));
