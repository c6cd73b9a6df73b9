//! Strips and tracks in English.

use super::English;
use super::numbers::{between, up_to};
use crate::forms::strip::{Field, Wrong};
use crate::views::fields::{Against, Eats, NoStrip, Out, StripSeen, StripTold};
use crate::words::{FieldWords, LogWords, Said, StripWords, SwardWords, UnitWords};
use tussock_core::graze::strip::{Fences, StripAgainst, StripLimit, Track, TrackFinding};
use tussock_core::limits::Ends;
use tussock_core::units::Length;

impl English {
    /// How far behind the back fence stands.
    fn behind(&self, back: [Length; 2]) -> String {
        let [near, far] = back.map(|length| self.on_ground(length));
        between(&near, &far, "to")
    }
}

impl StripWords for English {
    fn strip_against(&self, against: &StripAgainst) -> Said {
        match against {
            StripAgainst::Flush => Said::because(
                "It is the flush: strips come after it",
                "The grass is richest now, and grows faster than a fence can limit it.",
            ),
            StripAgainst::RecentCase => Said::because(
                "Not after laminitis lately: vet first",
                "One of them is, or lately was, a case, or nobody said when it was. No grass before the vet has spoken.",
            ),
            StripAgainst::Seeding => Said::because(
                "Seed heads stand: they hold much sugar",
                "Top them and take them away, or wait.",
            ),
            StripAgainst::HighSugarSward => Said::because(
                "This grass may hold much sugar",
                "Ryegrass, timothy and green cereals: another paddock is better for an animal at risk.",
            ),
            StripAgainst::Short { height } => Said::because(
                "Too short to open",
                format!(
                    "It stands at about {}: nothing is won, and the grass is lost.",
                    self.length(*height)
                ),
            ),
            StripAgainst::Bare { height } => Said::because(
                "Bare, or it may be: this is no forage",
                format!("It may stand at {}. Hay must hang.", self.length(*height)),
            ),
        }
    }
    fn strip_stopped(&self, against: &Against) -> &'static str {
        match against.what {
            StripAgainst::RecentCase => "No strip. Vet first",
            StripAgainst::Flush
            | StripAgainst::Seeding
            | StripAgainst::HighSugarSward
            | StripAgainst::Short { .. }
            | StripAgainst::Bare { .. } => "No strip here today",
        }
    }
    fn strip_limit(&self, limit: StripLimit) -> Said {
        match limit {
            StripLimit::NotForSafety => {
                Said::plain("No animal's plan rests on a strip: hours and risk come first")
            }
            StripLimit::MassIsAGuess => {
                Said::plain("What stands there is a guess, out by a third either way")
            }
            StripLimit::SugarIsNotLowered => {
                Said::plain("It limits how much is eaten; the sugar in it stays as it is")
            }
            StripLimit::ReckonAgainFromWhatIsLeft => {
                Said::plain("Look each day at what is left, and reckon again")
            }
            StripLimit::WeighWeekly => Said::plain("Weigh or tape them every week"),
            StripLimit::BackFenceIsForTheSward => Said::plain(
                "A back fence lets the grazed part grow; in the trial it did nothing more for weight",
            ),
            StripLimit::HeightDoesNotRestrict => Said::plain(
                "Short grass alone holds nobody back before it is one or two centimetres",
            ),
            StripLimit::OneTrial => {
                Said::plain("It was tried once, on twelve ponies, after the flush")
            }
        }
    }
    fn track_finding(&self, finding: &TrackFinding) -> Said {
        match finding {
            TrackFinding::TooShort { asked, holds } => Said::because(
                format!("Too short for {asked} hay places: it holds {holds}"),
                "Hay places lie two body lengths apart, and as far from water. Feed in another place too.",
            ),
            TrackFinding::WalksFarther { part } => Said::plain(format!(
                "Ponies walked about {} farther on a track than on strips",
                self.percent(*part)
            )),
            TrackFinding::WeightNotProven => {
                Said::plain("That a track takes weight off is not proven")
            }
            TrackFinding::GrassOnItCounts => {
                Said::plain("What grows on the track is grass, and counts as grass")
            }
        }
    }
    fn no_strip(&self, why: &NoStrip) -> String {
        match why {
            NoStrip::NobodyOut => {
                "Say first who goes out and how long: the strip follows their plans".to_owned()
            }
            NoStrip::NobodyChosen => {
                "None of those chosen has grass in its plan: choose who goes on it".to_owned()
            }
            NoStrip::NobodyLooked => {
                "Look first how high it stands: by the boot, or thirty readings".to_owned()
            }
            NoStrip::NoWidth => "Type how wide the strip is".to_owned(),
            NoStrip::Refused(error) => self.graze_error(error),
        }
    }
    fn strip_while_open(&self) -> Said {
        Said::because(
            "Only while grass is open to them today: look at the paddock first",
            "A strip limits how much there is, and not what closes grass: the night, frost, a dry spell, the flush, seed heads.",
        )
    }
    fn strip_sentence(&self, seen: &StripSeen) -> String {
        match &seen.strip {
            Ok(told) => format!("Fence {} on", self.paces(told.strip.fences.onward_paces)),
            Err(_) => "Today's strip".to_owned(),
        }
    }
    fn paces(&self, paces: Ends<f64>) -> String {
        // To half a pace where there are few: less than that nobody walks.
        let likely = paces.likely;
        let shown = if likely < 10.0 {
            (likely * 2.0).floor() / 2.0
        } else {
            likely.floor()
        };
        if shown < 1.0 {
            return "less than a pace".to_owned();
        }
        format!("{} paces", up_to(shown, 1))
    }
    fn strip_field(&self, field: Field) -> &'static str {
        match field {
            Field::Width => "How wide",
            Field::TrackLength => "One side of the field",
            Field::TrackSide => "The other side",
            Field::TrackWidth => "How wide is the track",
            Field::Animals => "How many animals",
        }
    }
    fn strip_field_hint(&self, field: Field) -> &'static str {
        match field {
            Field::Width => {
                "The length of the lead fence, for example 30 m or 40 paces. An ordinary pace is taken: with long ones go fewer."
            }
            Field::TrackLength | Field::TrackSide => "In m, ft or paces.",
            Field::TrackWidth => "Two must pass each other, for example 4 m.",
            Field::Animals => "All that go on it together.",
        }
    }
    fn strip_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Width(error) => self.parse_error(error),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn strip_days_asked(&self) -> &'static str {
        "It lasts"
    }
    fn strip_days(&self, days: u32) -> String {
        self.count(usize::try_from(days).unwrap_or(usize::MAX), "day", "days")
    }
    fn back_fence_asked(&self) -> &'static str {
        "Back fence"
    }
    fn back_fence(&self, stands: bool) -> &'static str {
        if stands { "With one" } else { "None" }
    }
    fn strip_whom_asked(&self) -> &'static str {
        "For whom"
    }
    fn left_out(&self, out: &Out) -> String {
        format!("{}: {}", out.name, self.asks_of_strip(out))
    }
    fn asks_of_strip(&self, out: &Out) -> String {
        match &out.eats {
            Eats::Grass { grass, .. } => format!("{} a day by the plan", self.dry_ends(*grass)),
            Eats::NoRoom => "its plan has no room for grass".to_owned(),
            Eats::NoGrass => "no grass by its plan".to_owned(),
            Eats::NoPlan => "no plan counts its grass".to_owned(),
        }
    }
    fn strip_picture(&self, fences: &Fences) -> String {
        let back = self
            .back_fence_at(fences)
            .map_or_else(String::new, |back| format!(", {back}"));
        format!(
            "The strip from above: {}, {}{back}",
            self.lead_fence(fences),
            self.fence_onward(fences)
        )
    }
    fn lead_fence(&self, fences: &Fences) -> String {
        format!(
            "lead fence {}, {}",
            self.paces(fences.lead_paces),
            self.on_ground(fences.lead)
        )
    }
    fn fence_onward(&self, fences: &Fences) -> String {
        format!(
            "{} on, {}",
            self.paces(fences.onward_paces),
            self.on_ground(fences.onward)
        )
    }
    fn back_fence_at(&self, fences: &Fences) -> Option<String> {
        let back = fences.back?;
        Some(format!(
            "back fence {} behind the lead fence",
            self.behind(back)
        ))
    }
    fn strip_table(&self, told: &StripTold) -> Vec<Vec<String>> {
        let strip = &told.strip;
        let fences = &strip.fences;
        let counted = |paces: Ends<f64>| {
            let figure = |paces: f64| up_to(paces, 0);
            format!(
                "{}, by your pace {}",
                self.paces(paces),
                between(&figure(paces.least), &figure(paces.most), "to")
            )
        };
        let row = |what: &str, how: String| vec![what.to_owned(), how];
        let mut rows = vec![
            row("Area", format!("{} m²", up_to(strip.area.to_sq_m(), 0))),
            row("Lead fence", self.on_ground(fences.lead)),
            row("Lead fence in paces", counted(fences.lead_paces)),
            row("On by", self.on_ground(fences.onward)),
            row("On in paces", counted(fences.onward_paces)),
        ];
        if let Some(back) = fences.back {
            rows.push(row("Back fence behind the lead fence", self.behind(back)));
        }
        rows.push(row(
            "Their plans carry at most",
            format!("{} a day", self.dry(told.asked)),
        ));
        rows.push(row(
            "They find",
            format!("{} a day", self.dry_ends(strip.finds)),
        ));
        let larger = [
            ("If it likely holds what it holds", strip.by_likely),
            ("If it holds the least", strip.by_least),
        ];
        for (what, area) in larger {
            let area = area.map_or_else(
                || "no area is enough".to_owned(),
                |area| format!("{} m² would be needed", up_to(area.to_sq_m(), 0)),
            );
            rows.push(row(what, area));
        }
        rows
    }
    fn strip_table_caption(&self) -> &'static str {
        "The strip in numbers"
    }
    fn strip_table_heads(&self) -> [&'static str; 2] {
        ["What", "How much"]
    }
    fn strip_finds(&self, told: &StripTold) -> String {
        format!(
            "{} m². They find {} a day, never more than their plans carry ({})",
            up_to(told.strip.area.to_sq_m(), 0),
            self.dry_ends(told.strip.finds),
            self.dry(told.asked)
        )
    }
    fn strip_minds(&self, told: &StripTold) -> Vec<Said> {
        let mut said = Vec::new();
        if let Some(short) = told.hay_short {
            said.push(Said::because(
                "Hang the hay of a day without grass: they may find less than the plan reckons",
                format!(
                    "At the least the strip holds {} less than the hay that hangs less for it.",
                    self.dry(short)
                ),
            ));
        }
        if told.several_days {
            said.push(Said::because(
                "A strip for several days can be eaten on the first: move the fence every day for any at risk",
                "The reckoning shares it out evenly; they do not.",
            ));
        }
        if told.more_than_all {
            said.push(Said::plain("That is more than the whole paddock"));
        }
        said
    }
    fn flush_not_known(&self) -> &'static str {
        "Whether it is the flush is not known: say where the yard lies, or note when the flush began"
    }
    fn limits_head(&self) -> &'static str {
        "What this cannot do"
    }
    fn save_strip(&self) -> &'static str {
        "Save the strip"
    }
    fn track_head(&self) -> &'static str {
        "A track instead"
    }
    fn track_is(&self) -> &'static str {
        "A lane along the fence, with hay and water apart, so that they walk between them."
    }
    fn track_rows(&self, track: &Track) -> Vec<[String; 2]> {
        let area = |area: tussock_core::units::Area| format!("{} m²", up_to(area.to_sq_m(), 0));
        let mut rows = vec![
            ["Along its middle".to_owned(), self.on_ground(track.length)],
            ["Ground of the track".to_owned(), area(track.area)],
            ["Left inside".to_owned(), area(track.inside)],
            ["Water".to_owned(), "at the start".to_owned()],
        ];
        rows.extend(track.hay.iter().enumerate().map(|(at, from)| {
            [
                format!("Hay place {}", at + 1),
                format!("{} on from water", self.on_ground(*from)),
            ]
        }));
        rows.push(["Hay places apart".to_owned(), self.on_ground(track.apart)]);
        rows
    }
    fn say_who_goes_out(&self) -> &'static str {
        "Say who goes out"
    }
}
