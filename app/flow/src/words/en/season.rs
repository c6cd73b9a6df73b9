//! The year of grass in English.

use super::English;
use crate::views::season::{ByFlush, Leaner, Season};
use crate::words::{Said, SeasonWords, UnitWords, WeightWords};
use tussock_core::graze::season::Noted;
use tussock_core::graze::season::{Band, UntilFlush, Watch, YearPart};
use tussock_core::log::bodies::SeasonNoteV1;

impl SeasonWords for English {
    fn season(&self) -> &'static str {
        "Season"
    }
    fn season_sentence(&self, season: &Season) -> String {
        match (season.flush.is_on(), season.part) {
            (true, _) => "Grass is in its flush".to_owned(),
            (false, Some(YearPart::Flush)) => "The flush is over".to_owned(),
            (false, Some(part)) => self.year_part(part).to_owned(),
            (false, None) => "The season is not known here".to_owned(),
        }
    }
    fn year_part(&self, part: YearPart) -> &'static str {
        match part {
            YearPart::EarlySpring => "Before the flush",
            YearPart::Flush => "The flush",
            YearPart::Summer => "After the flush",
            YearPart::AutumnBreak => "Autumn growth",
            YearPart::Frosts => "Cold nights and frosts",
            YearPart::AfterRains => "Grass follows the rain here",
        }
    }
    fn watch(&self, watch: Watch) -> Said {
        match watch {
            Watch::LeafGrowsFast => Said::because(
                "Leaf that stands inches higher within days",
                "The flush has begun, whatever the calendar says. Note it below.",
            ),
            Watch::SunnyAfterCold => Said::because(
                "Sunny days after cold nights",
                "Grass makes sugar and does not grow. No grass for an animal at risk.",
            ),
            Watch::SeedHeads => Said::because(
                "Seed heads",
                "Stem and seed head hold much sugar and starch. Say so on the paddock.",
            ),
            Watch::DryThenRain => Said::because(
                "A dry spell, and the rain that ends it",
                "Grass shoots up after it. In the tropics the first rains are the flush.",
            ),
            Watch::FrostOnGrass => Said::because(
                "Frost on the grass, and the week after a hard one",
                "Keep off until seven days after a hard freeze.",
            ),
            Watch::WeightComesOn => Said::because(
                "Crest, ribs and girth: weight comes on now",
                "Measure every week.",
            ),
            Watch::WeightComesOff => Said::because(
                "Ribs: winter is when weight comes off",
                "A little rib showing at the end of winter is fine for one that is healthy.",
            ),
            Watch::ShortStride => Said::because(
                "A shorter stride, most of all on turns and stones",
                "Stop grazing and work, and ring the vet the same day.",
            ),
        }
    }
    fn watch_now(&self) -> &'static str {
        "What to watch now"
    }
    fn watch_next(&self, part: YearPart) -> String {
        format!("Then: {}", super::fields::small(self.year_part(part)))
    }
    fn year_picture(&self, season: &Season) -> String {
        let parts: Vec<String> = season
            .bands
            .iter()
            .map(|band| {
                let part = super::fields::small(self.year_part(band.part));
                format!("{part} from {}", self.date(band.from))
            })
            .collect();
        let parts: Vec<&str> = parts.iter().map(String::as_str).collect();
        format!("The year of grass: {}", self.list(&parts))
    }
    fn year_numbers(&self) -> &'static str {
        "All numbers"
    }
    fn months(&self) -> [&'static str; 12] {
        ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"]
    }
    fn year_columns(&self) -> [&'static str; 4] {
        ["Part", "From", "To", "By"]
    }
    fn year_row(&self, band: &Band) -> Vec<String> {
        let by = if band.noted.is_some() {
            "your note"
        } else {
            "the latitude"
        };
        vec![
            self.year_part(band.part).to_owned(),
            self.date(band.from),
            self.date(band.to),
            by.to_owned(),
        ]
    }
    fn year_why(&self) -> Said {
        Said::because(
            "The calendar is what usually comes at this latitude; what you see holds before it",
            "Height, slope, soil and the year move it by weeks. Your notes of this year move the parts.",
        )
    }
    fn until_flush(&self, until: UntilFlush) -> String {
        match until {
            UntilFlush::Begun => "The flush is on.".to_owned(),
            UntilFlush::Begins { on, weeks: ..1 } => format!(
                "The flush usually begins within a week, about {}.",
                self.day(on)
            ),
            UntilFlush::Begins { on, weeks } => {
                let weeks = usize::try_from(weeks).unwrap_or_default();
                format!(
                    "The flush is in about {}, usually {}; it can be three weeks early.",
                    self.count(weeks, "week", "weeks"),
                    self.date(on)
                )
            }
            UntilFlush::NotKnown => {
                "When the flush comes is not known here: where grass follows the rain, reckon from the first rains.".to_owned()
            }
        }
    }
    fn leaner_aim(&self) -> Said {
        Said::because(
            "Leaner by the end of winter: condition about 5, a little rib showing is fine",
            "Common practice. Winter is the season to lose: coats, cold and no grass do half of the work (Dosi 2020). It is no aim for an old, thin, sick or in-foal animal.",
        )
    }
    fn leaner(&self) -> &'static str {
        "Before the flush"
    }
    fn leaner_word(&self, by_flush: ByFlush) -> &'static str {
        match by_flush {
            ByFlush::There => "there",
            ByFlush::Before => "on course",
            ByFlush::Perhaps => "may not be in time",
            ByFlush::NotBefore => "not in time",
            ByFlush::NotKnown => "not known",
        }
    }
    fn leaner_line(&self, leaner: &Leaner, until: UntilFlush) -> String {
        let to_go = leaner
            .to_go
            .map_or_else(String::new, |kg| format!("{} to go, ", self.body(kg)));
        let flush = match until {
            UntilFlush::Begins { weeks, .. } => {
                let weeks = usize::try_from(weeks).unwrap_or_default();
                let weeks = self.count(weeks, "week", "weeks");
                format!("; the flush is in about {weeks}")
            }
            UntilFlush::Begun | UntilFlush::NotKnown => String::new(),
        };
        format!("{to_go}{}{flush}", self.forecast(&leaner.forecast))
    }
    fn season_notes(&self) -> &'static str {
        "Your notes"
    }
    fn no_season_note(&self) -> &'static str {
        "None yet"
    }
    fn season_note(&self, note: &SeasonNoteV1) -> String {
        let what = self.season_event(note.what);
        match &note.note {
            Some(remark) => format!("{what}: {remark}"),
            None => what.to_owned(),
        }
    }
    fn season_event(&self, what: Noted) -> &'static str {
        match what {
            Noted::FlushBegan => "The flush began",
            Noted::FlushOver => "The flush is over",
            Noted::AutumnRain => "Rain after a dry time",
            Noted::FirstFrost => "First frost",
            Noted::HardFreeze => "A hard freeze",
            Noted::Drought => "Drought",
            Noted::Other => "Something else",
        }
    }
    fn what_was_seen(&self) -> &'static str {
        "What did you see?"
    }
    fn note_day(&self) -> &'static str {
        "On which day"
    }
    fn note_day_hint(&self) -> &'static str {
        "As 2026-04-12. Left empty it is today."
    }
    fn note_remark(&self) -> &'static str {
        "Remark"
    }
    fn note_what_wanted(&self) -> &'static str {
        "Choose what you saw."
    }
    fn save_note(&self) -> &'static str {
        "Save the note"
    }
}
