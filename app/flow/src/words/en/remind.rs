//! Reminders in English.

use super::English;
use super::fields::small;
use crate::views::remind::{DailyBell, Deadline, Has, Means, Ring, RingsFor, Sent, Stands};
use crate::words::{RemindWords, RoundWords, TubWords, UnitWords};
use tussock_core::units::{Instant, LocalDate, Zone};

impl RemindWords for English {
    fn remind_me(&self) -> &'static str {
        "Remind me"
    }
    fn reminders(&self) -> &'static str {
        "Reminders"
    }
    fn clock_of(&self, what: Deadline, late: bool) -> &'static str {
        match (what, late) {
            (Deadline::LiftOut, false) => "Lift out at",
            (Deadline::LiftOut, true) => "Lift out now. It was due at",
            (Deadline::Feed, false) => "Drained, feed it at",
            (Deadline::Feed, true) => "Feed it now. It was drained at",
            (Deadline::ThrowAway, false) => "Throw away what is left at",
            (Deadline::ThrowAway, true) => "Throw away now. It was due at",
        }
    }
    fn own_timer(&self, now: Instant, zone: &dyn Zone) -> String {
        format!(
            "It is {}. Set the phone's own alarm: it rings whatever happens to this page.",
            self.time_at(now, zone)
        )
    }
    fn tub_is_over(&self) -> &'static str {
        "This tub is over: nothing rings for it"
    }
    fn no_tub_to_remind(&self) -> &'static str {
        "There is no hay in the water here"
    }
    fn deadline(&self, what: Deadline) -> &'static str {
        match what {
            Deadline::LiftOut => "Lift out",
            Deadline::Feed => "Drained, feed it",
            Deadline::ThrowAway => "Throw away what is left",
        }
    }
    fn deadlines(&self) -> &'static str {
        "Times of this tub"
    }
    fn while_open(&self) -> &'static str {
        "While this page is open"
    }
    fn when_closed(&self) -> &'static str {
        "When this page is closed"
    }
    fn means(&self, means: Means) -> &'static str {
        match means {
            Means::Sound => "Sound and vibration",
            Means::Notification => "Notification",
            Means::Awake => "Keep the screen on",
            Means::Badge => "Count on the app's icon",
        }
    }
    fn means_stand(&self, stands: Stands) -> &'static str {
        match stands {
            Stands::On => "on",
            Stands::Off => "off",
            Stands::NotHere => "not here",
            Stands::Refused => "refused",
        }
    }
    fn means_line(&self, means: Means, has: Has) -> &'static str {
        match (means, has) {
            (Means::Sound, Has::Available) => {
                "Rings while this page is in sight and the phone is awake. Opened anew, it rings from the first tap on. \
                 Silent when the page is closed, the phone is locked or its silent switch is on."
            }
            (Means::Sound, Has::NotHere) => "This browser makes no sound.",
            (Means::Sound, Has::Denied) => "This browser does not let the page make a sound.",
            (Means::Notification, Has::Available) => {
                "Shows while this page is open, also behind another one, as long as the phone lets it run. Nothing comes \
                 when it is closed."
            }
            (Means::Notification, Has::NotHere) => {
                "This browser has no notifications here. An iPhone or iPad has them only with the app on its Home Screen."
            }
            (Means::Notification, Has::Denied) => {
                "Refused for this page: nothing shows. Allow notifications in the browser's settings to change that."
            }
            (Means::Awake, Has::Available) => {
                "The screen stays on while a tub is open and this page is in sight. It uses the battery."
            }
            (Means::Awake, Has::NotHere) => "This browser cannot keep the screen on.",
            (Means::Awake, Has::Denied) => {
                "The phone did not keep the screen on: its battery may be low."
            }
            (Means::Badge, Has::Available) => {
                "Shows how many jobs were late or due when this page was last open. It stands still when the page is closed."
            }
            (Means::Badge, Has::NotHere) => "This browser shows no count on an icon.",
            (Means::Badge, Has::Denied) => "The phone did not show the count.",
        }
    }
    fn shakes(&self, has: Has) -> &'static str {
        match has {
            Has::Available => "The phone shakes too, if it can.",
            Has::NotHere => "This browser cannot make the phone shake.",
            Has::Denied => "This browser does not let the page make the phone shake.",
        }
    }
    fn closed_truth(&self) -> &'static str {
        "This app cannot ring when it is closed. Only the phone's own alarm and its calendar can."
    }
    fn file_truth(&self, share: Has) -> &'static str {
        match share {
            Has::Available => {
                "Send the file to the calendar and see there that each entry has its bell: some calendars leave it out. \
                 When a time was corrected, send it again."
            }
            Has::NotHere | Has::Denied => {
                "The file is saved on this device. Open it with the calendar and see there that each entry has its bell: \
                 some calendars leave it out. When a time was corrected, save and open it again."
            }
        }
    }
    fn file_of_tub(&self) -> &'static str {
        "Calendar file for this tub"
    }
    fn file_of_tub_over(&self) -> &'static str {
        "Calendar file to take it out"
    }
    fn file_of_day(&self) -> &'static str {
        "Calendar file for the day"
    }
    fn sent(&self, sent: Sent) -> &'static str {
        match sent {
            Sent::Shared => "Sent. Look in the calendar that each entry has its bell.",
            Sent::Saved => "Saved. Open it with the calendar: nothing rings before.",
            Sent::Left => "Not sent. Nothing has changed.",
            Sent::Failed => "The file did not go. Try again, or set the phone's own alarm.",
        }
    }
    fn bells_a_day(&self, count: usize) -> String {
        match count {
            1 => "1 reminder a day".to_owned(),
            count => format!("{count} reminders a day"),
        }
    }
    fn no_bells(&self) -> &'static str {
        "No plan with daily jobs holds today"
    }
    fn bells(&self) -> &'static str {
        "Every day"
    }
    fn bell_until(&self, bell: &DailyBell) -> String {
        format!(
            "from {} to {}, when the plan is reviewed",
            self.day(bell.first),
            self.day(bell.review)
        )
    }
    fn review_past(&self, name: &str, review: LocalDate) -> String {
        format!(
            "{name}: the plan was to be reviewed by {}. Nothing rings for it until it is",
            self.day(review)
        )
    }
    fn to_a_plan(&self) -> &'static str {
        "To the horses"
    }
    fn bell_of_tub(&self, what: Deadline, tub: Option<&str>, whose: &str) -> String {
        let tub = small(tub.unwrap_or_else(|| self.the_tub()));
        let said = match what {
            Deadline::LiftOut => format!("Lift out {tub}"),
            Deadline::Feed => format!("Feed {tub}, drained"),
            Deadline::ThrowAway => format!("Throw away what is left of {tub}"),
        };
        of(said, whose)
    }
    fn bell_of_tub_why(&self, what: Deadline) -> &'static str {
        match what {
            Deadline::LiftOut | Deadline::Feed => {
                "The times are those that were written down when this file was made."
            }
            Deadline::ThrowAway => {
                "Hay that was wet spoils: what is left by then is not fed. Heat brings the time forward: look in the app on a \
                 warm day."
            }
        }
    }
    fn bell_of_day(&self, bell: &DailyBell) -> String {
        let jobs = if bell.soak {
            vec![format!("soak the hay for {}", self.time(bell.hung))]
        } else {
            let nets = match bell.nets {
                0 => None,
                1 => Some("hang a net".to_owned()),
                nets => Some(format!("hang {nets} nets")),
            };
            let feeds = match bell.feeds {
                0 => None,
                1 => Some("feed the balancer".to_owned()),
                feeds => Some(format!("{feeds} feeds of balancer, apart")),
            };
            [nets, feeds].into_iter().flatten().collect()
        };
        format!("{}: {}", bell.name, jobs.join(", "))
    }
    fn bell_of_day_why(&self, review: LocalDate) -> String {
        format!(
            "How much stands in the app, where it follows the plan. Review the plan on {}. Footsore, off its feed or in pain: \
             ring the vet first.",
            self.date(review)
        )
    }
    fn ring_head(&self, ring: &Ring) -> String {
        match &ring.what {
            RingsFor::Tub { what, tub, .. } => self.bell_of_tub(*what, tub.as_deref(), ""),
            RingsFor::BringIn { paddock, .. } => {
                let head = format!("Bring in {}", ring.whose);
                match paddock {
                    Some(paddock) => format!("{head} from {paddock}"),
                    None => head,
                }
            }
        }
    }
    fn ring_line(&self, ring: &Ring, now: Instant, zone: &dyn Zone) -> String {
        let at = format!("at {}", self.time_at(ring.at, zone));
        let late = now.since(ring.at);
        let said = if late.to_minutes() < 1 {
            at
        } else {
            format!("{at}, {} late", self.span(late))
        };
        match ring.what {
            RingsFor::Tub { .. } => of(said, &ring.whose),
            // Its head says who.
            RingsFor::BringIn { waits, .. } => match waits {
                Some(waits) => self.no_grass(waits).to_owned(),
                None => said,
            },
        }
    }
}

fn of(said: String, whose: &str) -> String {
    if whose.is_empty() {
        said
    } else {
        format!("{said}, {whose}")
    }
}
