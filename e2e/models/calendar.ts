/** A calendar file as a calendar reads it: the second parser, which also goes through a rule day by day. */
import ICAL from 'ical.js';

/** An event of a file. */
export interface CalendarEvent {
  readonly uid: string;
  readonly sequence: number;
  readonly status: string;
  readonly summary: string;
  /** Milliseconds of UTC; of a floating time those that it has where the reader stands. */
  readonly start: number;
  /** Without a zone: it means the clock on the wall. */
  readonly floating: boolean;
  /** Seconds before the start at which it rings. */
  readonly alarms: readonly number[];
  /** The wall clock of each time it comes back, such as `2026-05-05T20:00:00`; one for an event that does not. */
  readonly times: readonly string[];
}

/** At most so many times of one event. */
const MANY = 400;

/** Reads a file, and refuses one with a line that is too long or ends wrongly. */
export function readCalendar(text: string): CalendarEvent[] {
  const lines = text.split('\r\n');
  const long = lines.find((line) => Buffer.byteLength(line, 'utf8') > 75);
  if (long !== undefined) throw new Error(`a line of more than 75 octets: ${long}`);
  if (/[\r\n]/.test(lines.join(''))) throw new Error('a line that does not end in CRLF');
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    const times: string[] = [];
    const each = event.iterator();
    for (let time = each.next(); time && times.length < MANY; time = each.next()) times.push(time.toString());
    return {
      uid: event.uid,
      sequence: event.sequence,
      status: String(component.getFirstPropertyValue('status')),
      summary: event.summary,
      start: event.startDate.toJSDate().getTime(),
      floating: event.startDate.zone === ICAL.Timezone.localTimezone,
      alarms: component.getAllSubcomponents('valarm').map((alarm) => {
        const trigger = alarm.getFirstPropertyValue('trigger') as unknown as { toSeconds(): number };
        return -trigger.toSeconds() + 0;
      }),
      times,
    };
  });
}
