//! The animals of the yard, the needy first.

use super::one::route_of;
use super::shown::{PhotoSize, ShownPhoto};
use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Cord, Field, Frame, FrameKind, Hang, Keyboard, Quiet, QuietRow, Sentence,
    State, Tag,
};
use crate::places::{Places, Saving, Unread, UpdateOffer};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::beside::{self, Stop, Visit};
use tussock_flow::views::photo::Photo;
use tussock_flow::views::yard_visit;
use tussock_flow::words::{
    BesideWords, English, HorsesWords, PhotoWords, Task, WeighbridgeWords, YardVisitWords,
};

/// With more animals than this there is a field to find one.
const WITHOUT_FIND: usize = 7;

/// What an animal's tag shows: its id, its name, its state and word, the second line, and a photograph where there is one.
#[derive(Clone, PartialEq)]
struct Shown {
    id: AnimalId,
    name: String,
    state: State,
    word: String,
    second: String,
    photo: Option<Photo>,
}

impl Shown {
    /// Its tag is drawn anew when any of this is another.
    fn key(&self) -> String {
        let photo = self.photo.as_ref().map_or("", |photo| photo.id.0.as_str());
        let id = self.id.as_str();
        format!("{id} {} {} {photo}", self.word, self.second)
    }

    /// The photograph, small.
    fn picture(&self, words: English) -> Option<ViewFn> {
        let (photo, name) = (self.photo.clone()?, self.name.clone());
        Some(ViewFn::from(move || {
            let alt = words.picture(&name, &photo);
            view! { <ShownPhoto photo=photo.clone() alt size=PhotoSize::Square /> }
        }))
    }
}

fn shown(visit: &Visit, words: English) -> Shown {
    let due = visit.first_due();
    let (state, word) = match (&visit.stop, due) {
        (Some(stop), _) => (State::Stop, words.stop_word(stop)),
        (None, Some(_)) => (State::Due, words.due_in_the_list(due)),
        (None, None) => (State::Done, words.due_in_the_list(None)),
    };
    Shown {
        id: visit.animal.id.clone(),
        name: visit.animal.name.clone(),
        state,
        word: word.to_owned(),
        second: words.in_the_list(visit.weight.as_ref(), visit.condition, visit.to_score),
        photo: visit.photo.clone(),
    }
}

/// The one thing due: the neediest animal, what is done there, and what stops it.
fn first(visits: &[Visit]) -> Option<(&Visit, Option<&Stop>, Task)> {
    let visit = visits.first()?;
    let stop = visit.stop.as_ref();
    let task = match stop {
        Some(_) => Task::LookOver,
        None => visit.first_due()?,
    };
    Some((visit, stop, task))
}

/// The animals and groups, and the one thing due.
#[component]
pub fn List() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(|| {
        let mut ranges = beside::list_needs();
        ranges.push(yard_visit::under_way_needs());
        ranges
    });
    let minute = world.minute();
    let all = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => beside::list(&shelf, now, &DeviceZone),
        _ => (Vec::new(), Vec::new()),
    });
    let said = move || {
        let (visits, _) = all.get();
        match (visits.len(), first(&visits)) {
            (0, _) if shelf.get().is_none() => words.opening().to_owned(),
            (0, _) => words.no_horse_yet().to_owned(),
            (_, Some((visit, Some(stop), _))) => {
                format!("{}: {}", visit.animal.name, words.stop_order(stop))
            }
            (_, Some((visit, None, task))) => words.one_thing_due(task, &visit.animal.name),
            (count, None) => words.nothing_due(count),
        }
    };
    let action = Signal::derive(move || {
        all.with(|(visits, _)| match first(visits) {
            Some((_, Some(_), _)) => words.look_again_now().to_owned(),
            Some((visit, None, task)) => words.do_task(task, &visit.animal.name),
            None => words.add_an_animal().to_owned(),
        })
    });
    let leads = Signal::derive(move || {
        all.with(|(visits, _)| match first(visits) {
            Some((visit, _, task)) => route_of(task, visit.animal.id.clone()),
            None => Route::NewHorse,
        })
        .to_string()
    });
    let find = RwSignal::new(String::new());
    let many = Memo::new(move |_| all.with(|(visits, _)| WITHOUT_FIND < visits.len()));
    let found = Memo::new(move |_| {
        let wanted = find.get().trim().to_lowercase();
        all.with(|(visits, _)| {
            visits
                .iter()
                .filter(|visit| visit.animal.name.to_lowercase().contains(&wanted))
                .map(|visit| shown(visit, words))
                .collect::<Vec<_>>()
        })
    });
    let groups = Memo::new(move |_| all.with(|(_, groups)| groups.clone()));
    let busy_place = Memo::new(move |_| all.with(|(visits, _)| first(visits).is_some()));
    let some_animal = Memo::new(move |_| all.with(|(visits, _)| !visits.is_empty()));
    let several = Memo::new(move |_| all.with(|(visits, _)| 1 < visits.len()));
    let visiting = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => yard_visit::under_way(&shelf, now).is_some(),
        _ => false,
    });
    let to_visit = Signal::derive(move || {
        if visiting.get() {
            words.to_the_visit().to_owned()
        } else {
            words.start_a_visit().to_owned()
        }
    });
    let foot = move || {
        view! {
            <QuietRow>
                <Show when=move || some_animal.get()>
                    <Quiet says=to_visit press=Route::Visit.to_string() />
                </Show>
                <Show when=move || several.get()>
                    <Quiet says=words.weighbridge_day() press=Route::Weighbridge.to_string() />
                </Show>
                <Show when=move || busy_place.get()>
                    <Quiet says=words.add_an_animal() press=Route::NewHorse.to_string() />
                </Show>
                <Show when=move || some_animal.get()>
                    <Quiet says=words.add_a_group() press=Route::NewGroup.to_string() />
                </Show>
            </QuietRow>
            <UpdateOffer />
            <Saving />
            <Show when=move || many.get()>
                <Field
                    label=words.find_animal()
                    value=find
                    on_input=Callback::new(move |text| find.set(text))
                    keyboard=Keyboard::Search
                />
            </Show>
            <ActionRow>
                <Action says=action press=leads />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.horses()
            foot=foot
            places=move || view! { <Places here=Place::Horses /> }
        >
            <Sentence said=Signal::derive(said) />
            <Unread shelf />
            <Show when=move || some_animal.get() && found.with(Vec::is_empty)>
                <p class="soft">{words.none_found()}</p>
            </Show>
            <Cord name=words.horses()>
                <For
                    each=move || found.get()
                    key=Shown::key
                    children=move |shown| {
                        let picture = shown.picture(words);
                        view! {
                            <Hang>
                                <Tag
                                    state=Signal::stored(shown.state)
                                    word=Signal::stored(shown.word)
                                    what=Signal::stored(shown.name)
                                    second=Signal::stored(Some(shown.second))
                                    press=Route::Horse(shown.id).to_string()
                                    picture=picture
                                />
                            </Hang>
                        }
                    }
                />
                <For
                    each=move || groups.get()
                    key=|group| group.id.clone()
                    children=move |group| {
                        view! {
                            <Hang>
                                <Tag
                                    state=Signal::stored(State::Later)
                                    word=words.a_group()
                                    what=Signal::stored(group.name.clone())
                                    press=Route::Group(group.id.clone()).to_string()
                                />
                            </Hang>
                        }
                    }
                />
            </Cord>
        </Frame>
    }
}
