//! The year of grass: its parts, what to watch, who is to come out of winter leaner, and the person's own notes.

use super::at::{AtGrass, told};
use crate::device::clock;
use crate::device::ids;
use crate::parts::{
    Action, ActionRow, Back, Choice, Column, Cord, Field, Frame, FrameKind, Hang, Offer, Picture,
    Press, Row, Rows, Sentence, State, Table, Tag, YearBand, YearStretch,
};
use crate::places::shed::yard;
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::graze::season::Noted;
use tussock_core::graze::season::{Watch, YearPart};
use tussock_core::units::Zone;
use tussock_flow::forms::turnout::{Wrong, note};
use tussock_flow::routes::Route;
use tussock_flow::views::season::{ByFlush, Season as Seen, season};
use tussock_flow::words::{English, HorsesWords, PaddockWords, SeasonWords, UnitWords};

/// The year of grass.
#[component]
pub fn Season() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let at = AtGrass::new(world, None);
    let form = NoteForm::new();
    let seen = Memo::new(move |_| match (at.shelf.get(), world.minute().get()) {
        (Some(Ok(shelf)), now) => Some(season(&shelf, now, &at.zone())),
        _ => None,
    });
    let said = Signal::derive(move || {
        seen.with(|seen| {
            let said = seen.as_ref().map(|seen| words.season_sentence(seen));
            said.unwrap_or_else(|| words.opening().to_owned())
        })
    });
    let save = Callback::new(move |()| form.save(at));
    let foot = move || {
        let back = Back {
            name: words.back().into(),
            press: Press::from(Route::Paddock.to_string()),
        };
        view! {
            <Saving failed=at.failed />
            <ActionRow back=back><Action says=words.save_note() press=save busy=at.busy /></ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.season() foot=foot>
            <Sentence said=said />
            <Unread shelf=at.shelf />
            {move || seen.get().map(|seen| year(&seen))}
            {move || seen.get().map(|seen| notes(&seen))}
            {form.fields()}
        </Frame>
    }
}

/// The year, what is watched, and who is to be leaner.
fn year(seen: &Seen) -> AnyView {
    let words = English::default();
    let band = (!seen.bands.is_empty()).then(|| {
        let parts = seen
            .bands
            .iter()
            .map(|band| YearStretch {
                from: Seen::along(band.from),
                long: Seen::along(band.to) - Seen::along(band.from),
                blades: band.part == YearPart::Flush,
            })
            .collect();
        let rows: Vec<Vec<String>> = seen.bands.iter().map(|band| words.year_row(band)).collect();
        let columns = words.year_columns().map(Column::words).to_vec();
        let numbers = move || {
            view! { <Table caption=words.season() columns=columns.clone() rows=Signal::stored(rows.clone()) /> }
        };
        let (sentence, now) = (words.year_picture(seen), Seen::along(seen.today));
        view! {
            <Picture sentence=sentence numbers_word=words.year_numbers() numbers=numbers>
                <YearBand parts=parts now=now months=words.months() />
            </Picture>
            {told(words.year_why())}
        }
    });
    let place = (!seen.placed).then(|| {
        view! {
            <Rows name=words.where_yard_lies()>
                <Row name=words.say_where_yard_lies() press=Route::GrassPlace.to_string() />
            </Rows>
        }
    });
    let now = seen
        .part
        .map(|part| watched(words.watch_now().to_owned(), part.watch()));
    let next = seen.next.map(|(part, on)| {
        let head = format!("{}, {}", words.watch_next(part), words.date(on));
        watched(head, part.watch())
    });
    view! {
        {place}
        {band}
        <p>{words.until_flush(seen.until)}</p>
        {now}
        {next}
        {leaner(seen)}
    }
    .into_any()
}

fn watched(head: String, watch: &'static [Watch]) -> AnyView {
    let words = English::default();
    let lines = watch
        .iter()
        .map(|watch| {
            let said = words.watch(*watch);
            view! { <Row name=said.sentence second=said.why /> }
        })
        .collect_view();
    view! { <h2>{head.clone()}</h2> <Rows name=head>{lines}</Rows> }.into_any()
}

fn leaner(seen: &Seen) -> AnyView {
    let words = English::default();
    if seen.leaner.is_empty() {
        return ().into_any();
    }
    let until = seen.until;
    let tags = seen
        .leaner
        .iter()
        .map(|one| {
            let state = match one.by_flush {
                ByFlush::There | ByFlush::Before => State::Done,
                ByFlush::Perhaps => State::Later,
                ByFlush::NotBefore => State::Care,
                ByFlush::NotKnown => State::NotKnown,
            };
            let (word, line) = (
                words.leaner_word(one.by_flush),
                words.leaner_line(one, until),
            );
            let (name, to) = (
                one.name.clone(),
                Route::Weight(one.animal.clone()).to_string(),
            );
            view! {
                <Hang><Tag state=state word=word what=name second=Some(line) press=to /></Hang>
            }
        })
        .collect_view();
    view! {
        <h2>{words.leaner()}</h2>
        {told(words.leaner_aim())}
        <Cord name=words.leaner()>{tags}</Cord>
    }
    .into_any()
}

fn notes(seen: &Seen) -> AnyView {
    let words = English::default();
    let rows = seen
        .notes
        .iter()
        .map(|(_, note)| {
            view! { <Row name=words.season_note(note) value=Some(words.date(note.date)) /> }
        })
        .collect_view();
    let list = if rows.is_empty() {
        view! { <p class="soft">{words.no_season_note()}</p> }.into_any()
    } else {
        view! { <Rows name=words.season_notes()>{rows}</Rows> }.into_any()
    };
    view! { <h2>{words.season_notes()}</h2> {list} }.into_any()
}

/// A new note.
#[derive(Clone, Copy)]
struct NoteForm {
    what: RwSignal<Option<Noted>>,
    day: RwSignal<String>,
    remark: RwSignal<String>,
    wrong: RwSignal<Option<Wrong>>,
    asked: RwSignal<bool>,
}

impl NoteForm {
    fn new() -> Self {
        Self {
            what: RwSignal::new(None),
            day: RwSignal::new(String::new()),
            remark: RwSignal::new(String::new()),
            wrong: RwSignal::new(None),
            asked: RwSignal::new(false),
        }
    }

    fn save(self, at: AtGrass) {
        let Some(what) = self.what.get_untracked() else {
            self.asked.set(true);
            return;
        };
        let today = untrack(|| at.zone()).to_local(clock::now()).date;
        let (day, remark) = (self.day.get_untracked(), self.remark.get_untracked());
        match note(&yard(at.world), what, &day, &remark, today, &ids::new()) {
            Ok(act) => {
                self.what.set(None);
                self.day.set(String::new());
                self.remark.set(String::new());
                self.wrong.set(None);
                self.asked.set(false);
                at.write(act);
            }
            Err(wrong) => self.wrong.set(Some(wrong)),
        }
    }

    fn fields(self) -> impl IntoView {
        let words = English::default();
        let offers = Noted::ALL
            .iter()
            .map(|what| Offer::new(*what, words.season_event(*what)))
            .collect();
        let hint = Signal::derive(move || {
            let missing = self.asked.get() && self.what.with(Option::is_none);
            missing.then(|| words.note_what_wanted().to_owned())
        });
        let wrong = move |remark: bool| {
            Signal::derive(move || {
                let wrong = self.wrong.get()?;
                ((wrong == Wrong::NoRemark) == remark).then(|| words.turnout_wrong(&wrong))
            })
        };
        view! {
            <Choice
                legend=words.what_was_seen()
                offers=offers
                chosen=self.what
                on_choose=Callback::new(move |what| self.what.set(Some(what)))
                hint=hint
            />
            <Field
                label=words.note_day()
                hint=words.note_day_hint()
                value=self.day
                on_input=Callback::new(move |text| self.day.set(text))
                error=wrong(false)
            />
            <Field
                label=words.note_remark()
                value=self.remark
                on_input=Callback::new(move |text| self.remark.set(text))
                error=wrong(true)
            />
        }
    }
}
