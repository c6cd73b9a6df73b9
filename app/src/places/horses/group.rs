//! Animals fed together.

mod fed;

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Field, Frame, FrameKind, Offer, Press, Quiet, QuietRow,
    Sentence, Several,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{Animal, AnimalId, Group as CoreGroup, GroupId};
use tussock_core::units::{Instant, LocalDate, Zone};
use tussock_flow::forms::group::{Wrong, act, change, chosen, with};
use tussock_flow::routes::Route;
use tussock_flow::views::beside;
use tussock_flow::views::group::{GroupOffer, Herd, herd, needs};
use tussock_flow::words::{
    BesideWords, DayScreenWords, English, GroupWords, HorsesWords, LedgerWords, PlanScreenWords,
    Task, VisitsWords,
};

/// The field of the members.
const MEMBERS: &str = "members";

/// Which animals are in it: keys that stand on or off.
fn members(
    words: English,
    form: Form,
    yard: &[Animal],
    held: String,
    elsewhere: Vec<(AnimalId, String)>,
    hint: Signal<Option<String>>,
) -> impl IntoView + use<> {
    let offers: Vec<Offer<AnimalId>> = yard
        .iter()
        .map(|animal| Offer::new(animal.id.clone(), animal.name.clone()))
        .collect();
    // Who is chosen and in another group leaves that one: said beside the keys.
    let names: Vec<(AnimalId, String)> = elsewhere
        .into_iter()
        .filter_map(|(id, other)| {
            let animal = yard.iter().find(|animal| animal.id == id)?;
            Some((id, words.leaves_other(&animal.name, &other)))
        })
        .collect();
    let held = StoredValue::new(held);
    let text = move || form.held(MEMBERS).unwrap_or_else(|| held.get_value());
    let on_choose = Callback::new(move |(animal, within): (AnimalId, bool)| {
        form.set(MEMBERS, with(&untrack(text), &animal, within));
    });
    let leaving = move || {
        let chosen = chosen(&text());
        names
            .iter()
            .filter(|(id, _)| chosen.contains(id))
            .map(|(_, said)| view! { <Caution said=said.clone() /> })
            .collect_view()
    };
    view! {
        <Several
            legend=words.members_from_today()
            offers=offers
            chosen=Signal::derive(move || chosen(&text()))
            on_choose=on_choose
            hint=hint
        />
        {leaving}
    }
}

/// A new group: its name and who is in it from today.
#[component]
pub fn NewGroup() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::NewGroup.to_string());
    let shelf = world.shelf(beside::list_needs);
    let yard = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.animals(),
        _ => Vec::new(),
    });
    let groups = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.groups(),
        _ => Vec::new(),
    });
    let wrong = RwSignal::new(None::<Wrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let id = GroupId(form.id("id"));
        let today = DeviceZone.to_local(clock::now()).date;
        let others = groups.get_untracked();
        let members = chosen(&form.now(MEMBERS));
        match act(&id, &form.now("name"), &members, &others, today) {
            Err(fault) => wrong.set(Some(fault)),
            Ok(act) => {
                wrong.set(None);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Group(id));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let no_name = Signal::derive(move || {
        matches!(wrong.get(), Some(Wrong::Name(_))).then(|| words.group_name_wanted().to_owned())
    });
    let hint = Signal::derive(move || Some(members_hint(words, wrong.get().as_ref())));
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                <Action says=words.save_group() press=save busy=busy />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.horses() foot=foot>
            <Sentence said=words.who_eats_together() />
            <Unread shelf />
            {draft_line(form)}
            <Field label=words.name() value=form.text("name") on_input=form.typed("name") error=no_name />
            {move || {
                let today = DeviceZone.to_local(clock::now()).date;
                let elsewhere = groups.with(|groups| in_groups(groups, today));
                members(words, form, &yard.get(), String::new(), elsewhere, hint)
            }}
        </Frame>
    }
}

fn members_hint(words: English, wrong: Option<&Wrong>) -> String {
    match wrong {
        Some(Wrong::NoMember) => words.member_wanted(),
        _ => words.members_hint(),
    }
    .to_owned()
}

/// A group: what is offered to all, each one's share, who needs separating; and who is in it.
#[component]
pub fn Group(
    /// Which.
    group: GroupId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Group(group.clone()).to_string());
    let id = StoredValue::new(group);
    let shelf = world.shelf(needs);
    let minute = world.minute();
    let at = move |now: Instant| match shelf.get() {
        Some(Ok(shelf)) => herd(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    };
    let work_out = move |_: Option<&Option<Herd>>| at(minute.get());
    // Drawn again only when it reads differently: a minute that changes nothing leaves the keys alone.
    let all = Memo::new_with_compare(work_out, |old, new| match (old, new) {
        (Some(Some(old)), Some(Some(new))) => !old.reads_as(new),
        (old, new) => old != new,
    });
    let wrong = RwSignal::new(None::<Wrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let Some(herd) = all.get_untracked() else {
            return;
        };
        let text = untrack(|| form.held(MEMBERS)).unwrap_or_else(|| held_members(&herd));
        let others = match shelf.get_untracked() {
            Some(Ok(shelf)) => shelf.groups(),
            _ => Vec::new(),
        };
        match change(&herd.group, &chosen(&text), &others, herd.today) {
            Err(fault) => wrong.set(Some(fault)),
            Ok(act) => {
                wrong.set(None);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_err() {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let use_it = Callback::new(move |()| {
        // Worked out at the tap itself: what is issued is the plan of now, with the day it begins.
        let issued = untrack(|| at(clock::now()))
            .and_then(|now| now.use_it(|name| form.id(&format!("plan-{name}"))));
        let Some(Ok(act)) = issued else {
            failed.set(true);
            return;
        };
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_err() {
                failed.try_set(true);
            }
        });
    });
    let said = Signal::derive(move || {
        all.with(|all| match all {
            None if shelf.get().is_none() => words.opening().to_owned(),
            None => words.no_such_group().to_owned(),
            Some(herd) => fed::sentence(words, herd),
        })
    });
    // Keys that were put on or off and are not saved: that comes first.
    let edited = Memo::new(move |_| {
        let text = form.held(MEMBERS);
        all.with(|all| match (all, text) {
            (Some(herd), Some(text)) => {
                let mut now = chosen(&text);
                let mut held = chosen(&held_members(herd));
                now.sort();
                held.sort();
                now != held
            }
            _ => false,
        })
    });
    let hint = Signal::derive(move || Some(members_hint(words, wrong.get().as_ref())));
    let foot = move || {
        let action = move || {
            let herd = all.get()?;
            let offer = herd.first().filter(|_| !edited.get());
            let (says, press) = match offer {
                Some(offer) => does(words, &offer, &herd, use_it),
                None => (words.save_members().to_owned(), Press::from(save)),
            };
            Some(view! { <Action says=says press=press busy=busy /> })
        };
        let beside = move || {
            let herd = all.get()?;
            let sooner = herd.beside().map(|offer| {
                let (says, press) = does(words, &offer, &herd, use_it);
                view! { <Quiet says=says press=press /> }
            });
            let day = herd.in_use.is_some().then(|| {
                let day = Route::GroupDay(herd.group.id.clone()).to_string();
                view! { <Quiet says=words.see_the_day(&herd.group.name) press=day /> }
            });
            let ledger = Route::GroupLedger(herd.group.id.clone()).to_string();
            Some(view! {
                <QuietRow>{sooner} {day} <Quiet says=words.what_was_eaten() press=ledger /></QuietRow>
            })
        };
        view! {
            {beside}
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                {action}
            </ActionRow>
        }
    };
    let body = move || {
        all.get().map(|herd| {
            let elsewhere = herd.elsewhere.clone();
            let chooser = members(
                words,
                form,
                &herd.yard,
                held_members(&herd),
                elsewhere,
                hint,
            );
            view! {
                {fed::ration(words, &herd)}
                {chooser}
                <p class="soft">{words.counts_whole_days()}</p>
                <p class="soft small">{words.no_diagnosis()}</p>
            }
        })
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || all.get().map(|herd| herd.group.name).unwrap_or_default())
            foot=foot
        >
            <Sentence said=said />
            <Unread shelf />
            {draft_line(form)}
            {body}
        </Frame>
    }
}

/// Who is in it today, as the form keeps it.
fn held_members(herd: &Herd) -> String {
    herd.group
        .on(herd.today)
        .into_iter()
        .fold(String::new(), |text, animal| with(&text, animal, true))
}

/// The other groups that animals are in today.
fn in_groups(groups: &[CoreGroup], today: LocalDate) -> Vec<(AnimalId, String)> {
    groups
        .iter()
        .flat_map(|group| {
            let members = group.on(today).into_iter();
            members.map(|animal| (animal.clone(), group.name.clone()))
        })
        .collect()
}

/// What an offer says and does.
fn does(words: English, offer: &GroupOffer, herd: &Herd, use_it: Callback<()>) -> (String, Press) {
    let goes = |says: &str, route: Route| (says.to_owned(), Press::from(route.to_string()));
    match offer {
        GroupOffer::Use => (words.use_this_plan().to_owned(), Press::from(use_it)),
        GroupOffer::UseBeforeReview => {
            (words.change_before_review().to_owned(), Press::from(use_it))
        }
        GroupOffer::WeighNets => goes(
            words.weigh_the_nets(),
            Route::Nets(AnimalId(herd.group.id.0.clone())),
        ),
        GroupOffer::Member(animal) => goes(
            &words.see_what_stops(&herd.name(animal)),
            Route::Plan(animal.clone()),
        ),
        GroupOffer::Weigh(animal) => goes(
            &words.do_task(Task::Weigh, &herd.name(animal)),
            Route::Weigh(animal.clone()),
        ),
        GroupOffer::AddHay => goes(words.add_a_hay(), Route::NewHay),
        GroupOffer::OpenHay(lot) => goes(words.open_the_hay(), Route::Hay(lot.clone())),
        GroupOffer::Visits => goes(words.when_somebody_comes(), Route::Visits),
    }
}
