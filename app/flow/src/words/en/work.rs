//! The work of an animal, in English.

use super::English;
use super::fields::small;
use super::numbers::{between, up_to};
use crate::views::work::{Done, WorkView};
use crate::words::{PlanWords, Said, UnitWords, WorkWords};
use tussock_core::animal::Answer;
use tussock_core::units::{LocalDate, Span};
use tussock_core::work::published::{SETTLES_MINUTES, WEEK_COUNTS};
use tussock_core::work::{
    Asked, DaysEnergy, Gait, GaitTimes, HeartStanding, How, MovingFeeder, Surface, Week, WorkStop,
    week_from,
};

impl English {
    /// Minutes of a gait, to the nearest.
    pub(super) fn minutes_of(&self, time: Span) -> String {
        self.span(time + Span::ms(Span::minutes(1).to_ms() / 2))
    }
}

impl WorkWords for English {
    fn work_head(&self, view: &WorkView) -> String {
        match (&view.asked, view.standing.stops.first()) {
            (Some(asked), _) => self.week_done(view.week.sessions, asked.a_week),
            (None, Some(stop)) => format!("No work: {}", self.work_stop(*stop)),
            (None, None) => self.work(&view.standing.line).sentence,
        }
    }
    fn week_done(&self, done: u32, asked: u32) -> String {
        format!("{done} of {asked} sessions this week")
    }
    fn work_stop(&self, stop: WorkStop) -> &'static str {
        match stop {
            WorkStop::Sign => "a sign was seen",
            WorkStop::Laminitis => "it has laminitis",
            WorkStop::Episode => "the vet is in charge",
            WorkStop::Lame => "it is lame",
            WorkStop::PainRelief => "on pain relief",
            WorkStop::BoxRest => "on box rest",
            WorkStop::Sick => "it is sick",
            WorkStop::GotAtGrain => "it got at grain",
            WorkStop::EscapedOntoGrass => "it was on lush grass",
            WorkStop::OffFeed => "it leaves its forage",
        }
    }
    fn work_stops(&self, stops: &[WorkStop]) -> Said {
        let why: Vec<&str> = stops.iter().map(|stop| self.work_stop(*stop)).collect();
        let relief = if stops.contains(&WorkStop::PainRelief) {
            " On pain relief it may walk sound and not be: no work, nor in the time the vet sets after it."
        } else {
            ""
        };
        let (first, others) = why
            .split_first()
            .map_or(("", &[][..]), |(first, others)| (*first, others));
        let also = if others.is_empty() {
            String::new()
        } else {
            format!("{}. ", super::fields::capital(&self.list(others)))
        };
        Said::because(
            format!("No work: {first}"),
            format!(
                "{also}Soft bed, hay in front of it, and never force it to walk.{relief} Work begins again with what the vet says."
            ),
        )
    }
    fn work_asked(&self, asked: &Asked) -> Said {
        let where_to = if asked.soft_and_unridden {
            "Soft ground, without a rider unless the vet says so. Stop at the first odd step. "
        } else {
            ""
        };
        let built = if asked.week < asked.weeks {
            format!(
                "Week {} of {} of building up: a week with {} sessions or more is a step up, one with none a step down.",
                asked.week, asked.weeks, *WEEK_COUNTS
            )
        } else {
            "Built up: go on from here, a little longer or a little more canter.".to_owned()
        };
        Said::because(
            format!(
                "{}, {} times a week",
                self.minutes_of(asked.times.total()),
                asked.a_week
            ),
            format!(
                "{}. {where_to}{built} Three sessions are better than none.",
                super::fields::capital(&self.gait_times(&asked.times)),
            ),
        )
    }
    fn how_hard(&self, asked: &Asked) -> Said {
        let blows = format!(
            "Blowing, but settled within {} minutes after",
            *SETTLES_MINUTES
        );
        match asked.heart {
            Some([least, most]) => Said::because(
                blows,
                format!(
                    "With a heart rate monitor: {} to {} beats a minute in the faster part, from memory of the consensus on insulin-dysregulated animals.",
                    up_to(least, 0),
                    up_to(most, 0)
                ),
            ),
            None => Said::because(
                "At its own pace, and never forced",
                "How much work suits a donkey or mule is not published: what it does easily is enough.",
            ),
        }
    }
    fn work_word_until(&self, day: LocalDate) -> String {
        format!("The vet's word holds until {}", self.date(day))
    }
    fn gait(&self, gait: Gait) -> &'static str {
        match gait {
            Gait::Walk => "Walk",
            Gait::Trot => "Trot",
            Gait::Canter => "Canter",
        }
    }
    fn gait_times(&self, times: &GaitTimes) -> String {
        let parts: Vec<String> = Gait::ALL
            .into_iter()
            .filter(|gait| Span::ZERO < times.of(*gait))
            .map(|gait| {
                format!(
                    "{} {}",
                    self.minutes_of(times.of(gait)),
                    small(self.gait(gait))
                )
            })
            .collect();
        if parts.is_empty() {
            self.span(Span::ZERO)
        } else {
            parts.join(", ")
        }
    }
    fn how_worked(&self, how: How) -> &'static str {
        match how {
            How::Ridden => "Ridden",
            How::Led => "Led in hand",
            How::Lunged => "Lunged or long-reined",
            How::Free => "Loose",
        }
    }
    fn surface(&self, surface: Surface) -> &'static str {
        match surface {
            Surface::Soft => "Soft",
            Surface::Firm => "Firm",
            Surface::Hard => "Hard",
        }
    }
    fn surface_means(&self, surface: Surface) -> &'static str {
        match surface {
            Surface::Soft => "an arena, good grass",
            Surface::Firm => "dry ground, a track",
            Surface::Hard => "a road, stones, frozen ground",
        }
    }
    fn sound_after(&self, answer: Answer) -> &'static str {
        match answer {
            Answer::Yes => "Sound",
            Answer::No => "Not sound",
            Answer::NotKnown => "Not looked",
        }
    }
    fn settled_after(&self, answer: Answer) -> &'static str {
        match answer {
            Answer::Yes => "Settled in 10 min",
            Answer::No => "Not settled by then",
            Answer::NotKnown => "Not looked",
        }
    }
    fn asked_head(&self) -> &'static str {
        "Asked"
    }
    fn done_head(&self) -> &'static str {
        "Done"
    }
    fn beats_name(&self, asked: Option<&Asked>, last: Option<&Done>) -> String {
        let asked = asked.map(|asked| format!("Asked: {}", self.gait_times(&asked.times)));
        let last = last.map(|done| format!("Done last: {}", self.gait_times(&done.session.times)));
        asked.into_iter().chain(last).collect::<Vec<_>>().join(". ")
    }
    fn beats_rows(&self) -> [&'static str; 2] {
        ["Asked", "Done last"]
    }
    fn beats_table(&self) -> [&'static str; 3] {
        ["Gait", "Asked", "Done last"]
    }
    fn all_numbers(&self) -> &'static str {
        "All numbers"
    }
    fn week_name(&self, week: &Week, today: LocalDate) -> String {
        if week.from == week_from(today) {
            "This week".to_owned()
        } else {
            format!("From {}", self.day(week.from))
        }
    }
    fn week_line(&self, week: &Week) -> String {
        let count = usize::try_from(week.sessions).unwrap_or(usize::MAX);
        if count == 0 {
            "No session".to_owned()
        } else {
            format!(
                "{}, {}",
                self.count(count, "session", "sessions"),
                self.minutes_of(week.times.total())
            )
        }
    }
    fn session_name(&self, done: &Done) -> String {
        format!(
            "{}, {}",
            self.day(done.session.day),
            self.minutes_of(done.session.times.total())
        )
    }
    fn session_line(&self, done: &Done) -> String {
        let session = &done.session;
        let mut parts = vec![
            self.gait_times(&session.times),
            small(self.how_worked(session.how)),
        ];
        parts.extend(
            session
                .surface
                .map(|surface| format!("{} ground", small(self.surface(surface)))),
        );
        if let Some(heart) = session.heart {
            let stands = match done.heart {
                Some(HeartStanding::Under) => ", under what is asked",
                Some(HeartStanding::Over) => ", over what is asked",
                Some(HeartStanding::Within) | None => "",
            };
            parts.push(format!(
                "{} beats a minute{stands}",
                up_to(heart.to_beats(), 0)
            ));
        }
        if let Some(rank) = done.rank {
            parts.push(format!(
                "harder than {} of {} others",
                rank.harder_than, rank.of
            ));
        }
        if session.settled != Answer::NotKnown {
            parts.push(small(self.settled_after(session.settled)));
        }
        let sound = match session.sound {
            Answer::Yes => "sound after it",
            Answer::No => "not sound after it",
            Answer::NotKnown => "nobody looked after it",
        };
        parts.push(sound.to_owned());
        parts.extend(done.energy.map(|energy| self.energy_ends(energy)));
        parts.join(", ")
    }
    fn week_energy(&self, energy: &DaysEnergy) -> Said {
        let percent = |part: f64| super::numbers::sized(part * 100.0);
        Said::because(
            format!(
                "This week's work: {} on top",
                self.energy_ends(energy.energy)
            ),
            format!(
                "That is {} % of what an average animal of its weight needs in a week, on level ground; an older equation for horses in training gives several times as much. Do not feed more for it.",
                between(
                    &percent(energy.of_a_week.least),
                    &percent(energy.of_a_week.most),
                    "to"
                )
            ),
        )
    }
    fn no_energy(&self) -> Said {
        Said::because(
            "The energy of its work is not reckoned",
            "The equations are of horses. A donkey or mule goes by weight and condition.",
        )
    }
    fn moving(&self, moving: &MovingFeeder) -> Said {
        let [condition, condition_after] = moving.condition;
        let [crest, crest_after] = moving.crest;
        Said::because(
            "Hang its hay in several places, far from each other and from the water",
            format!(
                "At a feeder that moves, eight ponies went {} times as far; in three months their condition went from {} to {} and their crest from {} to {}. One more feeding place than animals, on ground without grass.",
                up_to(moving.times, 1),
                up_to(condition, 1),
                up_to(condition_after, 1),
                up_to(crest, 1),
                up_to(crest_after, 1)
            ),
        )
    }
    fn moving_head(&self) -> &'static str {
        "Movement without riding"
    }
    fn start_work(&self) -> &'static str {
        "Start work"
    }
    fn go_on_with_work(&self) -> &'static str {
        "Go on with the work"
    }
    fn write_down_work(&self) -> &'static str {
        "Write down work"
    }
    fn say_in_details(&self) -> &'static str {
        "Say whether it had laminitis"
    }
}
