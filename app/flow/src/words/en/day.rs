//! The day's visits and nets.

use super::English;
use super::numbers::up_to;
use crate::words::{DayWords, Said, UnitWords};
use tussock_core::day::published::{GAP_LINE, GAP_PLANNED};
use tussock_core::day::{DayError, GapVerdict, Layout, Mend, NetKind};

impl English {
    /// Hours without forage, on their side of the line they were judged by.
    pub(in crate::words) fn wait(&self, hours: f64) -> String {
        let line = if hours > *GAP_LINE {
            *GAP_LINE
        } else {
            *GAP_PLANNED
        };
        self.hours_beside(hours, line)
    }
}

impl DayWords for English {
    fn mend(&self, mend: Mend) -> String {
        match mend {
            Mend::SecondNet { longest_h } => format!(
                "A second net hung apart at each visit: longest wait {}",
                self.wait(longest_h)
            ),
            Mend::DoubleNet { longest_h } => {
                format!("Double each net: longest wait {}", self.wait(longest_h))
            }
            Mend::Straw { part, longest_h } => format!(
                "{} of the forage as clean cereal straw, over 2 to 3 weeks, with water always: longest wait {}",
                self.percent(part),
                self.wait(longest_h)
            ),
            Mend::OneMoreVisit { at, longest_h } => format!(
                "One more visit about {}: longest wait {}",
                self.time(at),
                self.wait(longest_h)
            ),
            Mend::TimeRelease { at, longest_h } => format!(
                "A feeder that opens by itself about {}: longest wait {}",
                self.time(at),
                self.wait(longest_h)
            ),
        }
    }

    fn gap_verdict(&self, verdict: GapVerdict) -> Said {
        match verdict {
            GapVerdict::Planned => Said::plain("No wait is longer than planned for"),
            GapVerdict::Care => Said::because(
                "It waits longer than planned for: mend it if you can",
                format!(
                    "Planned are at most {} by day.",
                    self.hours_beside(*GAP_PLANNED, *GAP_PLANNED)
                ),
            ),
            GapVerdict::OverTheLine => Said::because(
                "It waits too long without forage: mend it, or accept it once",
                format!(
                    "Over {} between forage meals went with more stomach ulcers. These visits cannot do better by themselves.",
                    self.hours_beside(*GAP_LINE, *GAP_LINE)
                ),
            ),
        }
    }

    fn longest_gap(&self, layout: &Layout) -> Said {
        let at_night = if layout.longest_at_night {
            ", at night"
        } else {
            ""
        };
        let Said { sentence, why } = self.gap_verdict(layout.verdict);
        let why: Vec<String> = [
            Some(format!("{sentence}.")),
            why,
            Some(format!(
                "For a fast eater; at the likely rate {} h.",
                up_to(layout.likely_h, 1)
            )),
        ]
        .into_iter()
        .flatten()
        .collect();
        Said::because(
            format!("Longest wait {}{at_night}", self.wait(layout.longest_h)),
            why.join(" "),
        )
    }

    fn net_kind(&self, kind: NetKind) -> &'static str {
        match kind {
            NetKind::Loose => "Loose, from the floor or a manger",
            NetKind::LargeHoles => "Large holes, about 15 cm",
            NetKind::MediumHoles => "Medium holes, about 4.5 cm",
            NetKind::SmallHoles => "Small holes, about 3 cm",
            NetKind::DoubleSmall => "Two small-holed nets, one in the other",
        }
    }

    fn day_error(&self, error: &DayError) -> String {
        match error {
            DayError::NoVisits => "Say when somebody comes: at least one visit a day".to_owned(),
            DayError::OutOfRange(error) => self.out_of_range(error),
            DayError::CannotHang { left_kg } => format!(
                "{} of dry matter finds no net: add a net, a visit or a larger net",
                super::numbers::kg_above_nothing(*left_kg)
            ),
            DayError::MoreLeftThanHung => {
                "More is left than hung: read both weights again".to_owned()
            }
            DayError::WetAsDry => {
                "Soaked hay is wet: judge it by eye, or against the wet weight of the same net"
                    .to_owned()
            }
        }
    }
}
